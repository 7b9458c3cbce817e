import { describe, expect, it } from 'vitest';
import {
  analyse,
  fromGate,
  gridFor,
  heaviestPlace,
  type Analysis,
} from '../../calculators/meshes/analyse.ts';
import { fillWithCells, gridRound } from '../../calculators/meshes/cells.ts';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { fittings } from '../../calculators/meshes/fittings.ts';
import { ball, box, boxes, moved, rod, tube } from '../../calculators/meshes/forms.ts';
import { partingOf, shadowOf } from '../../calculators/meshes/shadow.ts';
import { together, type Point, type Triangles } from '../../calculators/meshes/triangles.ts';

const look = (mesh: Triangles, spacing: number): Analysis => {
  const checked = checkMesh(mesh);
  return analyse(checked, gridRound(checked.mesh, spacing));
};

/** The values of a map over the metal, from the least to the most. */
const sorted = ({ filled }: Analysis, map: Float32Array): number[] =>
  [...map].filter((_, cell) => filled.metal[cell] === 1).sort((a, b) => a - b);
const at = (values: readonly number[], share: number): number =>
  values[Math.floor(share * (values.length - 1))]!;
/** Turned so that no face lies along a layer of cells. */
const askew = (mesh: Triangles): Triangles =>
  moved(mesh, ([x, y, z]): Point => {
    const [c, s] = [Math.cos(0.53), Math.sin(0.53)];
    const [d, t] = [Math.cos(0.37), Math.sin(0.37)];
    const u = c * x - s * y;
    const v = s * x + c * y;
    return [u, d * v - t * z, t * v + d * z];
  });

describe('filling a part with cells', () => {
  it.each([
    ['a ball', ball(10, 60)],
    ['a bar askew', askew(box(30, 7.3, 4.1))],
    ['a tube askew', askew(tube(10, 6, 22, 80))],
  ] as const)('counts nearer to the volume of %s as the cells get smaller', (_, mesh) => {
    const { volume } = checkMesh(mesh).measures;
    const errors = [1.6, 0.8, 0.4].map(
      (h) => Math.abs(fillWithCells(mesh, gridRound(mesh, h)).cells * h ** 3 - volume) / volume,
    );
    expect(errors[2]!).toBeLessThan(0.004);
    expect(errors[0]!).toBeLessThan(0.05);
  });

  it('is not put out by a missing face, and says where it doubted', () => {
    const whole = ball(10, 24);
    const grid = gridRound(whole, 0.7);
    const holed = { points: whole.points, corners: whole.corners.slice(12) };
    const [full, patched] = [fillWithCells(whole, grid), fillWithCells(holed, grid)];
    const differ = full.metal.reduce((sum, one, cell) => sum + Number(one !== patched.metal[cell]), 0);
    expect(differ / full.cells).toBeLessThan(0.002);
    expect(full.doubtful).toBe(0);
  });

  it('counts what two bodies share once, and leaves a hollow empty', () => {
    const into = moved(box(10, 10, 10), ([x, y, z]) => [x + 6, y + 1.3, z + 2.2]);
    const two = look(together([box(10, 10, 10), into]), 0.5);
    // 4 × 8.7 × 7.8 shared
    const hidden = 2 * (4 * 8.7 + 4 * 7.8 + 8.7 * 7.8);
    // As finely as the cells: a quarter of a cell over the surface of what is shared
    expect(Math.abs(two.volume - (2000 - 4 * 8.7 * 7.8))).toBeLessThan(0.25 * 0.5 * hidden);
    expect(two.area / (1200 - hidden)).toBeCloseTo(1, 1.5);
    const hollow = fillWithCells(
      checkMesh(together([ball(10, 24), ball(5, 24)])).mesh,
      gridRound(ball(10, 24), 0.8),
    );
    expect((hollow.cells * 0.8 ** 3) / ((4 / 3) * Math.PI * 875)).toBeCloseTo(1, 1.6);
  });
});

