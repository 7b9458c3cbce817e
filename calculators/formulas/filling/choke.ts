import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity, liquidDensity, pressureDifference } from '../symbols.ts';

export const choke = defineFormula({
  id: 'filling/choke',
  title: 'Area of the choke',
  answers: 'How large must the narrowest place be, to fill in the time I want?',
  equation: 'A = m / (rho * t * C * sqrt(2 * (g * h + dp / rho)))',
  symbols: {
    A: {
      name: 'area of the choke',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a pin hole to a large gate',
    },
    m: {
      name: 'mass that passes the choke',
      unit: 'kg',
      show: 'g',
      range: [0.001, 50],
      why: 'small charges',
      usual: 0.06,
      note: 'Casting and everything after the choke, not the sprue above it.',
    },
    rho: liquidDensity,
    t: {
      name: 'time to fill',
      unit: 's',
      range: [0.1, 60],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
      usual: 1,
    },
    C: dischargeCoefficient,
    h: {
      name: 'effective head',
      unit: 'm',
      show: 'mm',
      range: [0.002, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    dp: pressureDifference,
    g: gravity,
  },
  assumes: [
    'density of the liquid, not the solid',
    'the coefficient counts once: not again in a speed worked out before',
    'sprue full from the first moment',
  ],
  source: { key: 'rao-manufacturing', at: 'gating systems, choke area', how: 'memory' },
  examples: [
    {
      title: '60 g of silicon bronze in one second under 40 mm',
      given: { m: '60 g', rho: '7520 kg/m³', t: '1 s', C: '0.7 1', h: '40 mm', dp: '0 kPa' },
      expect: { A: '12.87 mm²' },
      from: {
        byHand:
          '√(2 × 9.80665 × 0.04) = 0.885738 m/s, times 0.7 is 0.620017. 0.06 / 7520 = 7.9787e-6 m³/s. Divided: 1.2869e-5 m².',
      },
    },
    {
      title: 'The same with 5 kPa really at the cavity',
      given: { m: '60 g', rho: '7520 kg/m³', t: '1 s', C: '0.7 1', h: '40 mm', dp: '5 kPa' },
      expect: { A: '7.84 mm²' },
      from: {
        byHand:
          'gh = 0.392266, 5000 / 7520 = 0.664894, sum 1.057160; √2.114320 = 1.454070, times 0.7 is 1.017849 m/s. 7.9787e-6 / 1.017849 = 7.839e-6 m².',
      },
    },
  ],
  words: ['gating', 'sprue', 'bottleneck', 'gate size'],
});
