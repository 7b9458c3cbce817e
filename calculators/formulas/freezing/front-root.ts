import { defineFormula } from '../../core/formula.ts';
import { freezingTemperature, latentHeat, mouldTemperature, solidHeat } from '../symbols.ts';

export const frontRoot = defineFormula({
  id: 'freezing/front-root',
  title: 'Freezing against a thick metal mould: the front number',
  answers: 'How fast does the solid skin grow against a thick copper or iron mould?',
  equation: 'z * exp(z^2) * (erf(z) + b_s / b_m) = c_s * (T_f - T_m) / (sqrt(pi) * L)',
  symbols: {
    z: {
      name: 'front number',
      sign: 'ζ',
      unit: '1',
      range: [0.001, 2.5],
      why: 'beyond it the latent heat is not worth counting',
      note: 'Skin thickness is 2ζ√(αt), with α of the solid metal.',
    },
    b_s: {
      name: 'heat diffusivity of the solid metal',
      unit: 'J·s^-½/(m²·K)',
      range: [3000, 45000],
      why: 'from stainless steel to silver',
      usual: 20000,
    },
    b_m: {
      name: 'heat diffusivity of the mould',
      unit: 'J·s^-½/(m²·K)',
      range: [300, 45000],
      why: 'from plaster to copper',
      usual: 13000,
    },
    c_s: solidHeat,
    L: latentHeat,
    T_f: freezingTemperature,
    T_m: mouldTemperature,
  },
  where: [
    {
      test: 'T_f > T_m',
      why: 'The mould is hotter than the freezing temperature, so the metal cannot freeze.',
    },
  ],
  assumes: [
    'perfect contact at the face',
    'a mould thick enough that its outside stays cool',
    'no superheat, one freezing temperature',
  ],
  source: { key: 'carslaw-jaeger', at: '§11.2, freezing in contact with a solid', how: 'memory' },
  alsoSee: [{ key: 'ghosh-mallik', at: 'ch. 2, casting in a thick metal mould', how: 'read' }],
  examples: [
    {
      title: 'Iron against a very thick copper mould, put back into the equation',
      given: {
        b_s: '20893.5 J·s^-½/(m²·K)',
        b_m: '36617.6 J·s^-½/(m²·K)',
        c_s: '670 J/(kg·K)',
        L: '272 kJ/kg',
        T_f: '1540 °C',
        T_m: '28 °C',
      },
      expect: { z: '0.816 1' },
      from: {
        byHand:
          'Right side 670 × 1512 / (1.77245 × 272 000) = 2.10129. At ζ = 0.816: exp(0.66586) = 1.94616, erf 0.75151, φ = 0.57059, so 0.816 × 1.94616 × 1.32210 = 2.0996. At 0.817 it is 2.1068. Hence 0.816.',
      },
    },
  ],
  words: ['Neumann', 'ingot mould', 'permanent mould', 'copper mould'],
});
