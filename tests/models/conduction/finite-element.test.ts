import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { acrossThinnest } from '../../../calculators/models/conduction/across.ts';
import type { Mesh } from '../../../calculators/models/conduction/mesh.ts';
import { sectionMesh } from '../../../calculators/models/conduction/section.ts';
import { statedError } from '../../../calculators/models/conduction/stated-error.ts';
import { barOf, bronze, done, partOf, sand } from './ways.ts';

/** What `finite-element.py` beside this printed, on the day it says: by width of element, mm. */
interface Answers {
  readonly probes: readonly (readonly [number, number])[];
  readonly times: readonly number[];
  readonly results: Readonly<
    Record<
      string,
      {
        readonly centre_liquidus: number;
        readonly centre_solidus: number;
        readonly last: number;
        readonly temperatures: readonly (readonly number[])[];
        readonly drift: number;
      }
    >
  >;
}
const found = JSON.parse(readFileSync(new URL('./finite-element.json', import.meta.url), 'utf8')) as Readonly<
  Record<'bar' | 'tee', Answers>
>;

/** As the script has it: one conductivity, one specific heat, contact without a gap. */
const metal = { ...bronze, k: { solid: 55, liquid: 55 }, c: { solid: 435, liquid: 435 } };
const others = [{ ...sand, h: 1e9 }];

const teeOf = (spacing: number): Mesh =>
  sectionMesh({
    turned: false,
    rectangles: [
      { x: 0, y: 0, width: 0.016, height: 0.004, region: 0 },
      { x: 0, y: 0, width: 0.002, height: 0.018, region: 0 },
    ],
    spacing,
    wall: 0.025,
    ratio: 1.15,
    mirror: { x: true, y: false },
  });

/** Between the middles of cells, evenly; beyond the first at a plane of symmetry nothing changes. */
function at(mesh: Mesh, temperature: Float32Array, place: readonly [number, number]): number {
  const [nx] = [mesh.axes[0].centres.length];
  const [x, y] = ([0, 1] as const).map((d) => {
    const { centres } = mesh.axes[d];
    const high = Math.max(
      1,
      centres.findIndex((centre) => centre > place[d]),
    );
    const [from, to] = [centres[high - 1]!, centres[high]!];
    return { low: high - 1, part: Math.min(1, Math.max(0, (place[d] - from) / (to - from))) };
  }) as [{ low: number; part: number }, { low: number; part: number }];
  const row = (j: number): number => {
    const first = temperature[x.low + nx * j]!;
    return first + x.part * (temperature[x.low + 1 + nx * j]! - first);
  };
  return row(y.low) + y.part * (row(y.low + 1) - row(y.low));
}

/*
 * The elements come from below and the cells from above. With cells and elements that grow by 5 % outwards, not 15
 * and 20 %, halved and carried on to nothing, both close in on 10.74 s for the bar (2026-11-26): each is off by less
 * than it states.
 */
describe('a general finite-element program', () => {
  it.each([
    ['bar', barOf(0.0005), [true, true], [0, 0]],
    ['tee', teeOf(0.0005), [true, false], [0, 0.003]],
  ] as const)(
    'freezes the %s at the same times and leaves the same temperatures',
    (name, mesh, mirror, centre) => {
      const { results, probes, times } = found[name];
      const [coarse, fine] = [results['0.5']!, results['0.25']!];
      expect(fine.drift).toBeLessThan(1e-9);
      const given = partOf(mesh, { metal, others });
      const error = statedError(given, acrossThinnest(mesh, mirror));
      const whole = done({ ...given, probes: [centre] });
      const own = (key: 'centre_solidus' | 'last'): number => Math.abs(coarse[key] - fine[key]);
      expect(whole.drift).toBeLessThan(1e-9);
      // Each within its own stated error: the solver's of the mesh, the elements' by halving them.
      const middle = whole.solidus[whole.metal.indexOf(whole.traces[0]!.cell)]!;
      expect(Math.abs(middle - fine.centre_solidus)).toBeLessThan(
        error * fine.centre_solidus + own('centre_solidus'),
      );
      expect(Math.abs(whole.last!.time - fine.last)).toBeLessThan(error * fine.last + own('last'));
      for (const [n, until] of times.entries()) {
        const { temperature } = done({ ...given, until });
        for (const [p, place] of probes.entries()) {
          const printed = fine.temperatures[n]![p]!;
          const halved = Math.abs(printed - coarse.temperatures[n]![p]!);
          // The first two probes lie in the metal, the third in sand: an error of the mesh shows as one of how far each
          // has come from its start.
          const change = Math.abs(printed - (p < 2 ? 1100 : 20));
          const here = at(mesh, temperature, place) - 273.15;
          expect(
            Math.abs(here - printed),
            `${name}, probe ${p} after ${until} s: ${here}, ${printed}`,
          ).toBeLessThan(error * change + halved);
        }
      }
    },
  );
});
