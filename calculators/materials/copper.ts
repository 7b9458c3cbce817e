import { defineMaterial } from '../core/material.ts';

export const copper = defineMaterial({
  id: 'copper',
  role: 'metal',
  name: 'Copper',
  words: ['Cu', 'C11000'],
  composition: 'Cu',
  description: 'Pure copper: hard to fill and to keep sound, since the liquid takes up oxygen and hydrogen.',
  properties: {
    'density.solid': [
      {
        at: '20 to 25 °C',
        value: '8960 kg/m³',
        spread: '0.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'solid at the melting point',
        value: '8381 kg/m³',
        spread: '1 %',
        source: {
          key: 'estimate',
          at: '20 C density with linear expansion 2.25 % to melting (TPRC vol. 12 type value, memory)',
          how: 'estimate',
        },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 1084.6 °C',
        value: '7997 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for copper, evaluated; coefficients read in an open property library',
          how: 'read',
        },
        note: 'Falls by 0.82 kg/m³ for each kelvin above.',
      },
      {
        at: 'liquid at 1084.6 °C',
        value: '7997 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Density of Molten Elements and Representative Salts, read through an open property library',
          how: 'read',
        },
        note: 'Falls by 0.82 kg/m³ for each kelvin above.',
      },
    ],
    'heat.solid': [
      {
        at: '25 °C',
        value: '385 J/(kg·K)',
        spread: '15 %',
        source: { key: 'mendeleev', at: 'specific heat capacity of the element', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
      {
        at: 'at the melting point',
        value: '525 J/(kg·K)',
        spread: '12 %',
        source: {
          key: 'janaf',
          at: 'table of the element, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'at the melting point',
        value: '470 J/(kg·K)',
        spread: '12 %',
        source: {
          key: 'dinsdale',
          at: 'Gibbs function of the element, differentiated; coefficients read in an open database',
          how: 'read',
        },
      },
    ],
    'heat.liquid': [
      {
        at: 'at the melting point',
        value: '517 J/(kg·K)',
        spread: '6 %',
        source: {
          key: 'janaf',
          at: 'table of the element, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'at the melting point',
        value: '494 J/(kg·K)',
        spread: '10 %',
        source: {
          key: 'dinsdale',
          at: 'Gibbs function of the element, differentiated; coefficients read in an open database',
          how: 'read',
        },
      },
    ],
    latent: [
      {
        at: 'melting point',
        value: '208.7 kJ/kg',
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
        value: '1084.62 °C',
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
        value: '1084.62 °C',
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
        value: '2560 °C',
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
        value: '330 W/(m·K)',
        spread: '10 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '25 °C',
        value: '401 W/(m·K)',
        spread: '10 %',
        source: { key: 'open-element-data', at: 'thermal conductivity at 25 °C', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the melting point',
        value: '150.5 W/(m·K)',
        spread: '9.8 %',
        source: {
          key: 'assael-conductivity',
          at: 'reference correlation, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid at the melting point',
        value: '163 W/(m·K)',
        spread: '12 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the melting point',
        value: '4.02 mPa·s',
        spread: '8 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for copper, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid at the melting point',
        value: '4 mPa·s',
        spread: '8 %',
        source: { key: 'smithells', at: 'ch. 14, liquid metals', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the melting point, little oxygen',
        value: '1.33 N/m',
        spread: '14 %',
        source: { key: 'keene', at: 'recommended value for the element', how: 'memory' },
      },
      {
        at: 'about 0.05 % dissolved oxygen',
        value: '1.15 N/m',
        spread: '13 %',
        source: { key: 'keene', at: 'effect of dissolved oxygen', how: 'memory' },
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
        value: '4.6 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
      {
        at: 'melting point',
        value: '5.3 %',
        spread: '20 %',
        source: {
          key: 'campbell-castings',
          at: 'table of solidification shrinkages, after Wray',
          how: 'memory',
        },
      },
      {
        at: 'melting point',
        value: '4.9 %',
        spread: '20 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
      {
        at: 'melting point',
        value: '3.96 %',
        spread: '20 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.02 %',
        spread: '15 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for copper, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.02 %',
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
        value: '2.25 %',
        spread: '10 %',
        source: { key: 'tprc-expansion', at: 'thermal expansion of the element', how: 'memory' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand',
        value: '1.6 %',
        spread: '60 %',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
      {
        at: 'copper',
        value: '1 %',
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
        value: '1130 °C',
        spread: '25 °C',
        source: {
          key: 'trade-practice',
          at: 'melting point and a working superheat',
          how: 'common practice',
        },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1230 °C',
        spread: '25 °C',
        source: {
          key: 'trade-practice',
          at: 'melting point and a working superheat',
          how: 'common practice',
        },
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
        value: '1.5 %',
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
        at: '1100 to 1300 °C, clean',
        value: '0.14 1',
        spread: '7.1 %',
        source: { key: 'makers-data', at: 'emissivity table of an infra-red instrument maker', how: 'read' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Copper fume causes fever too: extraction at the crucible and at the pour.',
    'Carbon monoxide from charcoal or a graphite crucible: ventilate, and keep an alarm at head height.',
  ],
});
