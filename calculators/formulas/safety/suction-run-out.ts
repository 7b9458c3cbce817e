import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity } from '../symbols.ts';

export const suctionRunOut = defineFormula({
  id: 'safety/suction-run-out',
  title: 'Metal drawn through a crack',
  answers: 'A crack opens under suction: how much metal goes down before the air is let in?',
  equation: 'm = C * rho * A * t * sqrt(2 * (g * h + dp / rho))',
  symbols: {
    m: {
      name: 'metal run out',
      unit: 'kg',
      show: 'g',
      range: [0, 100],
      why: 'small melts; no more than was poured',
      note: 'The catch pot must hold the whole pour, not this: a hand is slow.',
    },
    C: {
      name: 'flow coefficient of the crack',
      unit: '1',
      range: [0.3, 1],
      why: 'from a crooked crack to a smooth hole',
      usual: 0.7,
    },
    rho: liquidDensity,
    A: {
      name: 'area of the crack',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a hair crack to a fallen mould',
      usual: 0.00001,
      note: 'Finer than a tenth of a millimetre, surface tension mostly holds the metal.',
    },
    t: {
      name: 'time until the air is let in',
      unit: 's',
      range: [0.05, 60],
      why: 'quicker than a foot on the valve; longer, all is gone',
      usual: 2,
    },
    h: {
      name: 'head of metal above the crack',
      unit: 'm',
      show: 'mm',
      range: [0, 2],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.1,
    },
    dp: {
      name: 'suction below the crack',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 35000,
    },
    g: gravity,
  },
  assumes: ['the crack stays as it is and the metal liquid', 'the head stays: the high end'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, flow through a nozzle, with suction added', how: 'read' },
  examples: [
    {
      title: 'A crack of 10 mm² under 35 kPa for two seconds',
      given: { C: '0.7 1', rho: '7520 kg/m³', A: '10 mm²', t: '2 s', h: '100 mm', dp: '35 kPa' },
      expect: { m: '353 g' },
      from: {
        byHand:
          'gh = 0.98067, 35 000 ÷ 7520 = 4.65426; twice the sum 11.26984, root 3.35706 m/s; × 0.7 × 7520 × 1e-5 × 2 = 0.35343 kg: several pours of the lamp shield.',
      },
    },
  ],
  caution: [
    'A dry metal catch pot with dry sand under the flask, large enough for the whole pour. No water trap, no wet filter, no plastic hose beneath.',
    'Quick vent in reach of a foot; nobody over the flask; pump exhaust outdoors.',
    'Shown to teach, not to permit: local codes and trained people decide.',
  ],
  words: ['run-out', 'blow-through', 'catch pot', 'leak', 'flask cracks', 'vacuum table'],
});
