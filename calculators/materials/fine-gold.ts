import { defineMaterial } from '../core/material.ts';

export const fineGold = defineMaterial({
  id: 'fine-gold',
  role: 'metal',
  name: 'Fine gold',
  words: ['999', '24 carat', '24K', 'Au', 'pure gold'],
  composition: 'Au',
  description: '999 gold: heavy, soft, and does not oxidise.',
  properties: {
    'density.solid': [
      {
        at: '20 to 25 °C',
        value: '19300 kg/m³',
        spread: '0.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'solid at the melting point',
        value: '18294 kg/m³',
        spread: '1 %',
        source: {
          key: 'estimate',
          at: '20 C density with linear expansion 1.8 % to melting (TPRC vol. 12 type value, memory)',
          how: 'estimate',
        },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 1064.2 °C',
        value: '17310 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Density of Molten Elements and Representative Salts, read through an open property library',
          how: 'read',
        },
        note: 'Falls by 1.3 kg/m³ for each kelvin above.',
      },
    ],
    'heat.solid': [
      {
        at: '25 °C',
        value: '129 J/(kg·K)',
        spread: '12 %',
        source: { key: 'mendeleev', at: 'specific heat capacity of the element', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'at the melting point',
        value: '157 J/(kg·K)',
        spread: '5.1 %',
        source: { key: 'dinsdale', at: 'liquid gold, 30.96 J/(mol K)', how: 'memory' },
      },
    ],
    latent: [
      {
        at: 'melting point',
        value: '63.7 kJ/kg',
        spread: '4 %',
        source: {
          key: 'crc-handbook',
          at: 'Enthalpy of Fusion, read through an open property library',
          how: 'read',
        },
      },
    ],
    solidus: [
      {
        at: 'one atmosphere',
        value: '1064.18 °C',
        spread: '1 °C',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
    ],
    liquidus: [
      {
        at: 'one atmosphere',
        value: '1064.18 °C',
        spread: '1 °C',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
    ],
    boils: [
      {
        at: 'one atmosphere',
        value: '2836 °C',
        spread: '20 °C',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the melting point',
        value: '247 W/(m·K)',
        spread: '10 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '25 °C',
        value: '318 W/(m·K)',
        spread: '10 %',
        source: { key: 'open-element-data', at: 'thermal conductivity at 25 °C', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the melting point',
        value: '105 W/(m·K)',
        spread: '12 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the melting point',
        value: '5 mPa·s',
        spread: '8 %',
        source: { key: 'smithells', at: 'ch. 14, liquid metals', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the melting point, little oxygen',
        value: '1.145 N/m',
        spread: '6 %',
        source: { key: 'keene', at: 'recommended value for the element', how: 'memory' },
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
        at: 'melting point',
        value: '5.47 %',
        spread: '25 %',
        source: {
          key: 'campbell-castings',
          at: 'table of solidification shrinkages, after Wray',
          how: 'memory',
        },
      },
      {
        at: 'melting point',
        value: '5.5 %',
        spread: '20 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
      {
        at: 'melting point',
        value: '5.5 %',
        spread: '20 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
      {
        at: 'melting point',
        value: '5.4 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.78 %',
        spread: '15 %',
        source: {
          key: 'crc-handbook',
          at: 'Density of Molten Elements and Representative Salts, read through an open property library',
          how: 'read',
        },
      },
    ],
    'contraction.free': [
      {
        at: 'melting point to 20 °C',
        value: '1.8 %',
        spread: '10 %',
        source: { key: 'tprc-expansion', at: 'thermal expansion of the element', how: 'memory' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'investment',
        value: '1.6 %',
        spread: '25 %',
        source: {
          key: 'estimate',
          at: 'between the free contraction and 18 carat’s allowance',
          how: 'estimate',
        },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '1120 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'investment casting of fine gold', how: 'common practice' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1180 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'investment casting of fine gold', how: 'common practice' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.8 1',
        spread: '20 %',
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
        value: '0.3 %',
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
        at: 'pure, highly polished or liquid',
        value: '0.03 1',
        spread: '50 %',
        source: { key: 'makers-data', at: 'emissivity table of an infra-red instrument maker', how: 'read' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Its pouring heat is at the limit of gypsum investment.',
  ],
});
