import { defineMaterial } from '../core/material.ts';

export const aluminiumSilicon7 = defineMaterial({
  id: 'aluminium-silicon-7',
  role: 'metal',
  name: 'Aluminium, 7 % silicon',
  words: ['A356', 'AlSi7Mg', 'LM25', 'aluminum'],
  composition: 'Al 92.7, Si 7, Mg 0.3',
  description: 'The general casting aluminium: light, fluid, mends its oxide skin at once.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '2685 kg/m³',
        spread: '1 %',
        source: { key: 'asm-2', at: 'A356.0 sheet, read in a document copy', how: 'read' },
      },
      {
        at: '20 °C',
        value: '2680 kg/m³',
        spread: '1 %',
        source: { key: 'asm-2', at: '356.0 data, read in a materials data base', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 615 °C',
        value: '2430 kg/m³',
        spread: '3 %',
        source: {
          key: 'estimate',
          at: 'volumes of the liquid elements added, scaled by the alloy’s solid density',
          how: 'estimate',
        },
      },
      {
        at: 'liquid at the liquidus',
        value: '2400 kg/m³',
        spread: '1.2 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
    ],
    'heat.solid': [
      {
        at: '100 °C',
        value: '963 J/(kg·K)',
        spread: '12 %',
        source: { key: 'asm-2', at: 'A356.0 sheet, read in a document copy', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '1160 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'liquid to solid at 590 °C',
        value: '441 kJ/kg',
        spread: '12 %',
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
        source: { key: 'asm-2', at: '356.0 data, read in a materials data base', how: 'read' },
      },
      {
        at: 'fusion',
        value: '425 kJ/kg',
        spread: '5 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
      {
        at: 'fusion',
        value: '494 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '555 °C',
        spread: '22 °C',
        source: { key: 'asm-2', at: 'A356.0 sheet, read in a document copy', how: 'read' },
      },
      {
        at: 'nominal',
        value: '557 °C',
        spread: '15 °C',
        source: { key: 'asm-2', at: '356.0 data, read in a materials data base', how: 'read' },
      },
      {
        at: 'binary eutectic',
        value: '577 °C',
        spread: '15 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
        note: 'Without magnesium the last liquid freezes at the binary eutectic.',
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '615 °C',
        spread: '5 °C',
        source: { key: 'asm-2', at: 'A356.0 sheet, read in a document copy', how: 'read' },
      },
      {
        at: 'nominal',
        value: '613 °C',
        spread: '10 °C',
        source: { key: 'asm-2', at: '356.0 data, read in a materials data base', how: 'read' },
      },
      {
        at: 'equilibrium, 7 % silicon',
        value: '617 °C',
        spread: '10 °C',
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
        value: '155 W/(m·K)',
        spread: '9.7 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '167 W/(m·K)',
        spread: '9.6 %',
        source: { key: 'asm-2', at: '356.0 data, read in a materials data base', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at 614 °C',
        value: '66 W/(m·K)',
        spread: '21 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '1.2 mPa·s',
        spread: '17 %',
        source: { key: 'mills-alloys', at: 'sheet of the alloy', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'oxide-skinned',
        value: '0.85 N/m',
        spread: '5.9 %',
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
        at: 'between aluminium and 12 % silicon',
        value: '5.5 %',
        spread: '18 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '5.9 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.29 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '555 to 20 °C',
        value: '1.34 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand',
        value: '1.3 %',
        spread: '20 %',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
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
        value: '680 °C',
        spread: '25 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '760 °C',
        spread: '25 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.35 1',
        spread: '45 %',
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
    'Reacts with fused silica crucibles.',
  ],
});
