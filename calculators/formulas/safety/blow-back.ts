import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity } from '../symbols.ts';

export const blowBack = defineFormula({
  id: 'safety/blow-back',
  title: 'How high gas can throw the metal back',
  answers: 'Gas presses in the mould: does the metal hold it down, or does it come up the sprue?',
  equation: 'z = (p_gas - dp) / (rho * g) - h',
  symbols: {
    z: {
      name: 'height over the cup the gas can lift the metal to',
      unit: 'm',
      show: 'mm',
      range: [-2, 20],
      why: 'from held fast to the roof',
      note: 'Below nought the metal holds, by so much head. Above nought keep away from the sprue: spatter flies higher than this.',
    },
    p_gas: {
      name: 'gas made in the mould, over what would be there without',
      sign: 'p_gas',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 100000],
      why: 'above that the mould bursts first',
      usual: 6000,
    },
    dp: {
      name: 'suction in the cavity',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 0,
    },
    rho: liquidDensity,
    h: {
      name: 'head of metal above the gas',
      unit: 'm',
      show: 'mm',
      range: [0, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    g: gravity,
  },
  assumes: [
    'the gas finds no other way out than the sprue',
    'gas that breaks through in bubbles throws drops much farther',
  ],
  source: { key: 'openstax-physics', at: 'ch. 11 and 12, pressure of a column and Bernoulli', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 2, core blows', how: 'memory' }],
  examples: [
    {
      title: 'Half a per cent of water under the lamp shield, 6 kPa against 40 mm of bronze',
      given: { p_gas: '6 kPa', dp: '0 kPa', rho: '7520 kg/m³', h: '40 mm' },
      expect: { z: '41.4 mm' },
      from: { byHand: '7520 × 9.80665 = 73 746 Pa each metre; 6000 ÷ 73 746 = 81.36 mm; less 40.' },
    },
    {
      title: 'A steam burst of 16 kPa with 10 kPa of suction',
      given: { p_gas: '16 kPa', dp: '10 kPa', rho: '7520 kg/m³', h: '40 mm' },
      expect: { z: '41.4 mm' },
      from: { byHand: 'The suction takes 10 of the 16; the remaining 6 kPa lift 81.36 mm, less 40.' },
    },
  ],
  caution: [
    'Face off the sprue, always, from the first drop until the cup is dull. Shield over glasses.',
    'Shown to teach, not to permit: dry the mould until its mass stands still. Local codes and trained people decide.',
  ],
  words: ['blow', 'kick', 'boil in the cup', 'spitting', 'steam', 'gas pressure'],
});
