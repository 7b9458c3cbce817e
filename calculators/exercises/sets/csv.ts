import { marksStanding, remarkOn, totalOf, waitingOf, type Remark, type Row } from './class-table.ts';
import type { GradedSet } from './set-file.ts';

export const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;
export type Separator = keyof typeof separators;

/** Signs a spreadsheet takes for the start of a formula, wide forms among them. */
const starts = /^[\s\p{Cc}]*[=+\-@＝＋－＠−|%]/u;

/**
 * One cell. Numbers stand bare. A text is always quoted, and one that a spreadsheet would carry out gets an
 * apostrophe first, so that it is only read.
 */
export function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const flat = value.replace(/[\r\n\t]+/g, ' ');
  return `"${(starts.test(flat) ? `'${flat}` : flat).replaceAll('"', '""')}"`;
}

const lines = (rows: readonly (readonly (string | number | undefined)[])[], separator: Separator): string =>
  // The byte order mark tells a spreadsheet that this is UTF-8.
  `\uFEFF${rows.map((row) => row.map(cell).join(separators[separator])).join('\r\n')}\r\n`;

/** The class table: a learner a row, a question a column. */
export function classCsv(
  set: GradedSet,
  rows: readonly Row[],
  remarks: readonly Remark[] = [],
  separator: Separator = 'comma',
): string {
  const head = [
    'Learner',
    'Marks',
    'Of',
    ...set.questions.map(({ title }, at) => `${at + 1} ${title}`),
    'Handed in',
    'Hand-ins',
    'To be marked by hand',
    'Changed by hand',
    'Note',
  ];
  return lines([head, ...rows.map((row) => rowOf(row, set, remarks))], separator);
}

function rowOf({ learner, counted, attempts, stranger }: Row, set: GradedSet, remarks: readonly Remark[]) {
  const blank = set.questions.map(() => undefined);
  if (!counted)
    return [learner, undefined, set.marks, ...blank, undefined, 0, undefined, undefined, 'not handed in'];
  const notes = [
    ...(stranger ? ['not in the roster'] : []),
    ...(counted.set.hash === set.hash ? [] : [`edition ${counted.set.edition}`]),
  ];
  const marks = set.questions.map(({ id }) => {
    const question = counted.marked.questions.find((one) => one.id === id);
    return question && marksStanding(counted, question, remarks);
  });
  const changed = counted.marked.questions.filter(
    ({ id }) => remarkOn(counted, id, remarks)?.marks !== undefined,
  );
  return [
    learner,
    totalOf(counted, remarks),
    counted.set.marks,
    ...marks,
    counted.handIn.handedIn,
    attempts.length,
    waitingOf(counted, remarks),
    changed.length,
    notes.join('; '),
  ];
}
