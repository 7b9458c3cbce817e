/**
 * Linear tolerances of castings, ISO 8062-3:2007 Table 2: total width in millimetres by grade DCTG 1 to 16 for
 * raw sizes up to the row's limit. A gap is a size the standard gives no number for. Only the rows that small
 * castings need; read in a copy of the standard's table.
 */
const _ = undefined;
export const tolerances: readonly {
  /** mm, inclusive. */
  readonly upTo: number;
  readonly widths: readonly (number | undefined)[];
}[] = [
  { upTo: 10, widths: [0.09, 0.13, 0.18, 0.26, 0.36, 0.52, 0.74, 1, 1.5, 2, 2.8, 4.2, _, _, _, _] },
  { upTo: 16, widths: [0.1, 0.14, 0.2, 0.28, 0.38, 0.54, 0.78, 1.1, 1.6, 2.2, 3, 4.4, _, _, _, _] },
  { upTo: 25, widths: [0.11, 0.15, 0.22, 0.3, 0.42, 0.58, 0.82, 1.2, 1.7, 2.4, 3.2, 4.6, 6, 8, 10, 12] },
  { upTo: 40, widths: [0.12, 0.17, 0.24, 0.32, 0.46, 0.64, 0.9, 1.3, 1.8, 2.6, 3.6, 5, 7, 9, 11, 14] },
  { upTo: 63, widths: [0.13, 0.18, 0.26, 0.36, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 10, 12, 16] },
  { upTo: 100, widths: [0.14, 0.2, 0.28, 0.4, 0.56, 0.78, 1.1, 1.6, 2.2, 3.2, 4.4, 6, 9, 11, 14, 18] },
  { upTo: 160, widths: [0.15, 0.22, 0.3, 0.44, 0.62, 0.88, 1.2, 1.8, 2.5, 3.6, 5, 7, 10, 12, 16, 20] },
  { upTo: 250, widths: [_, 0.24, 0.34, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 14, 18, 22] },
];

/** Total width (m) for a raw size (m) and a grade from 1 to 16; a sentence when the table has no number. */
export function toleranceFor(size: number, grade: number): number | string {
  const mm = size * 1000;
  if (!Number.isInteger(grade) || grade < 1 || grade > 16) return 'The grades run from DCTG 1 to 16.';
  const row = tolerances.find(({ upTo }) => mm <= upTo * (1 + 1e-12));
  if (!(mm > 0) || !row) return 'The table here covers sizes up to 250 mm; nothing is guessed beyond it.';
  const width = row.widths[grade - 1];
  if (width === undefined)
    return `DCTG ${grade} has no number for ${Number(mm.toPrecision(4))} mm: agree a tolerance of your own, and write it on the drawing.`;
  return width / 1000;
}

export const gradeOptions: Readonly<Record<string, string>> = Object.fromEntries(
  Array.from({ length: 16 }, (_each, i) => [`${i + 1}`, `DCTG ${i + 1}`]),
);

/** Which grade to expect of which process: custom, not the standard's promise. */
export const gradeNote =
  'Common practice: lost wax 4 to 6, shell and metal moulds 6 to 9, hand-made sand moulds 10 to 13 in series and 11 to 15 for single pieces.';
