import { evaluate } from '../../calculators/core/solve.ts';
import { toSI } from '../../calculators/core/units.ts';
import { steam } from '../../calculators/formulas/safety/steam.ts';
import { figures, type FigureTable } from './drawing.ts';

const masses = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2];
const temperatures = [200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200];

/** Litres of steam for each mass (g) and temperature (°C), at the pressure of the open air. */
export function steamGrowthNumbers() {
  const litres = masses.map((m) =>
    temperatures.map((T) => {
      const V = evaluate(steam, { m: m / 1000, T: toSI(T, '°C'), p: 101325 });
      return Number((V * 1000).toPrecision(4));
    }),
  );
  const shown = [200, 700, 1100].map((T) => temperatures.indexOf(T));
  const table: FigureTable = {
    caption: 'Litres of steam, at the pressure of the open air',
    head: ['Water', ...shown.map((i) => `${temperatures[i]} °C`)],
    rows: masses.map((m, i) => [`${m} g`, ...shown.map((k) => `${figures(litres[i]![k]!)} L`)]),
  };
  return { masses, temperatures, litres, table };
}
