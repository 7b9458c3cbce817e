import { defineMaterial } from '../core/material.ts';

export const brass7030 = defineMaterial({
  id: 'brass-70-30',
  role: 'metal',
  name: 'Brass 70/30',
  words: ['cartridge brass', 'CuZn30', 'C26000'],
  composition: 'Cu 70, Zn 30',
  description: 'Softer, more golden brass; zinc leaves it at pouring heat.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '8530 kg/m³',
        spread: '1 %',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 954 °C',
        value: '7560 kg/m³',
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
        at: '20 °C',
        value: '375 J/(kg·K)',
        spread: '12 %',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
      {
        at: 'brass',
        value: '380 J/(kg·K)',
        spread: '12 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '500 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'liquid to solid at 930 °C',
        value: '173 kJ/kg',
        spread: '12 %',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions, enthalpy difference at one temperature',
          how: 'estimate',
        },
      },
      {
        at: 'fusion',
        value: '178 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '916 °C',
        spread: '5 °C',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
      {
        at: 'equilibrium',
        value: '918 °C',
        spread: '15 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '954 °C',
        spread: '5 °C',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
      {
        at: 'equilibrium',
        value: '949 °C',
        spread: '10 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    boils: [
      {
        at: 'zinc vapour at one atmosphere',
        value: '1172 °C',
        spread: '40 °C',
        source: {
          key: 'cost-507',
          at: 'zinc activity over liquid brass, with the vapour pressure of zinc',
          how: 'estimate',
        },
        note: 'The melt loses zinc long before this.',
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the solidus',
        value: '145 W/(m·K)',
        spread: '17 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '120 W/(m·K)',
        spread: '10 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '75 W/(m·K)',
        spread: '20 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '3.8 mPa·s',
        spread: '32 %',
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
        value: '0.95 N/m',
        spread: '16 %',
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
        at: '70/30 brass',
        value: '4.5 %',
        spread: '40 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '6.3 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.12 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '916 to 20 °C',
        value: '1.88 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'brass',
        value: '1.5 %',
        spread: '25 %',
        source: {
          key: 'westermann',
          at: 'list of shrinkage allowances, read in a document copy',
          how: 'read',
        },
      },
      {
        at: 'brass',
        value: '1.56 %',
        spread: '20 %',
        source: { key: 'dooley', at: 'ch. XXXI, read in a web copy', how: 'read' },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '1020 °C',
        spread: '25 °C',
        source: { key: 'estimate', at: 'liquidus and the loss of zinc', how: 'estimate' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1080 °C',
        spread: '25 °C',
        source: { key: 'estimate', at: 'liquidus and the loss of zinc', how: 'estimate' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.4 1',
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
        value: '2.5 %',
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
        at: 'slag, oxide or charcoal on it',
        value: '0.4 1',
        spread: '125 %',
        source: {
          key: 'estimate',
          at: 'clean copper 0.13–0.15; slag, oxide and charcoal far higher',
          how: 'estimate',
        },
      },
      {
        at: 'clean pool',
        value: '0.14 1',
        spread: '30 %',
        source: {
          key: 'makers-data',
          at: 'emissivity table of an infra-red instrument maker, copper at 1100 to 1300 °C',
          how: 'read',
        },
      },
    ],
  },
  cautions: [
    'Zinc boils at 907 °C, below the pouring temperature: white zinc oxide fume causes metal-fume fever. Pour under extraction, at the lowest heat that fills.',
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Copper fume causes fever too: extraction at the crucible and at the pour.',
  ],
});
