import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { defaultInputs } from '../../calculators/models/inputs.ts';
import { transient } from '../../calculators/models/transient.ts';
import type { Values } from '../../calculators/core/model.ts';

const usual = defaultInputs(transient, resolvedMaterials(materials)).values;
const run = (more: Values) => transient.run({ ...usual, ...more });
const last = (more: Values): number => run(more).values['last.time'] ?? Number.NaN;

describe('a mould that is not said how large', () => {
  it('is as good as one without end, whatever the freezing range', () => {
    for (const solidus of [1133, 900, 620])
      for (const geometry of ['plate', 'cylinder', 'sphere']) {
        const given = { geometry, 'metal.solidus': solidus };
        expect(last(given) / last({ ...given, 'mould.radius': 1 }), `${geometry} ${solidus}`).toBeCloseTo(
          1,
          3,
        );
      }
  });

  it('lets no more latent heat be gone sooner', () => {
    const times = [4e4, 8e4, 12e4, 24e4].map((latent) => last({ 'metal.L': latent, 'metal.solidus': 620 }));
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
});

describe('a mould that ends soon', () => {
  const said = (more: Values): boolean =>
    run(more).notes.some((note) => note.startsWith('Where the mould ends'));

  it('is said to count when it has warmed through, and freezes later', () => {
    expect(said({ 'mould.radius': 0.0055 })).toBe(true);
    expect(last({ 'mould.radius': 0.0055 })).toBeGreaterThan(last({}));
  });

  it('is not spoken of when it hardly warmed, or when it gives its heat away', () => {
    expect(said({})).toBe(false);
    expect(said({ geometry: 'voxels' })).toBe(false);
    expect(said({ 'mould.radius': 0.0055, outside: 'held' })).toBe(false);
  });
});

it('more cells than there can be memory for are refused in words', () => {
  const box = { what: 'metal', x: 0, y: 0, z: 0, width: 0.05, depth: 0.05, height: 0.05 };
  const { values, notes } = run({
    geometry: 'voxels',
    boxes: [box],
    cells: 6000,
    most: 1e14,
    'mould.wall': 0.1,
  });
  expect(values).toEqual({});
  expect(notes.join(' ')).toContain('not the memory for so many cells');
});
