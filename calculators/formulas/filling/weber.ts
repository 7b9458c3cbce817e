import { defineFormula } from '../../core/formula.ts';
import { liquidDensity, metalSpeed, surfaceTension } from '../symbols.ts';

export const weber = defineFormula({
  id: 'filling/weber',
  title: 'Weber number of the stream',
  answers: 'Is the speed or the surface tension in charge?',
  equation: 'We = rho * v^2 * r / gamma',
  symbols: {
    We: {
      name: 'Weber number',
      unit: '1',
      range: [0.001, 1000],
      why: 'outside it one of the two hardly matters',
    },
    rho: liquidDensity,
    v: metalSpeed,
    r: {
      name: 'radius of the stream',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.05],
      why: 'the channels of small moulds',
      usual: 0.003,
      note: 'The radius, not the diameter: tables that use the diameter are twice as large.',
    },
    gamma: surfaceTension,
  },
  assumes: ['the length is the radius of curvature of the front'],
  source: { key: 'campbell', at: 'ch. 2, Weber number', how: 'memory' },
  examples: [
    {
      title: 'Silicon bronze at half a metre a second, stream of 6 mm',
      given: { rho: '7520 kg/m³', v: '0.5 m/s', r: '3 mm', gamma: '1.2 N/m' },
      expect: { We: '4.70 1' },
      from: { byHand: '7520 × 0.25 × 0.003 / 1.2 = 5.64 / 1.2 = 4.70.' },
    },
  ],
  words: ['surface tension', 'jet', 'splash'],
});
