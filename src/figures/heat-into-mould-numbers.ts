import { evaluate } from '../../calculators/core/solve.ts';
import { fromSI, toSI } from '../../calculators/core/units.ts';
import { contactTemperature } from '../../calculators/formulas/freezing/contact-temperature.ts';
import { heatBalance } from '../../calculators/formulas/freezing/heat-balance.ts';
import { heatDiffusivity } from '../../calculators/formulas/freezing/heat-diffusivity.ts';
import { figures, type FigureTable } from './drawing.ts';
import { bronze, pouring, sand } from './lamp-shield.ts';

const charges = [10, 20, 30, 47, 60, 80, 100];
const moulds = [0.3, 0.5, 0.8, 1.2, 2, 3, 5];
const starts = [20, 60, 100, 150, 200, 250, 300];

/**
 * Final common temperature of bronze and dry sand for each charge (g), mould (kg) and start (°C), and what the
 * face jumps to for each start; all in °C.
 */
export function heatIntoMouldNumbers() {
  const b_1 = evaluate(heatDiffusivity, {
    k: bronze['conductivity.liquid'],
    rho: bronze['density.liquid'],
    c: bronze['heat.liquid'],
  });
  const contact = starts.map((start) => {
    const T_c = evaluate(contactTemperature, {
      b_1,
      T_1: pouring,
      b_2: sand.diffusivity,
      T_2: toSI(start, '°C'),
    });
    return Math.round(fromSI(T_c, '°C'));
  });
  const common = charges.map((charge) =>
    moulds.map((mould) =>
      starts.map((start) => {
        const T_e = evaluate(heatBalance, {
          m: charge / 1000,
          c_l: bronze['heat.liquid'],
          c_s: bronze['heat.solid'],
          L: bronze.latent,
          T_p: pouring,
          T_f: bronze.freezing,
          m_m: mould,
          c_m: sand.heat,
          T_m: toSI(start, '°C'),
        });
        return Number(fromSI(T_e, '°C').toFixed(T_e < 400 ? 1 : 0));
      }),
    ),
  );
  const at = charges.indexOf(47);
  const shown = [20, 150, 300].map((start) => starts.indexOf(start));
  const table: FigureTable = {
    caption: `47 g of silicon bronze poured at ${fromSI(pouring, '°C')} °C into dry sand: where it all ends`,
    head: ['Mould', ...shown.map((k) => `from ${starts[k]} °C`)],
    rows: [
      ...moulds.map((mould, j) => [
        `${mould} kg`,
        ...shown.map((k) => `${figures(common[at]![j]![k]!, 3)} °C`),
      ]),
      ['face at once', ...shown.map((k) => `${contact[k]} °C`)],
    ],
  };
  return { charges, moulds, starts, common, contact, pouring: fromSI(pouring, '°C'), table };
}
