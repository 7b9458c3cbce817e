import { axis, even, flat } from '../../calculators/models/conduction/axis.ts';
import type { Case } from '../../calculators/models/conduction/case.ts';
import { acrossThinnest } from '../../calculators/models/conduction/across.ts';
import { freeze, type Freezing } from '../../calculators/models/conduction/freeze.ts';
import { sectionMesh } from '../../calculators/models/conduction/section.ts';
import { statedError } from '../../calculators/models/conduction/stated-error.ts';

export interface Study {
  readonly id: string;
  readonly title: string;
  /** What is made finer, and what the error is counted against. */
  readonly along: string;
  readonly against: string;
  readonly points: readonly { readonly count: number; readonly error: number; readonly stated?: number }[];
  /** By how many powers the error falls when twice as fine, over the last two points. */
  readonly order: number;
}

const done = (given: Case): Freezing => {
  const found = freeze(given);
  if (!found.ok) throw new Error(`the solver refused a study of its convergence: ${found.why}`);
  return found;
};

const orderOf = (points: Study['points']): number => {
  const [a, b] = points.slice(-2);
  return a && b ? Math.log(a.error / b.error) / Math.log(b.count / a.count) : Number.NaN;
};

const half = 0.01;
const fourier = 0.4;
const body = { k: 50, rho: 8000, c: 500 };

/** A plate whose faces are held cold, from one even temperature: Fourier's series at a place, 0 to 1. */
function series(x: number): number {
  let sum = 0;
  for (let n = 0; n < 40; n += 1) {
    const m = (n + 0.5) * Math.PI;
    sum += (((-1) ** n * 2) / m) * Math.cos((m * x) / half) * Math.exp(-m * m * fourier);
  }
  return sum;
}

/** The same plate by the solver: the largest difference from the series at any cell. */
function plate(cells: number, growth: number): number {
  const x = axis(even(0, half, cells));
  const until = (fourier * half * half * body.rho * body.c) / body.k;
  const of = (value: number) => ({ solid: value, liquid: value });
  const cold = 1000;
  const warm = 1000;
  const found = done({
    metal: { k: of(body.k), rho: body.rho, c: of(body.c), latent: 1, solidus: 500, liquidus: 500 },
    others: [],
    mesh: { axes: [x, flat, flat], region: new Uint8Array(cells) },
    start: [cold + warm],
    outside: { kind: 'held', temperature: cold },
    sides: ['+x'],
    until,
    pace: { growth, shortest: 0.002 * growth * until, longest: Infinity },
    probes: [...x.centres].map((at) => [at]),
  });
  const off = [...x.centres].map((at, n) =>
    Math.abs((found.traces[n]!.temperature.at(-1)! - cold) / warm - series(at)),
  );
  return Math.max(...off);
}

/** When a bronze bar of 8 by 16 mm in dry sand is all solid, s, and what the mesh is said to put it off by. */
function bar(spacing: number) {
  const mesh = sectionMesh({
    turned: true,
    rectangles: [{ x: 0, y: 0, width: 0.004, height: 0.008, region: 0 }],
    spacing,
    wall: 0.02,
    ratio: 1.2,
    mirror: { x: true, y: true },
  });
  const given: Case = {
    metal: {
      k: { solid: 55, liquid: 45 },
      rho: 8360,
      c: { solid: 435, liquid: 480 },
      latent: 190e3,
      solidus: 1133.15,
      liquidus: 1243.15,
    },
    others: [{ name: 'mould', k: 0.6, rhoc: 1.7e6, h: 700 }],
    mesh,
    start: [1373.15, 293.15],
  };
  return {
    time: done(given).last?.time ?? Number.NaN,
    stated: statedError(given, acrossThinnest(mesh, [true, true, false])),
  };
}

/** Worked when the page is built. */
export function studies(): readonly Study[] {
  const byMesh = [2, 4, 8, 16].map((cells) => ({ count: cells, error: plate(cells, 0.0005) }));
  const steps = [0.2, 0.1, 0.05, 0.025];
  const settled = plate(64, 0.0005);
  const byStep = steps.map((growth) => ({
    count: Math.round(1 / growth),
    error: Math.abs(plate(64, growth) - settled),
  }));
  const finest = bar(0.000125).time;
  const byBar = [0.002, 0.001, 0.0005, 0.00025].map((spacing) => {
    const { time, stated } = bar(spacing);
    return { count: Math.round(0.008 / spacing), error: Math.abs(time / finest - 1), stated };
  });
  return [
    {
      id: 'plate-mesh',
      title: 'A plate cooled at its faces, without freezing',
      along: 'cells across half the plate',
      against: 'Fourier’s series, largest difference anywhere, as a part of the first one',
      points: byMesh,
      order: orderOf(byMesh),
    },
    {
      id: 'plate-step',
      title: 'The same plate, by the length of the steps',
      along: 'a step is the time so far over this',
      against: 'the series, less what 64 cells leave over with the finest steps',
      points: byStep,
      order: orderOf(byStep),
    },
    {
      id: 'bar-mesh',
      title: 'A bar of 8 by 16 mm that freezes in sand',
      along: 'cells across the bar',
      against: 'the last time at 64 cells across; the open marks are what the page would state',
      points: byBar,
      order: orderOf(byBar),
    },
  ];
}
