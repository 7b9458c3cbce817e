import { defineMaterial } from '../core/material.ts';

export const sterlingSilver = defineMaterial({
  id: 'sterling-silver',
  role: 'metal',
  name: 'Sterling silver',
  words: ['925', 'Ag925', 'silver 925'],
  composition: 'Ag 92.5, Cu 7.5',
  description: '925 silver: fine detail, bright, with a long freezing range and an appetite for oxygen.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '10360 kg/m³',
        spread: '1 %',
        source: { key: 'trade-practice', at: 'jewellers’ forum, sterling silver', how: 'read' },
      },
      {
        at: '20 °C',
        value: '10366 kg/m³',
        spread: '1 %',
        source: { key: 'estimate', at: 'volumes of the elements added', how: 'estimate' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 896 °C',
        value: '9240 kg/m³',
        spread: '3 %',
        source: {
          key: 'estimate',
          at: 'volumes of the liquid elements added, scaled by the alloy’s solid density',
          how: 'estimate',
        },
      },
    ],
    'heat.solid': [
      {
        at: '25 °C',
        value: '246 J/(kg·K)',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements', how: 'estimate' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '320 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'liquid to solid at 850 °C',
        value: '96 kJ/kg',
        spread: '18 %',
        source: {
          key: 'hayes-ag-cu',
          at: 'assessed Gibbs functions, enthalpy difference at one temperature',
          how: 'estimate',
        },
      },
      {
        at: 'fusion',
        value: '113 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'equilibrium',
        value: '803 °C',
        spread: '24 °C',
        source: {
          key: 'hayes-ag-cu',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
      {
        at: 'segregated casting',
        value: '779 °C',
        spread: '15 °C',
        source: { key: 'nist-solder', at: 'Ag–Cu, eutectic 779.1 °C', how: 'read' },
        note: 'In a casting the last liquid freezes at the eutectic.',
      },
    ],
    liquidus: [
      {
        at: 'equilibrium',
        value: '896 °C',
        spread: '5 °C',
        source: {
          key: 'hayes-ag-cu',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
      {
        at: 'trade value',
        value: '893 °C',
        spread: '10 °C',
        source: { key: 'trade-practice', at: 'jewellers’ forum, sterling silver', how: 'read' },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, near the solidus',
        value: '320 W/(m·K)',
        spread: '12 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '360 W/(m·K)',
        spread: '14 %',
        source: { key: 'makers-data', at: 'jewellery alloy sheets', how: 'memory' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid',
        value: '150 W/(m·K)',
        spread: '20 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '4.1 mPa·s',
        spread: '12 %',
        source: {
          key: 'estimate',
          at: 'from the pure metal and the trend in Iida and Guthrie',
          how: 'estimate',
        },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the liquidus',
        value: '0.92 N/m',
        spread: '7.6 %',
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
        at: 'between silver and copper',
        value: '4.5 %',
        spread: '36 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '6.1 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.95 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '803 to 20 °C',
        value: '1.72 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'investment; 1.5 to 2 with rubber and wax',
        value: '1.6 %',
        spread: '25 %',
        source: { key: 'trade-practice', at: 'jewellery investment casting', how: 'common practice' },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '950 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 50 to 100 K', how: 'common practice' },
      },
      {
        at: 'pouring, thin work in sand',
        value: '1000 °C',
        spread: '30 °C',
        source: { key: 'trade-practice', at: 'silversmiths’ casting', how: 'common practice' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1000 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 50 to 100 K', how: 'common practice' },
      },
      {
        at: 'pouring, thin work in investment',
        value: '1020 °C',
        spread: '30 °C',
        source: {
          key: 'trade-practice',
          at: 'investment casting of sterling silver',
          how: 'common practice',
        },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.3 1',
        spread: '60 %',
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
        value: '0.7 %',
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
        at: 'bright; higher with copper oxide',
        value: '0.1 1',
        spread: '175 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Liquid silver drinks oxygen: melt under charcoal or in graphite, and mind the carbon monoxide.',
    'In gypsum investment keep the metal below about 1050 °C and the mould below 750 °C: above that it gives off sulphur dioxide.',
    'Silver fume and dust have a very low exposure limit: extraction.',
  ],
});
