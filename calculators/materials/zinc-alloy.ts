import { defineMaterial } from '../core/material.ts';

export const zincAlloy = defineMaterial({
  id: 'zinc-alloy',
  role: 'metal',
  name: 'Zinc alloy, 4 % aluminium',
  words: ['ZnAl4', 'ZP3', 'zinc', 'die-casting zinc'],
  composition: 'Zn 96, Al 4, Mg 0.04',
  description: 'A low-melting zinc for first castings and metal moulds; keep it below its fume.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '6700 kg/m³',
        spread: '1.5 %',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
      {
        at: '20 °C',
        value: '6600 kg/m³',
        spread: '1 %',
        source: { key: 'makers-data', at: 'zinc alloy sheet of an importer', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 387 °C',
        value: '6180 kg/m³',
        spread: '3.1 %',
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
        value: '419 J/(kg·K)',
        spread: '12 %',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '510 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '120 kJ/kg',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '381 °C',
        spread: '3 °C',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '387 °C',
        spread: '3 °C',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
    ],
    boils: [
      {
        at: 'zinc',
        value: '907 °C',
        spread: '5 °C',
        source: {
          key: 'crc-handbook',
          at: 'Physical Constants of Inorganic Compounds, read through an open property library',
          how: 'read',
        },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, near the solidus',
        value: '105 W/(m·K)',
        spread: '9.5 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '113 W/(m·K)',
        spread: '10 %',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid',
        value: '48 W/(m·K)',
        spread: '21 %',
        source: { key: 'estimate', at: 'from the pure metal', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '3.5 mPa·s',
        spread: '14 %',
        source: { key: 'estimate', at: 'from the pure metal', how: 'estimate' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the liquidus',
        value: '0.77 N/m',
        spread: '9.1 %',
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
        at: 'zinc alloys',
        value: '4.9 %',
        spread: '33 %',
        source: {
          key: 'campbell-castings',
          at: 'pure zinc 4.1 %; Kalpakjian Table 10.1 has 6.5 %',
          how: 'memory',
        },
      },
      {
        at: 'liquidus to solidus',
        value: '4.9 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.35 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '381 to 20 °C',
        value: '1.01 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand or plaster',
        value: '1.2 %',
        spread: '25 %',
        source: { key: 'trade-practice', at: 'zinc casting in sand and plaster', how: 'common practice' },
      },
      {
        at: 'die casting only',
        value: '0.5 %',
        spread: '20 %',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '415 °C',
        spread: '15 °C',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '435 °C',
        spread: '15 °C',
        source: { key: 'en-12844', at: 'ZnAl4, read in a founder’s table', how: 'read' },
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
        value: '2 %',
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
        at: 'oxide skin',
        value: '0.2 1',
        spread: '150 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Never above about 480 °C: zinc fume causes metal-fume fever. Ventilate.',
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Attacks iron ladles slowly. Keep lead, tin and cadmium out: the casting crumbles later.',
  ],
});
