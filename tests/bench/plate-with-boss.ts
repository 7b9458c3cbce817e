import type { Voxels } from '../../calculators/models/conduction/voxels.ts';

/** A thin plate of 1 mm with a boss 6 mm high, 8 or more wide, in 5 mm of sand: 100 × 88 × 32 cells at 0.5 mm. */
export const voxelsOf = (spacing: number, wide: number): Voxels => ({
  solids: [
    { kind: 'box', region: 0, low: [0, 0, 0], high: [0.04, 0.034, 0.001] },
    {
      kind: 'box',
      region: 0,
      low: [0.02 - wide / 2, 0.017 - wide / 2, 0],
      high: [0.02 + wide / 2, 0.017 + wide / 2, 0.006],
    },
  ],
  spacing,
  wall: 0.005,
  mirror: [false, false, false],
});
