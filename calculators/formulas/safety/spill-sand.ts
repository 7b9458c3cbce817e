import { defineFormula } from '../../core/formula.ts';

export const spillSand = defineFormula({
  id: 'safety/spill-sand',
  title: 'Dry sand for the spill tray',
  answers: 'How much dry sand does the bed of this tray take?',
  equation: 'm = rho * A * s',
  symbols: {
    m: { name: 'dry sand', unit: 'kg', range: [0.1, 5000], why: 'trays on a bench or floor' },
    rho: {
      name: 'bulk density of the sand',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1200, 2000],
      why: 'loose to shaken down',
      usual: 1600,
    },
    A: {
      name: 'area of the tray',
      unit: 'm²',
      range: [0.01, 4],
      why: 'from one crucible to a pouring floor',
      usual: 0.09,
    },
    s: {
      name: 'depth of the bed',
      unit: 'm',
      show: 'mm',
      range: [0.02, 0.5],
      why: 'less lets the heat through',
      usual: 0.05,
    },
  },
  assumes: ['an even bed; keep as much again in a covered bucket with a long shovel'],
  source: { key: 'shop-practice', at: 'mensuration of simple solids', how: 'read' },
  examples: [
    {
      title: 'Tray of 300 × 300 mm, 50 mm of sand',
      given: { rho: '1600 kg/m³', A: '0.09 m²', s: '50 mm' },
      expect: { m: '7.20 kg' },
      from: { byHand: '0.09 × 0.05 = 0.0045 m³; × 1600 = 7.2.' },
    },
  ],
  caution: [
    'Sand that has stood open is damp: bake it. Damp sand under molten metal throws it out. Local codes and trained people decide.',
  ],
  words: ['tray', 'bed', 'bucket of sand', 'spill kit'],
});
