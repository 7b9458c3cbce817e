import { defineMaterial } from '../core/material.ts';

export const fineSilver = defineMaterial({
  id: 'fine-silver',
  role: 'metal',
  name: 'Fine silver',
  words: ['999', 'Ag', 'pure silver'],
  composition: 'Ag',
  description: '999 silver: soft, white, freezes at one temperature and can spit oxygen as it does.',
  properties: {
    'density.solid': [
      {
        at: '20 to 25 °C',
        value: '10500 kg/m³',
        spread: '0.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'solid at the melting point',
        value: '9836 kg/m³',
        spread: '1 %',
        source: {
          key: 'estimate',
          at: '20 C density with linear expansion 2.2 % to melting (TPRC vol. 12 type value, memory)',
          how: 'estimate',
        },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 961.8 °C',
        value: '9294 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'assael-silver',
          at: 'reference correlation for silver, evaluated; coefficients read in an open property library',
          how: 'read',
        },
        note: 'Falls by 0.88 kg/m³ for each kelvin above.',
      },
      {
        at: 'liquid at 961.8 °C',
        value: '9320 kg/m³',
        spread: '1.5 %',
        source: {
          key: 'crc-handbook',
          at: 'Density of Molten Elements and Representative Salts, read through an open property library',
          how: 'read',
        },
        note: 'Falls by 0.9 kg/m³ for each kelvin above.',
      },
    ],
    'heat.solid': [
      {
        at: '25 °C',
        value: '235 J/(kg·K)',
        spread: '12 %',
        source: { key: 'mendeleev', at: 'specific heat capacity of the element', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
      {
        at: 'at the melting point',
        value: '296 J/(kg·K)',
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
        value: '310 J/(kg·K)',
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
        value: '104.8 kJ/kg',
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
        value: '961.78 °C',
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
        value: '961.78 °C',
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
        value: '2162 °C',
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
        value: '362 W/(m·K)',
        spread: '10 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '25 °C',
        value: '429 W/(m·K)',
        spread: '10 %',
        source: { key: 'open-element-data', at: 'thermal conductivity at 25 °C', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the melting point',
        value: '175 W/(m·K)',
        spread: '12 %',
        source: { key: 'mills-monaghan-keene', at: 'table for the element', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the melting point',
        value: '4.15 mPa·s',
        spread: '8 %',
        source: {
          key: 'assael-silver',
          at: 'reference correlation for silver, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid at the melting point',
        value: '3.88 mPa·s',
        spread: '8 %',
        source: { key: 'smithells', at: 'ch. 14, liquid metals', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the melting point, little oxygen',
        value: '0.925 N/m',
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
        value: '5.2 %',
        spread: '49 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
      {
        at: 'melting point',
        value: '3.51 %',
        spread: '20 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.94 %',
        spread: '15 %',
        source: {
          key: 'assael-silver',
          at: 'reference correlation for silver, evaluated; coefficients read in an open property library',
          how: 'read',
        },
      },
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.97 %',
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
        value: '2.2 %',
        spread: '10 %',
        source: { key: 'tprc-expansion', at: 'thermal expansion of the element', how: 'memory' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'investment or sand',
        value: '1.9 %',
        spread: '25 %',
        source: {
          key: 'estimate',
          at: 'between the free contraction and sterling’s allowance',
          how: 'estimate',
        },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '1040 °C',
        spread: '20 °C',
        source: { key: 'trade-practice', at: 'investment casting of fine silver', how: 'common practice' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1080 °C',
        spread: '20 °C',
        source: { key: 'trade-practice', at: 'investment casting of fine silver', how: 'common practice' },
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
        value: '0.05 1',
        spread: '100 %',
        source: { key: 'makers-data', at: 'infra-red emissivity tables', how: 'memory' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Spits on freezing when it holds oxygen: cover with charcoal, wear eye protection until it is solid.',
    'Silver fume and dust have a very low exposure limit: extraction.',
  ],
});
