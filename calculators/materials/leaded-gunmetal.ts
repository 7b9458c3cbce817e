import { defineMaterial } from '../core/material.ts';

export const leadedGunmetal = defineMaterial({
  id: 'leaded-gunmetal',
  role: 'metal',
  name: 'Leaded gunmetal 85-5-5-5',
  words: ['red brass', 'ounce metal', 'C83600', 'CC491K', '85-5-5-5', 'gunmetal'],
  composition: 'Cu 85, Sn 5, Zn 5, Pb 5',
  description:
    'The common bronze of valves and fittings: casts and machines easily, but carries lead and zinc.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '8830 kg/m³',
        spread: '1 %',
        source: { key: 'copper-development', at: 'C83600 data, read in a maker’s copy', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 1010 °C',
        value: '7890 kg/m³',
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
        source: { key: 'copper-development', at: 'C83600 data, read in a maker’s copy', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '470 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '187 kJ/kg',
        spread: '12 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'nominal',
        value: '854 °C',
        spread: '15 °C',
        source: { key: 'copper-development', at: 'C83600 data, read in a maker’s copy', how: 'read' },
      },
    ],
    liquidus: [
      {
        at: 'nominal',
        value: '1010 °C',
        spread: '10 °C',
        source: { key: 'copper-development', at: 'C83600 data, read in a maker’s copy', how: 'read' },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the solidus',
        value: '100 W/(m·K)',
        spread: '43 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '72 W/(m·K)',
        spread: '10 %',
        source: { key: 'copper-development', at: 'C83600 data, read in a maker’s copy', how: 'read' },
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
        value: '4.2 mPa·s',
        spread: '43 %',
        source: {
          key: 'estimate',
          at: 'from the pure metal and the trend in Iida and Guthrie',
          how: 'estimate',
        },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid; lead lowers it',
        value: '0.9 N/m',
        spread: '29 %',
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
        at: 'gunmetal',
        value: '4.5 %',
        spread: '31 %',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '5.9 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.04 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '854 to 20 °C',
        value: '1.71 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'sand',
        value: '1.5 %',
        spread: '13 %',
        source: {
          key: 'westermann',
          at: 'list of shrinkage allowances, read in a document copy',
          how: 'read',
        },
      },
      {
        at: 'sand',
        value: '1.43 %',
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
      {
        at: 'pouring, heavy castings',
        value: '1065 °C',
        spread: '25 °C',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring, light castings',
        value: '1290 °C',
        spread: '25 °C',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
      {
        at: 'pouring, heavy castings',
        value: '1175 °C',
        spread: '25 °C',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
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
    'Contains lead. Keep it out of a teaching shop, away from food and from anyone under 18 or pregnant; wash hands, do not eat near it.',
    'Zinc boils at 907 °C, below the pouring temperature: white zinc oxide fume causes metal-fume fever. Pour under extraction, at the lowest heat that fills.',
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
  ],
});
