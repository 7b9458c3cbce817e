import { describe, expect, it } from 'vitest';
import { analyse } from '../../calculators/meshes/analyse.ts';
import { gridRound } from '../../calculators/meshes/cells.ts';
import { ball, box, rod } from '../../calculators/meshes/forms.ts';
import {
  bodyAt,
  gateBodies,
  gateVolumes,
  poseOf,
  withGate,
  type GateMetal,
} from '../../calculators/meshes/gate-metal.ts';
import { measure } from '../../calculators/meshes/measure.ts';
import { solverCells } from '../../calculators/meshes/solver-cells.ts';
import { scaled, type Triangles } from '../../calculators/meshes/triangles.ts';
import { freeze } from '../../calculators/models/conduction/freeze.ts';
import { givenMesh } from '../../calculators/models/conduction/given-cells.ts';
import { lineMesh } from '../../calculators/models/conduction/line.ts';
import { metalArea } from '../../calculators/models/conduction/pace.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import { voxelMesh } from '../../calculators/models/conduction/voxels.ts';
import { bronze, sand } from '../models/conduction/ways.ts';

const looked = (mesh: Triangles, spacing: number) =>
  analyse({ mesh, measures: measure(mesh) }, gridRound(mesh, spacing));
const metal: GateMetal = { button: true, width: 4, length: 5, diameter: 10, height: 8 };

describe('gate and button as metal', () => {
  const block = box(20, 20, 8);
  const alone = looked(block, 0.5);

  it('stand outside the part, pointing up where all sides are as near', () => {
    const pose = poseOf(alone.skin, alone.filled, [10, 10, 4], metal);
    expect(pose.out).toEqual([0, 0, 1]);
    expect(pose.foot[2]).toBeCloseTo(8, 9);
    expect(pose.clash).toBe(0);
  });

  it('point away from a wall they would run into', () => {
    const hook = looked(withGate(box(30, 20, 4), [scaledBy(box(4, 20, 20), 26, 0, 4)]), 0.5);
    // In the foot of the L, 3 mm from the wall: up lies along the wall, so a wide button there would clash.
    const pose = poseOf(hook.skin, hook.filled, [23, 10, 2], { ...metal, diameter: 14 });
    expect(pose.clash).toBeLessThan(0.02);
    expect(pose.out[2]).toBe(-1);
  });

  it('add their volume and surface, what is joined counted once', () => {
    const pose = poseOf(alone.skin, alone.filled, [10, 10, 8], metal);
    const whole = looked(withGate(block, gateBodies(pose, metal, 2)), 0.4);
    const { stub, button } = gateVolumes(metal);
    // 4 · 4 · 5, and π/4 · 10² · 8
    expect(stub).toBeCloseTo(80, 9);
    expect(button).toBeCloseTo(628.32, 2);
    expect(whole.volume / (3200 + stub + button)).toBeCloseTo(1, 1.8);
    // 1440 − 16, 4 · 4 · 5 = 80, and π · 10 · 8 + π/2 · 10² − 16
    const area = 1424 + 80 + 251.3 + 157.1 - 16;
    expect(Math.abs(whole.area / area - 1)).toBeLessThan(0.02);
  });

  it('know which body a place lies in', () => {
    const pose = { foot: [10, 10, 8], out: [0, 0, 1], clash: 0 } as const;
    expect(bodyAt(pose, metal, [10, 10, 5], 0.2)).toBe('part');
    expect(bodyAt(pose, metal, [11, 10, 11], 0.2)).toBe('gate');
    expect(bodyAt(pose, metal, [12, 12, 16], 0.2)).toBe('button');
    // As high as the button and far beside it: an arm of the part
    expect(bodyAt(pose, metal, [30, 12, 16], 0.2)).toBe('part');
  });
});

function scaledBy({ points, corners }: Triangles, x: number, y: number, z: number): Triangles {
  return { points: points.map((p, i) => p + [x, y, z][i % 3]!), corners };
}

const start = [1373.15, 293.15];
const sides = ['+x', '-x', '+y', '-y', '+z', '-z'] as const;

/** When a part drawn in millimetres is solid, s, by its cells; with what part of its volume and surface they have. */
function solved(mesh: Triangles, spacing: number, wall: number) {
  const part = scaled(mesh, 1e-3);
  const { cells, filled, volume } = solverCells(part, part, spacing, wall);
  const given = givenMesh(cells);
  const weigh = volume / (filled.cells * spacing ** 3);
  const found = freeze(
    { metal: { ...bronze, rho: bronze.rho * weigh }, others: [sand], start, sides, mesh: given },
    {},
    voxelEngine,
  );
  if (!found.ok) throw new Error(found.why);
  return { time: found.last!.time, place: found.last!.place, weigh, area: metalArea(given) };
}

/** The same by the solver along one line, which the mesh knows nothing of. */
function alongLine(shape: 'round' | 'ball', half: number): number {
  const found = freeze({
    metal: bronze,
    others: [sand],
    start,
    sides: ['+x'],
    mesh: lineMesh({ shape, half, outer: half + 0.03, cells: 24, first: half / 100, ratio: 1.1 }),
  });
  if (!found.ok) throw new Error(found.why);
  return found.last!.time;
}

describe('a part from its mesh, frozen by the solver', { timeout: 60_000 }, () => {
  it('a ball of 8 mm: as along one line, nearer with finer cells', () => {
    const truth = alongLine('ball', 0.004);
    const [coarse, fine] = [1e-3, 0.5e-3].map((h) => solved(ball(4, 40), h, 0.006));
    expect(Math.abs(coarse!.time / truth - 1)).toBeLessThan(0.06);
    expect(Math.abs(fine!.time / truth - 1)).toBeLessThan(0.03);
    expect(fine!.area / (4 * Math.PI * 16e-6)).toBeCloseTo(1, 2);
    expect(Math.hypot(...fine!.place)).toBeLessThan(0.001);
  });

  it('a rod of 4 mm: as along one line once its ends are far', () => {
    const truth = alongLine('round', 0.002);
    expect(Math.abs(solved(rod(2, 30, 48), 0.5e-3, 0.005).time / truth - 1)).toBeLessThan(0.03);
  });

  it('a plate: as the same plate given to the solver as a box', () => {
    const [w, d, t] = [0.016, 0.012, 0.003];
    const own = freeze(
      {
        metal: bronze,
        others: [sand],
        start,
        sides: ['+x', '+y', '+z'],
        mesh: voxelMesh({
          solids: [{ kind: 'box', region: 0, low: [-w / 2, -d / 2, -t / 2], high: [w / 2, d / 2, t / 2] }],
          spacing: 0.0005,
          wall: 0.006,
          mirror: [true, true, true],
        }),
      },
      {},
      voxelEngine,
    );
    if (!own.ok) throw new Error(own.why);
    const { time, weigh } = solved(box(16, 12, 3), 0.0005, 0.006);
    expect(weigh).toBeCloseTo(1, 2);
    expect(time / own.last!.time).toBeCloseTo(1, 2);
  });
});
