import { defineFormula } from '../../core/formula.ts';

export const spill = defineFormula({
  id: 'safety/spill',
  title: 'How deep the spill tray must be',
  answers: 'If the whole crucible falls, does the tray hold it above its bed of dry sand?',
  equation: 'h = s + f * m / (rho * A)',
  symbols: {
    h: {
      name: 'height of the tray’s wall',
      unit: 'm',
      show: 'mm',
      range: [0.01, 1],
      why: 'trays on a bench or floor',
    },
    s: {
      name: 'bed of dry sand',
      unit: 'm',
      show: 'mm',
      range: [0.02, 0.5],
      why: 'less lets the heat through',
      usual: 0.05,
      note: '50 mm at least, baked, kept covered.',
    },
    f: {
      name: 'times the full crucible',
      unit: '1',
      range: [1, 3],
      why: 'less than once is no tray',
      usual: 1.1,
    },
    m: {
      name: 'metal in the full crucible',
      unit: 'kg',
      range: [0.01, 50],
      why: 'small melts',
      usual: 1.5,
    },
    rho: {
      name: 'density of the liquid metal',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1500, 20000],
      why: 'casting metals lie between magnesium and gold',
      usual: 7520,
    },
    A: {
      name: 'area of the tray',
      unit: 'm²',
      range: [0.01, 4],
      why: 'from one crucible to a pouring floor',
      usual: 0.09,
      note: 'It should reach under the whole path from furnace to mould.',
    },
  },
  assumes: [
    'the metal lies on the sand and none runs into it',
    'a level tray; add a finger’s breadth for the splash',
  ],
  source: {
    key: 'estimate',
    at: 'volume of the metal on a level tray, with a tenth to spare',
    how: 'estimate',
  },
  examples: [
    {
      title: '1.5 kg of bronze on a tray of 300 × 300 mm',
      given: { s: '50 mm', f: '1.1 1', m: '1.5 kg', rho: '7520 kg/m³', A: '0.09 m²' },
      expect: { h: '52.44 mm' },
      from: {
        byHand: '1.65 kg ÷ 7520 = 219.4 cm³; over 900 cm² it lies 2.44 mm deep; on 50 mm of sand 52.44.',
      },
    },
  ],
  caution: [
    'Shown to teach: local codes and trained people decide. Never over bare concrete, wood, a drain or anything wet.',
    'Nobody catches a falling crucible. Step back, let it freeze, cover it with dry sand. Never water.',
  ],
  words: ['tray', 'dry sand', 'run-out', 'floor', 'crucible breaks'],
});
