import { defineMaterial } from '../core/material.ts';

export const brass6040 = defineMaterial({
  id: 'brass-60-40',
  role: 'metal',
  name: 'Brass 60/40',
  words: ['yellow brass', 'muntz metal', 'CuZn40', 'C28000'],
  composition: 'Cu 60, Zn 40',
  description: 'Yellow brass with a very short freezing range; its own zinc vapour sets how hot it may go.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '8390 kg/m³',
        spread: '1 %',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
      {
        at: 'leaded 60/40 C37000',
        value: '8410 kg/m³',
        spread: '1 %',
        source: {
          key: 'copper-development',
          at: 'C37000 (leaded 60/40) data, read in a maker’s copy',
          how: 'read',
        },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 904 °C',
        value: '7430 kg/m³',
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
        value: '377 J/(kg·K)',
        spread: '12 %',
        source: {
          key: 'copper-development',
          at: 'C37000 (leaded 60/40) data, read in a maker’s copy',
          how: 'read',
        },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
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
        at: 'liquid to solid at 890 °C',
        value: '147 kJ/kg',
        spread: '14 %',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions, enthalpy difference at one temperature',
          how: 'estimate',
        },
      },
      {
        at: 'fusion',
        value: '168 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '899 °C',
        spread: '11 °C',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
      {
        at: 'leaded C37000',
        value: '888 °C',
        spread: '15 °C',
        source: {
          key: 'copper-development',
          at: 'C37000 (leaded 60/40) data, read in a maker’s copy',
          how: 'read',
        },
      },
      {
        at: 'equilibrium',
        value: '891 °C',
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
        value: '904 °C',
        spread: '7 °C',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
      {
        at: 'leaded C37000',
        value: '899 °C',
        spread: '10 °C',
        source: {
          key: 'copper-development',
          at: 'C37000 (leaded 60/40) data, read in a maker’s copy',
          how: 'read',
        },
      },
      {
        at: 'equilibrium',
        value: '897 °C',
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
        value: '1098 °C',
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
        value: '135 W/(m·K)',
        spread: '19 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '119 W/(m·K)',
        spread: '10 %',
        source: {
          key: 'copper-development',
          at: 'C37000 (leaded 60/40) data, read in a maker’s copy',
          how: 'read',
        },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '72 W/(m·K)',
        spread: '25 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '3.6 mPa·s',
        spread: '39 %',
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
        value: '0.9 N/m',
        spread: '17 %',
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
        at: 'taken as 70/30 brass',
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
        value: '1.15 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '899 to 20 °C',
        value: '1.89 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'yellow brass',
        value: '1.82 %',
        spread: '25 %',
        source: { key: 'dooley', at: 'ch. XXXI, read in a web copy', how: 'read' },
      },
      {
        at: 'brass',
        value: '1.5 %',
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
        value: '960 °C',
        spread: '25 °C',
        source: { key: 'estimate', at: 'liquidus and the loss of zinc', how: 'estimate' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1030 °C',
        spread: '25 °C',
        source: { key: 'estimate', at: 'liquidus and the loss of zinc', how: 'estimate' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.5 1',
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
    'Never chase fluidity with superheat: the metal boils near 1100 °C.',
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Free-cutting 60/40 scrap carries lead.',
  ],
});
