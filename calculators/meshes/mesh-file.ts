import type { Triangles } from './triangles.ts';

/** Lengths a file can be written in, and metres in each. */
export const lengthUnits = {
  micron: 1e-6,
  millimetre: 1e-3,
  centimetre: 1e-2,
  metre: 1,
  inch: 0.0254,
  foot: 0.3048,
} as const;
export type LengthUnit = keyof typeof lengthUnits;

export interface Read {
  readonly ok: true;
  readonly format: 'STL' | 'STL as text' | 'OBJ' | '3MF';
  readonly mesh: Triangles;
  /** Only 3MF says it. */
  readonly unit?: LengthUnit;
  /** What was odd about the file, one sentence each. */
  readonly notes: readonly string[];
}

export type ReadMesh = Read | { readonly ok: false; readonly why: string };

export const refused = (why: string): ReadMesh => ({ ok: false, why });

/** A size in words, for the sentences about files. */
export const bytesText = (bytes: number): string =>
  bytes >= 1e6 ? `${Math.round(bytes / 1e6)} MB` : `${Math.ceil(bytes / 1e3)} kB`;

/** Thrown inside a reader with the end of a sentence. */
export class Refusal extends Error {}
