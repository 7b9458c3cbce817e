import { evaluate, solve } from '../../calculators/core/solve.ts';
import { fromSI, toSI } from '../../calculators/core/units.ts';
import { timeBoth } from '../../calculators/formulas/freezing/time-both.ts';
import { timeSand } from '../../calculators/formulas/freezing/time-sand.ts';
import { figures, type FigureTable } from './drawing.ts';
import { bronze, investment, pouring, sand, sections } from './lamp-shield.ts';

const temperatures = Array.from({ length: 59 }, (_, i) => 20 + 10 * i);

/** Seconds to freeze of each section, by mould and mould temperature: perfect contact, and the face counted. */
export function freezingNumbers() {
  const moulds = [
    { name: 'dry sand', b: sand.diffusivity, h: sand.h, limit: Math.round(fromSI(sand.limit, '°C')) },
    {
      name: 'gypsum investment',
      b: investment.diffusivity,
      h: investment.h,
      limit: Math.round(fromSI(investment.limit, '°C')),
    },
  ].map(({ name, b, h, limit }) => ({
    name,
    h,
    limit,
    sections: sections.map((section) => {
      const at = (celsius: number) => ({
        rho: bronze['density.liquid'],
        M: section.M,
        L: bronze.latent,
        c: bronze['heat.liquid'],
        dT: pouring - bronze.liquidus,
        b,
        T_f: bronze.freezing,
        T_m: toSI(celsius, '°C'),
      });
      return {
        name: section.name,
        perfect: temperatures.map((celsius) => short(evaluate(timeSand, at(celsius)))),
        both: temperatures.map((celsius) => short(timeOf({ ...at(celsius), h }))),
      };
    }),
  }));
  const shown = [20, 120, 200, 500].map((celsius) => temperatures.indexOf(celsius));
  const table: FigureTable = {
    caption: `Seconds to freeze, bronze at ${fromSI(pouring, '°C')} °C: perfect contact / face counted`,
    head: ['Section', ...shown.map((k) => `mould ${temperatures[k]} °C`)],
    rows: moulds.flatMap((mould) =>
      mould.sections.map(({ name, perfect, both }) => [
        `${name}, ${mould.name}`,
        ...shown.map((k) => `${figures(perfect[k]!)} / ${figures(both[k]!)} s`),
      ]),
    ),
  };
  return { temperatures, moulds, table };
}

const short = (seconds: number): number => Number(seconds.toPrecision(3));

function timeOf(given: Record<string, number>): number {
  const solved = solve(timeBoth, given, 't');
  if (!solved.ok) throw new Error(`freezing figure: ${solved.reason}`);
  return solved.value;
}
