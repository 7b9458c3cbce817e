import { defineMaterial } from '../core/material.ts';

export const aluminiumSilicon12 = defineMaterial({
  id: 'aluminium-silicon-12',
  role: 'metal',
  name: 'Aluminium, 12 % silicon',
  words: ['413', 'AlSi12', 'LM6', 'aluminum'],
  composition: 'Al 88, Si 12',
  description:
    'Nearly eutectic: the most fluid of the casting aluminiums, freezes almost at one temperature.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '2657 kg/m³',
        spread: '1 %',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 582 °C',
        value: '2450 kg/m³',
        spread: '3.3 %',
        source: {
          key: 'estimate',
          at: 'volumes of the liquid elements added, scaled by the alloy’s solid density',
          how: 'estimate',
        },
      },
    ],
    'heat.solid': [
      {
        at: '100 °C',
        value: '963 J/(kg·K)',
        spread: '12 %',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '1150 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'liquid to solid at 577 °C',
        value: '498 kJ/kg',
        spread: '28 %',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions, enthalpy difference at one temperature',
          how: 'estimate',
        },
      },
      {
        at: 'fusion',
        value: '389 kJ/kg',
        spread: '5 %',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
      {
        at: 'fusion, measured',
        value: '550 kJ/kg',
        spread: '9.5 %',
        source: {
          key: 'costa-kenisarin',
          at: 'aluminium–silicon eutectics, 498 to 560 kJ/kg',
          how: 'memory',
        },
      },
      {
        at: 'fusion',
        value: '564 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'eutectic',
        value: '577 °C',
        spread: '3 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    liquidus: [
      {
        at: 'equilibrium, 12 % silicon',
        value: '582 °C',
        spread: '5 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, near the solidus',
        value: '150 W/(m·K)',
        spread: '13 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '25 °C, die cast',
        value: '121 W/(m·K)',
        spread: '28 %',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid',
        value: '70 W/(m·K)',
        spread: '14 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '1.1 mPa·s',
        spread: '27 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'oxide-skinned',
        value: '0.84 N/m',
        spread: '4.8 %',
        source: {
          key: 'estimate',
          at: 'from the pure metals; oxygen, phosphorus, lead and tin lower it',
          how: 'estimate',
        },
      },
    ],
    'contact-angle': [
      {
        at: 'liquid on sand or investment',
        value: '130 deg',
        spread: '12 %',
        source: {
          key: 'estimate',
          at: 'does not wet; 110 to 150 degrees for clean and oxidised metals',
          how: 'estimate',
        },
      },
    ],
    'shrinkage.freezing': [
      {
        at: '12 % silicon',
        value: '3.8 %',
        spread: '20 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '4.5 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.28 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '577 to 20 °C',
        value: '1.23 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'aluminium alloys',
        value: '1.25 %',
        spread: '20 %',
        source: {
          key: 'westermann',
          at: 'list of shrinkage allowances, read in a document copy',
          how: 'read',
        },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '650 °C',
        spread: '25 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '720 °C',
        spread: '25 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.6 1',
        spread: '40 %',
        source: {
          key: 'flemings',
          at: 'ch. 7, fluidity: 0.2 to 0.5 for alloys with a long freezing range, most of the latent heat for pure metals and eutectics',
          how: 'memory',
        },
      },
    ],
    'loss.melting': [
      {
        at: 'small melt, one heat',
        value: '3 %',
        spread: '70 %',
        source: {
          key: 'trade-practice',
          at: 'weigh in and out over several heats for your own figure',
          how: 'common practice',
        },
      },
    ],
    emissivity: [
      {
        at: 'with oxide skin',
        value: '0.2 1',
        spread: '150 %',
        source: { key: 'makers-data', at: 'infra-red emissivity tables', how: 'memory' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Shows no red glow when it is molten: treat every piece as hot.',
    'Wet charges and rust are explosive with molten aluminium: dry, clean metal only.',
    'Sodium for modifying burns and reacts with water: buy modified ingot instead.',
  ],
});
