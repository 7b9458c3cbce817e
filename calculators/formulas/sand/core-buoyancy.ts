import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity } from '../symbols.ts';

export const coreBuoyancy = defineFormula({
  id: 'sand/core-buoyancy',
  title: 'Lift on a core',
  answers: 'How hard does the metal float the core up?',
  equation: 'F = (rho - rho_c) * g * V',
  symbols: {
    F: { name: 'lift on the core', unit: 'N', range: [0, 100000], why: 'the moulds of a small foundry' },
    rho: liquidDensity,
    rho_c: {
      name: 'density of the core',
      sign: 'ρ_c',
      unit: 'kg/m³',
      range: [800, 3000],
      why: 'the materials of the workshop lie here',
      usual: 1600,
    },
    V: {
      name: 'volume of the core in the metal',
      unit: 'm³',
      show: 'cm³',
      range: [1e-8, 0.1],
      why: 'small cores',
      usual: 0.000005,
      note: 'Leave out the prints: they are not in the metal.',
    },
    g: gravity,
  },
  assumes: ['the core is wholly surrounded by metal, so metal reaches below it'],
  source: { key: 'groover', at: 'ch. 11, buoyancy on a core', how: 'memory' },
  examples: [
    {
      title: 'Core of 100 mm diameter and 100 mm length in aluminium',
      given: { rho: '2600 kg/m³', rho_c: '1600 kg/m³', V: '785.398 cm³' },
      expect: { F: '7.7 N' },
      from: { key: 'gate-me', at: 'collected papers, buoyancy on a core', how: 'read' },
    },
  ],
  words: ['core', 'buoyancy', 'chaplet', 'float'],
});
