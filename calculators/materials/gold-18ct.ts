import { defineMaterial } from '../core/material.ts';

export const gold18ct = defineMaterial({
  id: 'gold-18ct',
  role: 'metal',
  name: '18 carat yellow gold',
  words: ['750', '18K', '18 karat', 'yellow gold', 'Au750'],
  composition: 'Au 75, Ag 12.5, Cu 12.5',
  description:
    'Three parts gold in four, with silver and copper in equal parts; the sheet of your own alloy comes first.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '15450 kg/m³',
        spread: '1 %',
        source: { key: 'estimate', at: 'volumes of the elements added', how: 'estimate' },
      },
      {
        at: '20 °C, 18 carat yellow, not specified',
        value: '15580 kg/m³',
        spread: '1 %',
        source: { key: 'makers-data', at: 'table of specific gravities of jewellery metals', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 905 °C',
        value: '13980 kg/m³',
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
        value: '174 J/(kg·K)',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements', how: 'estimate' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '220 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '87 kJ/kg',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '885 °C',
        spread: '15 °C',
        source: { key: 'makers-data', at: 'sheets for 75 Au 12.5 Ag 12.5 Cu', how: 'memory' },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '905 °C',
        spread: '22 °C',
        source: { key: 'makers-data', at: 'sheets for 75 Au 12.5 Ag 12.5 Cu', how: 'memory' },
      },
      {
        at: '18 carat yellow, not specified',
        value: '927 °C',
        spread: '10 °C',
        source: { key: 'makers-data', at: 'table of specific gravities of jewellery metals', how: 'read' },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, near the solidus',
        value: '100 W/(m·K)',
        spread: '43 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '75 W/(m·K)',
        spread: '50 %',
        source: { key: 'estimate', at: 'order of magnitude for a disordered alloy', how: 'estimate' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid',
        value: '60 W/(m·K)',
        spread: '50 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '5 mPa·s',
        spread: '20 %',
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
        value: '1.05 N/m',
        spread: '14 %',
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
        at: 'between gold and its alloying metals',
        value: '5 %',
        spread: '20 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '5.3 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.83 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '885 to 20 °C',
        value: '1.51 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'investment',
        value: '1.5 %',
        spread: '25 %',
        source: { key: 'trade-practice', at: 'jewellery investment casting', how: 'common practice' },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '980 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 75 to 145 K', how: 'common practice' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1050 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 75 to 145 K', how: 'common practice' },
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
        value: '0.4 %',
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
        spread: '300 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Composition varies by maker: ask for its solidus, liquidus and density.',
    'Gypsum investment breaks down near its casting heat and gives off sulphur dioxide: do not overheat mould or metal.',
  ],
});
