import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity } from '../symbols.ts';

export const lift = defineFormula({
  id: 'sand/lift',
  title: 'Lift on the cope',
  answers: 'How hard does the liquid metal push the top of the mould up?',
  equation: 'F = rho * g * h * A',
  symbols: {
    F: { name: 'lift on the cope', unit: 'N', range: [0, 100000], why: 'the moulds of a small foundry' },
    rho: liquidDensity,
    h: {
      name: 'metal in the cup above the roof of the cavity',
      unit: 'm',
      show: 'mm',
      range: [0, 2],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.06,
    },
    A: {
      name: 'area seen from above',
      unit: 'm²',
      show: 'cm²',
      range: [0.000001, 2],
      why: 'the moulds of a small foundry',
      usual: 0.002,
      note: 'The shadow of the cavity, runners included, not the surface of the metal.',
    },
    g: gravity,
  },
  assumes: [
    'a flat roof; where the roof rises use its mean depth below the metal in the cup',
    'at rest: a surge at the end of the pour adds 20 to 50 %',
  ],
  source: { key: 'rao-manufacturing', at: 'moulding, metallostatic forces', how: 'memory' },
  examples: [
    {
      title: 'Bronze fitting of 40 cm² under 60 mm',
      given: { rho: '7520 kg/m³', h: '60 mm', A: '40 cm²' },
      expect: { F: '17.7 N' },
      from: { byHand: '7520 × 9.80665 × 0.06 × 0.004 = 17.70.' },
    },
  ],
  caution: [
    'A cope that lifts lets metal run out at the parting. Weight or clamp it before the pour, with a margin.',
  ],
  words: ['cope', 'weights', 'clamp', 'metallostatic', 'run-out'],
});
