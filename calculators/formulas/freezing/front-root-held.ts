import { defineFormula } from '../../core/formula.ts';
import { freezingTemperature, latentHeat, solidHeat } from '../symbols.ts';

export const frontRootHeld = defineFormula({
  id: 'freezing/front-root-held',
  title: 'Freezing against a face held cold: the front number',
  answers: 'How fast does the solid skin grow when the mould face is kept at one temperature?',
  equation: 'sqrt(pi) * z * exp(z^2) * erf(z) = c_s * (T_f - T_0) / L',
  symbols: {
    z: {
      name: 'front number',
      sign: 'ζ',
      unit: '1',
      range: [0.001, 2.5],
      why: 'beyond it the latent heat is not worth counting',
      note: 'Skin thickness is 2ζ√(αt), with α of the solid metal.',
    },
    c_s: solidHeat,
    L: latentHeat,
    T_f: freezingTemperature,
    T_0: {
      name: 'temperature of the face',
      unit: 'K',
      show: '°C',
      range: [250, 1200],
      why: 'between a cold workshop and iron',
      usual: 293.15,
    },
  },
  where: [
    {
      test: 'T_f > T_0',
      why: 'The face is hotter than the freezing temperature, so nothing freezes against it.',
    },
  ],
  assumes: [
    'a water-cooled face in perfect contact',
    'no superheat, one freezing temperature',
    'the solid metal alone resists the heat',
  ],
  source: { key: 'carslaw-jaeger', at: '§11.2, Neumann’s solution', how: 'memory' },
  alsoSee: [{ key: 'alexiades-solomon', at: '§2.1, one-phase problem', how: 'memory' }],
  examples: [
    {
      title: 'Stefan number of one',
      given: { c_s: '1000 J/(kg·K)', L: '100 kJ/kg', T_f: '200 °C', T_0: '100 °C' },
      expect: { z: '0.6201 1' },
      from: { key: 'alexiades-solomon', at: '§2.1, root for a Stefan number of one', how: 'memory' },
    },
  ],
  words: ['Neumann', 'Stefan problem', 'chill', 'water-cooled'],
});
