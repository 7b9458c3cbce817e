import type { Row } from '../../core/model.ts';
import { modulus } from '../../formulas/freezing/modulus.ts';
import { lineOf } from './ledger.ts';
import type { Working } from './working.ts';

/** One section of the part, with what follows from its shape. SI throughout. */
export interface Section {
  /** `sections.2`: the row as entered, counted from one; part of every id of its lines. */
  readonly id: string;
  readonly name: string;
  readonly thickness: number;
  /** The two sides of the opening the metal enters; equal for a round one. */
  readonly sides: readonly [number, number];
  readonly channel: number;
  readonly round: boolean;
  readonly volume: number;
  readonly piece: number;
  readonly modulus: number;
  /** 0 flat, 1 bar, 2 block: how the mould around it spreads the heat. */
  readonly shapeNumber: number;
  readonly run: number;
  readonly before: number;
  readonly through: string;
  readonly fronts: number;
}

const numberIn = (row: Row, field: string, otherwise: number): number => {
  const value = row[field];
  return typeof value === 'number' && Number.isFinite(value) ? value : otherwise;
};

const textIn = (row: Row, field: string): string => {
  const value = row[field];
  return typeof value === 'string' ? value.trim() : '';
};

interface Shape {
  readonly channel: number;
  readonly cooled: number;
  readonly shapeNumber: number;
}

/** Where heat leaves: joints between sections are not taken off, so the modulus is a little low, on the safe side for filling. */
function shapeOf(shape: string, t: number, w: number, l: number): Shape {
  if (shape === 'plate') return { channel: t * w, cooled: 2 * w * l, shapeNumber: 0 };
  if (shape === 'block') return { channel: t * w, cooled: 2 * (t * w + t * l + w * l), shapeNumber: 2 };
  if (shape === 'rod') return { channel: (Math.PI / 4) * t * t, cooled: Math.PI * t * l, shapeNumber: 1 };
  return { channel: t * w, cooled: 2 * (t + w) * l, shapeNumber: 1 };
}

/** The sections that have a thickness, a width and a length; others are named in a note and left out. */
export function readSections(working: Working): Section[] {
  return working.rows('sections').flatMap((row, index) => {
    const id = `sections.${index + 1}`;
    const name = textIn(row, 'name') || `Section ${index + 1}`;
    const shape = textIn(row, 'shape') || 'bar';
    const thickness = numberIn(row, 'thickness', Number.NaN);
    const width = shape === 'rod' ? thickness : numberIn(row, 'width', Number.NaN);
    const length = numberIn(row, 'length', Number.NaN);
    if (!(thickness > 0 && width > 0 && length > 0)) {
      working.note(`${name} is left out: it needs a thickness, a width and a length above zero.`);
      return [];
    }
    const { channel, cooled, shapeNumber } = shapeOf(shape, thickness, width, length);
    const piece = channel * length;
    const before = Math.max(0, numberIn(row, 'before', 0));
    const run = numberIn(row, 'run', length + before);
    if (run <= before)
      working.note(`${name}: its run from the gate must be longer than the part of it upstream.`);
    return [
      {
        id,
        name,
        thickness: Math.min(thickness, width),
        sides: [thickness, width] as const,
        channel,
        round: shape === 'rod',
        piece,
        volume: piece * Math.max(1, numberIn(row, 'pieces', 1)),
        modulus: working.work(lineOf(id, 'modulus'), `Modulus, ${name}`, modulus, { V: piece, A: cooled }),
        shapeNumber,
        run: run > before ? run - before : run,
        before,
        through: textIn(row, 'through'),
        fronts: Math.max(1, numberIn(row, 'fronts', 1)),
      },
    ];
  });
}

/** The section this one is reached through, if it names one. */
export function upstreamOf(section: Section, all: readonly Section[]): Section | undefined {
  const wanted = section.through.toLowerCase();
  return wanted === ''
    ? undefined
    : all.find((other) => other !== section && other.name.toLowerCase() === wanted);
}

export const heaviestOf = (sections: readonly Section[]): Section | undefined =>
  sections.reduce<Section | undefined>(
    (most, one) => (!most || one.modulus > most.modulus ? one : most),
    undefined,
  );
