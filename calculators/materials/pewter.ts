import { defineMaterial } from '../core/material.ts';

export const pewter = defineMaterial({
  id: 'pewter',
  role: 'metal',
  name: 'Pewter, lead-free',
  words: ['Britannia metal', 'tin alloy', 'SnSb6Cu2'],
  composition: 'Sn 92, Sb 6, Cu 2',
  description: 'Tin hardened with antimony and copper; melts on a hot plate.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '7280 kg/m³',
        spread: '1 %',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
      {
        at: '20 °C',
        value: '7275 kg/m³',
        spread: '1 %',
        source: { key: 'estimate', at: 'volumes of the elements added', how: 'estimate' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 295 °C',
        value: '6950 kg/m³',
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
        value: '229 J/(kg·K)',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements', how: 'estimate' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '260 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '69 kJ/kg',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '244 °C',
        spread: '17 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '295 °C',
        spread: '25 °C',
        source: { key: 'asm-2', at: 'property sheets of cast alloys', how: 'memory' },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, near the solidus',
        value: '48 W/(m·K)',
        spread: '21 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '50 W/(m·K)',
        spread: '25 %',
        source: { key: 'estimate', at: 'from tin and its alloys', how: 'estimate' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid',
        value: '29 W/(m·K)',
        spread: '14 %',
        source: { key: 'estimate', at: 'from the pure metal', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '1.7 mPa·s',
        spread: '18 %',
        source: { key: 'estimate', at: 'from the pure metal', how: 'estimate' },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the liquidus',
        value: '0.54 N/m',
        spread: '7.4 %',
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
        at: 'taken from tin',
        value: '2.6 %',
        spread: '30 %',
        source: { key: 'iida-guthrie', at: 'volume change on melting', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '3 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '0.94 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '244 to 20 °C',
        value: '0.52 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'metal or rubber mould',
        value: '0.6 %',
        spread: '67 %',
        source: {
          key: 'trade-practice',
          at: 'pewter casting in metal and rubber moulds',
          how: 'common practice',
        },
      },
      {
        at: 'tin, lead',
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
        value: '300 °C',
        spread: '15 °C',
        source: { key: 'estimate', at: 'liquidus and a working superheat', how: 'estimate' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '345 °C',
        spread: '15 °C',
        source: { key: 'estimate', at: 'liquidus and a working superheat', how: 'estimate' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.4 1',
        spread: '50 %',
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
        value: '1 %',
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
        at: 'bright to dull',
        value: '0.1 1',
        spread: '175 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Old pewter may hold lead: test before you melt it or put food near it.',
    'Antimony dust and fume are harmful: do not overheat, grind wet or under extraction.',
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
  ],
});
