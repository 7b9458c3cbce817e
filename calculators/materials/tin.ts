import { defineMaterial } from '../core/material.ts';

export const tin = defineMaterial({
  id: 'tin',
  role: 'metal',
  name: 'Tin',
  words: ['Sn'],
  composition: 'Sn',
  description: 'Pure tin: melts at 232 °C and fills fine detail at low risk.',
  properties: {
    'density.solid': [
      {
        at: '20 to 25 °C',
        value: '7287 kg/m³',
        spread: '0.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'solid at the melting point',
        value: '7174 kg/m³',
        spread: '1 %',
        source: {
          key: 'estimate',
          at: '20 C density with linear expansion 0.52 % to melting (TPRC vol. 12 type value, memory)',
          how: 'estimate',
        },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 231.9 °C',
        value: '6979 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for tin, evaluated; coefficients read in an open property library',
          how: 'read',
        },
        note: 'Falls by 0.65 kg/m³ for each kelvin above.',
      },
      {
        at: 'liquid at 231.9 °C',
        value: '6979 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Density of Molten Elements and Representative Salts, read through an open property library',
          how: 'read',
        },
        note: 'Falls by 0.65 kg/m³ for each kelvin above.',
      },
    ],
    'heat.solid': [
      {
        at: '25 °C',
        value: '227 J/(kg·K)',
        spread: '12 %',
        source: { key: 'mendeleev', at: 'specific heat capacity of the element', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
      {
        at: 'at the melting point',
        value: '259 J/(kg·K)',
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
        value: '250 J/(kg·K)',
        spread: '6 %',
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
        value: '60.2 kJ/kg',
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
        value: '231.93 °C',
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
        value: '231.93 °C',
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
        value: '2586 °C',
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
        value: '59.5 W/(m·K)',
        spread: '10 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '25 °C',
        value: '66.8 W/(m·K)',
        spread: '10 %',
        source: { key: 'open-element-data', at: 'thermal conductivity at 25 °C', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the melting point',
        value: '28 W/(m·K)',
        spread: '12.6 %',
        source: {
          key: 'assael-conductivity',
          at: 'reference correlation, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid at the melting point',
        value: '27 W/(m·K)',
        spread: '12 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the melting point',
        value: '1.87 mPa·s',
        spread: '8 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for tin, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid at the melting point',
        value: '1.85 mPa·s',
        spread: '8 %',
        source: { key: 'smithells', at: 'ch. 14, liquid metals', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the melting point, little oxygen',
        value: '0.56 N/m',
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
        value: '2.51 %',
        spread: '20 %',
        source: {
          key: 'campbell-castings',
          at: 'table of solidification shrinkages, after Wray',
          how: 'memory',
        },
      },
      {
        at: 'melting point',
        value: '2.4 %',
        spread: '20 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
      {
        at: 'melting point',
        value: '2.7 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.93 %',
        spread: '15 %',
        source: {
          key: 'assael-copper',
          at: 'reference correlation for tin, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.93 %',
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
        value: '0.52 %',
        spread: '10 %',
        source: { key: 'tprc-expansion', at: 'thermal expansion of the element', how: 'memory' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand or metal mould',
        value: '0.5 %',
        spread: '50 %',
        source: { key: 'tprc-expansion', at: 'free contraction from the melting point', how: 'memory' },
        note: 'Printed allowances of 1 to 1.6 % are more than the metal can contract.',
      },
      {
        at: 'sand',
        value: '1.28 %',
        spread: '28 %',
        source: {
          key: 'westermann',
          at: 'list of shrinkage allowances (low end); the high end is from Dooley, ch. XXXI',
          how: 'read',
        },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '260 °C',
        spread: '15 °C',
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
        value: '320 °C',
        spread: '15 °C',
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
        value: '0.5 %',
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
        at: 'clean liquid',
        value: '0.06 1',
        spread: '67 %',
        source: { key: 'makers-data', at: 'infra-red emissivity tables', how: 'memory' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Burns the skin like any melt, and looks the same hot or cold.',
  ],
});
