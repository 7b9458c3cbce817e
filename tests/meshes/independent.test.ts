import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { fittings } from '../../calculators/meshes/fittings.ts';
import { readMesh } from '../../calculators/meshes/read.ts';
import { writeObj, writeStl, writeTextStl, writeThreeMf } from '../../calculators/meshes/write.ts';

interface Measured {
  readonly faces: number;
  readonly watertight: boolean;
  readonly bodies: number;
  readonly volume: number;
  readonly area: number;
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly centre: readonly number[];
}

/** Made by `independent.py` beside it, from the same files, with a general mesh library. */
const elsewhere = JSON.parse(readFileSync(new URL('independent.json', import.meta.url), 'utf8')) as Record<
  string,
  Measured
>;
const writers = { stl: writeStl, 'text-stl': writeTextStl, obj: writeObj, '3mf': writeThreeMf };

describe('the fittings’ files, measured here and by another program', () => {
  it.each(fittings.map((one) => [one.file, one] as const))('%s', (file, fitting) => {
    const read = readMesh(writers[fitting.format](fitting.mesh()), file);
    if (!read.ok) throw new Error(read.why);
    const { measures, shells, faults } = checkMesh(read.mesh);
    const theirs = elsewhere[file]!;
    expect(read.mesh.corners.length / 3).toBe(theirs.faces);
    expect(!faults.some(({ id }) => id === 'holes')).toBe(theirs.watertight);
    expect(shells.length).toBe(theirs.bodies);
    expect(measures.volume / theirs.volume).toBeCloseTo(1, 9);
    expect(measures.area / theirs.area).toBeCloseTo(1, 9);
    for (let d = 0; d < 3; d += 1) {
      expect(measures.low[d]).toBeCloseTo(theirs.low[d]!, 9);
      expect(measures.high[d]).toBeCloseTo(theirs.high[d]!, 9);
      expect(measures.centre[d]).toBeCloseTo(theirs.centre[d]!, 6);
    }
  });
});