describe('where is it thin: the largest ball that fits', () => {
  it.each([
    ['plate', box(30, 24, 3.1), 3.1],
    ['plate askew', askew(box(30, 24, 3.1)), 3.1],
    ['square bar', box(40, 6.2, 6.2), 6.2],
    ['bar of 5 by 9', box(40, 5, 9), 5],
    ['rod askew', askew(rod(3, 30, 64)), 6],
    ['ball', ball(8, 48), 16],
    ['tube', tube(10, 6.5, 20, 96), 3.5],
  ] as const)('%s: within 3 % with six cells across, edges within 4 %', (_, mesh, truth) => {
    const part = look(mesh, Math.min(truth / 6, 0.8));
    const thick = sorted(part, part.thick);
    expect(at(thick, 0.01) / truth).toBeGreaterThan(0.96);
    expect(at(thick, 0.5) / truth).toBeGreaterThan(0.97);
    expect(at(thick, 1) / truth).toBeLessThan(1.02);
  });

  it('a wedge is as thick as it is at each place', () => {
    // 2 mm at one end, 6 mm at the other
    const wedge = moved(box(40, 20, 1), ([x, y, z]) => [x, y, z * (2 + x / 10)]);
    const part = look(wedge, 0.33);
    const { filled, thick } = part;
    let worst = 0;
    for (let cell = 0; cell < thick.length; cell += 1) {
      if (filled.metal[cell] === 0) continue;
      const x = filled.grid.from[0] + ((cell % filled.grid.size[0]) + 0.5) * filled.grid.spacing;
      if (x < 4 || x > 34) continue;
      worst = Math.max(worst, Math.abs(thick[cell]! - (2 + x / 10)));
    }
    // A ball reaches over its middle by its own radius, along which the wedge grows by a tenth of that
    expect(worst).toBeLessThan(0.45);
  });

  it('two thicknesses, each on its own side, and the corner of an L is the thickest', () => {
    const part = look(
      boxes([
        { low: [0, 0, 0], high: [40, 8, 20] },
        { low: [0, 8, 0], high: [8, 40, 20] },
      ]),
      0.8,
    );
    const thick = sorted(part, part.thick);
    expect(at(thick, 0.05)).toBeCloseTo(8, 0.7);
    // Touching both outer walls and the inner corner: r = 8 √2 / (1 + √2) = 4.686
    expect(at(thick, 1)).toBeCloseTo(9.373, 0.7);
  });
});

describe('where does it freeze last: the modulus by cooling', () => {
  /** Volume over cooled surface in the middle, away from ends. */
  it.each([
    ['plate', box(40, 32, 4), 2],
    ['square bar', box(60, 6, 6), 1.5],
    ['bar of 5 by 10', box(60, 5, 10), 50 / 30],
    ['rod', rod(4, 50, 64), 2],
    ['ball', ball(8, 48), 8 / 3],
    ['tube', tube(12, 8, 40, 96), 2],
  ] as const)('%s: within 5 %', (_, mesh, truth) => {
    const part = look(mesh, 0.66);
    const modulus = sorted(part, part.modulus);
    expect(at(modulus, 0.9) / truth).toBeGreaterThan(0.95);
    expect(at(modulus, 0.9) / truth).toBeLessThan(1.05);
  });

  it('the mean of its inverse is surface over volume, whatever the part', () => {
    const part = look(fittings[1]!.mesh(), 0.9);
    const { surface, modulus } = part;
    let sum = 0;
    for (let cell = 0; cell < modulus.length; cell += 1)
      if (modulus[cell]! > 0) sum += surface.volume[cell]! / modulus[cell]!;
    expect(sum / 6096).toBeCloseTo(1, 2);
    expect(surface.volumeOfAll / 12_576).toBeCloseTo(1, 2);
  });

  it('a ball on a plate is a hot spot, and the plate shuts its way to a gate at the far end', () => {
    const part = look(
      together([box(60, 20, 4), moved(ball(8, 24), ([x, y, z]) => [x + 46, y + 10, z + 4])]),
      0.8,
    );
    const { spots } = fromGate(part, [2, 10, 2], 2);
    const [heaviest] = spots;
    expect(Math.hypot(heaviest!.at[0] - 46, heaviest!.at[1] - 10)).toBeLessThan(3);
    expect(heaviest!.modulus / heaviest!.way).toBeGreaterThan(1.2);
    expect(heaviest!.way).toBeLessThan(2.1);
    const near = fromGate(part, [46, 10, 11], 2);
    expect(near.spots[0]!.way / near.spots[0]!.modulus).toBeGreaterThan(0.9);
  });
});

describe('how far does the metal run', () => {
  it('along a bar: its length', () => {
    const run = fromGate(look(box(50, 5, 5), 0.5), [0, 2.5, 2.5], 0.5).farthest.run;
    // To the far corner, √(50² + 2.5² + 2.5²), less the gate's radius and half a cell
    expect(run / (Math.hypot(50, 2.5, 2.5) - 0.5)).toBeCloseTo(1, 1.6);
  });

  it('round the corner of an L: by the inner corner, nearer as cells get smaller', () => {
    const mesh = boxes([
      { low: [0, 0, 0], high: [40, 8, 3] },
      { low: [0, 8, 0], high: [8, 40, 3] },
    ]);
    // Gate in the middle of the end, then straight to (8, 8) and on to (0, 40): √(32² + 4²) + √(32² + 8²)
    const truth = Math.hypot(32, 4) + Math.hypot(8, 32);
    const errors = [1, 0.5].map((h) =>
      Math.abs(fromGate(look(mesh, h), [40, 4, 1.5], 0).farthest.run / truth - 1),
    );
    expect(errors[0]!).toBeLessThan(0.06);
    expect(errors[1]!).toBeLessThan(0.04);
    expect(errors[1]!).toBeLessThan(errors[0]!);
  });

  it('half round a ring, not across the opening', () => {
    const mesh = tube(20, 17, 3, 96);
    const run = fromGate(look(mesh, 0.5), [18.5, 0, 1.5], 0).farthest.run;
    // Shortest along the inner wall: between π · 17 and π · 18.5
    expect(run).toBeGreaterThan(Math.PI * 17 * 0.97);
    expect(run).toBeLessThan(Math.PI * 18.5 * 1.04);
  });

  it('says how much metal no run reaches', () => {
    const apart = look(together([box(10, 10, 4), moved(box(10, 10, 4), ([x, y, z]) => [x + 20, y, z])]), 0.5);
    expect(fromGate(apart, [0, 5, 2], 1).apart).toBeCloseTo(0.5, 2);
  });
});

