import { evaluate, solve } from '../../calculators/core/solve.ts';
import { toSI } from '../../calculators/core/units.ts';
import { entryPressure } from '../../calculators/formulas/filling/entry-pressure.ts';
import { fillTime } from '../../calculators/formulas/filling/fill-time.ts';
import { flowTimeInterface } from '../../calculators/formulas/filling/flow-time-interface.ts';
import { gateSpeed } from '../../calculators/formulas/filling/gate-speed.ts';
import { pourRate } from '../../calculators/formulas/filling/pour-rate.ts';
import { sectionSpeed } from '../../calculators/formulas/filling/section-speed.ts';
import { velocity } from '../../calculators/formulas/filling/velocity.ts';
import { figures, type FigureTable } from './drawing.ts';
import { bronze, sand, sections } from './lamp-shield.ts';

const heads = Array.from({ length: 14 }, (_, i) => 20 + 10 * i);
const suctions = [0, 5, 10, 15, 20, 25, 30, 35, 40, 50];
const temperatures = [20, 60, 100, 150, 200, 250, 300];

const rho = bronze['density.liquid'];
const gamma = bronze['surface-tension'];
/** The safe side: a metal that does not wet the mould at all. */
const theta = Math.PI;
/** What the race assumes besides: said in the caption. */
export const raceAssumes = { superheat: 40, charge: 0.047, pour: 1, discharge: 0.7 } as const;

/**
 * For each section, seconds to fill by head (mm) and suction at the cavity (kPa), 0 where the metal does not
 * enter; and seconds the tip keeps flowing by mould temperature. The speed is what pressure gives or what the
 * pour supplies, the smaller.
 */
export function raceNumbers() {
  const Q = evaluate(pourRate, { m: raceAssumes.charge, rho, t: raceAssumes.pour });
  const all = sections.map((section) => {
    const { a, c, M, run, sharing } = section;
    const p_cap = evaluate(entryPressure, { gamma, theta, a, c });
    const most = evaluate(sectionSpeed, { Q, A: a * c, n: sharing });
    const speed = heads.map((head) =>
      suctions.map((suction) => {
        const solved = solve(
          velocity,
          { C: raceAssumes.discharge, h: head / 1000, dp: suction * 1000, p_cap, rho },
          'v',
        );
        return solved.ok ? Number(Math.min(solved.value, most).toPrecision(3)) : 0;
      }),
    );
    const fills = speed.map((row) =>
      row.map((v) => (v > 0 ? Number(evaluate(fillTime, { l: run, v }).toPrecision(3)) : 0)),
    );
    const flows = temperatures.map((celsius) => {
      const t = evaluate(flowTimeInterface, {
        rho,
        M,
        f: bronze['critical-solid'],
        L: bronze.latent,
        c: bronze['heat.liquid'],
        dT: raceAssumes.superheat,
        h: sand.h,
        T_f: bronze.freezing,
        T_m: toSI(celsius, '°C'),
      });
      return Number(t.toPrecision(3));
    });
    return { name: section.name, needs: Math.round(p_cap), speed, fills, flows };
  });
  const [quiet] = [evaluate(gateSpeed, { gamma, rho })];
  const cases = [
    [40, 0, 20],
    [40, 0, 150],
    [120, 0, 150],
    [40, 15, 150],
    [40, 35, 150],
  ] as const;
  const table: FigureTable = {
    caption: 'Seconds to fill / seconds it stays fluid',
    head: ['Head, suction, mould', ...all.map(({ name }) => name)],
    rows: cases.map(([head, suction, celsius]) => [
      `${head} mm, ${suction} kPa, ${celsius} °C`,
      ...all.map(({ fills, flows }) => {
        const fill = fills[heads.indexOf(head)]![suctions.indexOf(suction)]!;
        const flow = flows[temperatures.indexOf(celsius)]!;
        return `${fill === 0 ? 'does not enter' : figures(fill)} / ${figures(flow)}`;
      }),
    ]),
  };
  return { heads, suctions, temperatures, sections: all, quiet: Number(quiet!.toPrecision(2)), table };
}
