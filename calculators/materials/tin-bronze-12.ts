import { defineMaterial } from '../core/material.ts';

export const tinBronze12 = defineMaterial({
  id: 'tin-bronze-12',
  role: 'metal',
  name: 'Tin bronze, 12 % tin',
  words: ['CuSn12', 'C90800', 'CC483K', 'bronze'],
  composition: 'Cu 88, Sn 12',
  description: 'Harder and less tough than 10 % bronze; used for gears and bearings.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '8700 kg/m³',
        spread: '1.1 %',
        source: { key: 'en-1982', at: 'data for CuSn12 castings', how: 'memory' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at 988 °C',
        value: '7830 kg/m³',
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
        value: '377 J/(kg·K)',
        spread: '12 %',
        source: { key: 'copper-development', at: 'C90900 data, read in a maker’s copy', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '480 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'liquid to solid at 890 °C',
        value: '173 kJ/kg',
        spread: '12 %',
        source: {
          key: 'shim-cu-sn',
          at: 'assessed Gibbs functions (parameters recalled), enthalpy difference at one temperature',
          how: 'estimate',
        },
      },
      {
        at: 'fusion',
        value: '191 kJ/kg',
        spread: '5 %',
        source: { key: 'estimate', at: 'mass average of the elements, mixing left out', how: 'estimate' },
      },
    ],
    solidus: [
      {
        at: 'between C90700 and C90900',
        value: '822 °C',
        spread: '24 °C',
        source: {
          key: 'copper-development',
          at: 'between C90700 and C90900, read in makers’ copies',
          how: 'estimate',
        },
      },
      {
        at: 'segregated casting',
        value: '798 °C',
        spread: '15 °C',
        source: { key: 'massalski', at: 'Cu–Sn, peritectic at 798 °C', how: 'memory' },
      },
    ],
    liquidus: [
      {
        at: 'between C90700 and C90900',
        value: '988 °C',
        spread: '13 °C',
        source: {
          key: 'copper-development',
          at: 'between C90700 and C90900, read in makers’ copies',
          how: 'estimate',
        },
      },
      {
        at: 'C90900, 13 % Sn',
        value: '978 °C',
        spread: '10 °C',
        source: { key: 'copper-development', at: 'C90900 data, read in a maker’s copy', how: 'read' },
      },
      {
        at: 'equilibrium',
        value: '975 °C',
        spread: '10 °C',
        source: {
          key: 'shim-cu-sn',
          at: 'assessed Gibbs functions (parameters recalled), solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the solidus',
        value: '90 W/(m·K)',
        spread: '50 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '55 W/(m·K)',
        spread: '29 %',
        source: { key: 'en-1982', at: 'data for CuSn12 castings', how: 'memory' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '58 W/(m·K)',
        spread: '45 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '4.5 mPa·s',
        spread: '56 %',
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
        value: '1.1 N/m',
        spread: '18 %',
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
        at: 'tin bronze',
        value: '4.5 %',
        spread: '22 %',
        source: { key: 'asm-15', at: 'pouring and pattern allowance tables', how: 'memory' },
      },
      {
        at: 'liquidus to solidus',
        value: '5.5 %',
        spread: '20 %',
        source: { key: 'estimate', at: 'from the densities of liquid and solid', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.01 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '822 to 20 °C',
        value: '1.64 %',
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
    ],
    'pour.lowest': [
      {
        at: 'pouring',
        value: '1080 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 90 to 190 K', how: 'common practice' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring',
        value: '1180 °C',
        spread: '25 °C',
        source: { key: 'trade-practice', at: 'liquidus + 90 to 190 K', how: 'common practice' },
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
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Copper fume causes fever too: extraction at the crucible and at the pour.',
    'A touch of phosphor-copper only: too much makes the metal eat into the sand.',
    'Never melt springs or tools of copper-beryllium, plated scrap or unknown scrap in place of this alloy.',
  ],
});
