import { defineMaterial } from '../core/material.ts';

export const aluminiumBronze = defineMaterial({
  id: 'aluminium-bronze',
  role: 'metal',
  name: 'Aluminium bronze, 11 % aluminium',
  words: ['C95400', 'CuAl11Fe4', 'aluminum bronze'],
  composition: 'Cu 85, Al 11, Fe 4',
  description: 'Strong and sea-proof; freezes over a few degrees under a tough alumina film.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '7450 kg/m³',
        spread: '1 %',
        source: { key: 'copper-development', at: 'C95400 data, read in a maker’s copy', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '6700 kg/m³',
        spread: '4 %',
        source: {
          key: 'estimate',
          at: 'solid density times copper’s liquid-to-solid ratio, 0.900',
          how: 'estimate',
        },
      },
    ],
    'heat.solid': [
      {
        at: '20 °C',
        value: '419 J/(kg·K)',
        spread: '12 %',
        source: { key: 'copper-development', at: 'C95400 data, read in a maker’s copy', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '590 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '231 kJ/kg',
        spread: '18 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '1027 °C',
        spread: '8 °C',
        source: { key: 'copper-development', at: 'C95400 data, read in a maker’s copy', how: 'read' },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '1038 °C',
        spread: '8 °C',
        source: { key: 'copper-development', at: 'C95400 data, read in a maker’s copy', how: 'read' },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the solidus',
        value: '80 W/(m·K)',
        spread: '33 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '58.7 W/(m·K)',
        spread: '10 %',
        source: { key: 'copper-development', at: 'C95400 data, read in a maker’s copy', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '60 W/(m·K)',
        spread: '33 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '6 mPa·s',
        spread: '50 %',
        source: {
          key: 'estimate',
          at: 'from the pure metal and the trend in Iida and Guthrie',
          how: 'estimate',
        },
      },
    ],
    'surface-tension': [
      {
        at: 'clean; alumina skin behaves stiffer',
        value: '1.15 N/m',
        spread: '13 %',
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
        at: '10 % aluminium',
        value: '4 %',
        spread: '20 %',
        source: { key: 'kalpakjian', at: 'Table 10.1', how: 'memory' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.07 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '1027 to 20 °C',
        value: '1.91 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand',
        value: '2.08 %',
        spread: '20 %',
        source: { key: 'copper-development', at: 'data page of the alloy', how: 'memory' },
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring, light castings',
        value: '1150 °C',
        spread: '25 °C',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring, light castings',
        value: '1230 °C',
        spread: '25 °C',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
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
        at: 'alumina skin',
        value: '0.3 1',
        spread: '131 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Copper fume causes fever too: extraction at the crucible and at the pour.',
    'Poured near the limit of gypsum investment: use sand or a phosphate-bonded mould.',
    'The alumina film folds in above about 0.5 m/s at the gate.',
    'Never melt springs or tools of copper-beryllium, plated scrap or unknown scrap in place of this alloy.',
  ],
});
