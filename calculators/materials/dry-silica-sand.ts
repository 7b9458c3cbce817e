import { defineMaterial } from '../core/material.ts';

export const drySilicaSand = defineMaterial({
  id: 'dry-silica-sand',
  role: 'mould',
  name: 'Dry silica sand',
  words: ['quartz sand', 'AFS 50', 'dry sand'],
  description: 'Clean quartz sand, AFS 50 to 60, rammed or shaken down dry.',
  properties: {
    'density.bulk': [
      {
        at: 'rammed, 20 °C',
        value: '1500 kg/m³',
        spread: '6 %',
        source: { key: 'flemings', at: 'table of mould and metal properties', how: 'memory' },
      },
      {
        at: 'AFS 60',
        value: '1490 kg/m³',
        spread: '3 %',
        source: {
          key: 'foundrymans-handbook',
          at: 'table of moulding sands, read in a document copy',
          how: 'read',
        },
      },
    ],
    heat: [
      {
        at: '20 °C to the metal’s temperature',
        value: '1130 J/(kg·K)',
        spread: '12 %',
        source: { key: 'flemings', at: 'table of mould and metal properties, 0.27 cal/(g K)', how: 'memory' },
      },
      {
        at: '27 °C',
        value: '800 J/(kg·K)',
        spread: '3 %',
        source: { key: 'incropera', at: 'Table A.3, sand', how: 'memory' },
      },
    ],
    conductivity: [
      {
        at: '20 °C to the metal’s temperature',
        value: '0.607 W/(m·K)',
        spread: '27 %',
        source: {
          key: 'flemings',
          at: 'table of mould and metal properties, 14.5e-4 cal/(cm s K)',
          how: 'memory',
        },
        note: 'For freezing. Warming and drying below 200 °C want the lower value.',
      },
      {
        at: '27 °C',
        value: '0.27 W/(m·K)',
        spread: '15 %',
        source: { key: 'incropera', at: 'Table A.3, sand', how: 'memory' },
      },
    ],
    permeability: [
      {
        at: 'AFS 50 to 60, clean',
        value: '100 AFS',
        spread: '70 %',
        source: { key: 'heine-loper-rosenthal', at: 'tables of moulding sands', how: 'memory' },
      },
    ],
    'grain-size': [
      {
        at: 'AFS 55',
        value: '0.27 mm',
        spread: '18 %',
        source: { key: 'estimate', at: '15 divided by the AFS number', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'rammed',
        value: '0.43 1',
        spread: '10 %',
        source: { key: 'estimate', at: 'one less bulk over quartz density, 2650 kg/m³', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'oven-dry',
        value: '0.1 %',
        spread: '100 %',
        source: { key: 'trade-practice', at: 'dried to constant mass', how: 'common practice' },
      },
    ],
    'strength.tensile': [
      {
        at: 'unbonded',
        value: '2 kPa',
        spread: '200 %',
        source: { key: 'estimate', at: 'friction and dust only; treat it as nothing', how: 'estimate' },
        note: 'Dry sand without a binder holds only where it is supported or under suction.',
      },
    ],
    interface: [
      {
        at: 'copper alloy, first second',
        value: '700 W/(m²·K)',
        spread: '100 %',
        source: {
          key: 'estimate',
          at: 'between 200 to 1000 once a skin forms and full contact before it',
          how: 'estimate',
        },
      },
      {
        at: 'copper alloy, after a skin forms',
        value: '500 W/(m²·K)',
        spread: '150 %',
        source: { key: 'campbell-castings', at: 'interface coefficients, range 200 to 1000', how: 'memory' },
      },
    ],
    emissivity: [
      {
        at: 'rammed face',
        value: '0.9 1',
        spread: '10 %',
        source: { key: 'incropera', at: 'Table A.11, sand', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould',
        value: '550 °C',
        spread: '10 °C',
        source: {
          key: 'trade-practice',
          at: 'stay below the quartz change at 573 °C',
          how: 'common practice',
        },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1700 °C',
        spread: '20 °C',
        source: { key: 'trade-practice', at: 'quartz melts at 1713 to 1720 °C', how: 'common practice' },
      },
    ],
  },
  cautions: [
    'Silica dust destroys lungs without warning: wet methods, vacuum not broom, a fitted P3 or P100 mask.',
    'Quartz grows suddenly at 573 °C: a thick face can scab.',
  ],
});
