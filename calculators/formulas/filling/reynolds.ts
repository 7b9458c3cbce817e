import { defineFormula } from '../../core/formula.ts';
import { liquidDensity, metalSpeed } from '../symbols.ts';

export const reynolds = defineFormula({
  id: 'filling/reynolds',
  title: 'Reynolds number of the stream',
  answers: 'Does the metal run smoothly or in eddies?',
  equation: 'Re = rho * v * D / mu',
  symbols: {
    Re: {
      name: 'Reynolds number',
      unit: '1',
      range: [1, 1000000],
      why: 'outside it one of the two hardly matters',
      note: 'Below about 2300 smooth, above about 4000 in eddies.',
    },
    rho: liquidDensity,
    v: metalSpeed,
    D: {
      name: 'hydraulic diameter',
      unit: 'm',
      show: 'mm',
      range: [0.0002, 0.1],
      why: 'the channels of small moulds',
      usual: 0.0017,
      note: 'Four times the area over the wetted rim, so 4M.',
    },
    mu: {
      name: 'viscosity of the liquid metal',
      sign: 'μ',
      unit: 'Pa·s',
      show: 'mPa·s',
      range: [0.0005, 0.02],
      why: 'liquid metals lie here',
      usual: 0.004,
    },
  },
  assumes: ['a channel running full'],
  source: { key: 'incropera', at: '§8.1', how: 'memory' },
  examples: [
    {
      title: 'Web of the lamp shield at half a metre a second',
      given: { rho: '7520 kg/m³', v: '0.5 m/s', D: '1.712 mm', mu: '0.004 Pa·s' },
      expect: { Re: '1609 1' },
      from: { byHand: '7520 × 0.5 × 0.001712 / 0.004 = 6.43712 / 0.004 = 1609.3.' },
    },
  ],
  words: ['laminar', 'turbulent', 'eddies'],
});