describe('what it shows to a direction', () => {
  it('the outline of a ball, a box askew and a frame', () => {
    expect(shadowOf(ball(10, 90), [1, 2, 3]).area / (Math.PI * 100)).toBeCloseTo(1, 2.5);
    // A unit cube seen along its diagonal shows √3
    expect(shadowOf(box(1, 1, 1), [1, 1, 1]).area).toBeCloseTo(Math.sqrt(3), 2);
    expect(shadowOf(box(3, 4, 5), [0, 0, 1])).toMatchObject({ undercut: 0 });
  });

  it('draws a latch keeper flat, and finds the undercut of a hook', () => {
    const { best, axes } = partingOf(fittings[1]!.mesh());
    expect(best).toBe(2);
    expect(axes[2]?.undercut).toBe(0);
    const hook = boxes([
      { low: [0, 0, 0], high: [20, 10, 3] },
      { low: [0, 0, 3], high: [3, 10, 12] },
      { low: [3, 0, 9], high: [12, 10, 12] },
    ]);
    // The hook's tip of 9 × 10 lies over the foot of 20 × 10
    expect(shadowOf(hook, [0, 0, 1]).undercut).toBeCloseTo(90 / 200, 1.7);
  });
});

describe('the fittings of the mill, from their files to the rows of the plan', () => {
  const rows = (id: string): ReturnType<typeof fromGate>['sections'] => {
    const checked = checkMesh(fittings.find((one) => one.id === id)!.mesh());
    const part = analyse(checked, gridFor(checked, 90_000));
    return fromGate(part, heaviestPlace(part), 1).sections;
  };
  const near = (value: number | undefined, truth: number, share: number): void => {
    expect(value! / truth).toBeGreaterThan(1 - share);
    expect(value! / truth).toBeLessThan(1 + share);
  };
  const byThickness = (list: ReturnType<typeof rows>, t: number) =>
    list.find((one) => Math.abs(one.thickness / t - 1) < 0.06);

  // The dimensions are those of the sheets worked by hand beside the pour plan.
  it('lamp shield: webs of 1.4 by 2.2, frame of 4.5, two lugs of 7', { timeout: 40_000 }, () => {
    const list = rows('lamp-shield');
    const webs = byThickness(list, 1.4);
    expect(webs?.shape).toBe('bar');
    near(webs?.modulus, (1.4 * 2.2) / 7.2, 0.07);
    near(webs?.volume, 739.2, 0.06);
    const frame = byThickness(list, 4.5);
    near(frame?.modulus, 1.125, 0.06);
    near(frame?.volume, 3523.5, 0.06);
    expect(list.indexOf(frame!)).toBe(webs!.through);
    const lugs = byThickness(list, 7);
    expect(lugs?.pieces).toBe(2);
    near(lugs?.volume, 1344, 0.08);
  });

  it('latch keeper: plate of 4, nose of 9, two pads of 10', { timeout: 40_000 }, () => {
    const list = rows('latch-keeper');
    const plate = byThickness(list, 4);
    expect(plate?.shape).toBe('plate');
    near(plate?.volume, 5376, 0.09);
    expect(byThickness(list, 10)?.pieces).toBe(2);
    near(byThickness(list, 10)?.volume, 5040, 0.1);
    near(byThickness(list, 9)?.volume, 2160, 0.06);
  });

  it('letter seal: face of 3, stem of 7, four leaves of 1.2 by 1.6', { timeout: 60_000 }, () => {
    const list = rows('letter-seal');
    near(byThickness(list, 3)?.width, 19.5, 0.06);
    expect(byThickness(list, 3)?.shape).toBe('plate');
    expect(byThickness(list, 7)).toBeDefined();
    const leaves = byThickness(list, 1.2);
    expect(leaves?.pieces).toBe(4);
    near(leaves?.modulus, 1.92 / 5.6, 0.06);
  });

  it('index pointer: hub, blade of 3 by 8, round tip of 2.5', { timeout: 40_000 }, () => {
    const list = rows('index-pointer');
    near(byThickness(list, 3)?.modulus, 24 / 22, 0.05);
    expect(byThickness(list, 2.5)?.shape).toBe('rod');
    near(byThickness(list, 2.5)?.length, 25, 0.06);
    near(byThickness(list, 8)?.volume, 2048, 0.05);
    near(byThickness(list, 2.5)?.run, 103 - 4, 0.05);
  });
});
