import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity, surfaceTension } from '../symbols.ts';

export const gateSpeed = defineFormula({
  id: 'filling/gate-speed',
  title: 'Fastest gate speed that keeps the surface whole',
  answers: 'How fast may the metal come in before its surface folds in on itself?',
  equation: 'v = 2 * (gamma * g / rho)^(1 / 4)',
  symbols: {
    v: {
      name: 'critical speed',
      unit: 'm/s',
      range: [0.1, 1],
      why: 'faster than this the metal is a spray; slower, it stands',
    },
    gamma: surfaceTension,
    rho: liquidDensity,
    g: gravity,
  },
  assumes: [
    'a jet may rise no higher than a drop can stand: two times the root of γ/(ρg)',
    'a free surface, air above it: in a thin web, held by its walls, the limit is looser',
    'suction of tens of kilopascals drives metal well above this speed; filling and clean metal then pull against each other, and the choice is yours to state',
  ],
  source: { key: 'campbell', at: 'ch. 2, critical velocity', how: 'memory' },
  examples: [
    {
      title: 'Silicon bronze',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³' },
      expect: { v: '0.398 m/s' },
      from: { byHand: '1.2 × 9.80665 / 7520 = 0.00156489; fourth root 0.198894; doubled 0.3978.' },
    },
  ],
  words: ['critical velocity', 'oxide film', 'entrainment', 'bifilm', 'turbulence'],
});
