import { defineMaterial } from '../core/material.ts';

export const oilBondedSand = defineMaterial({
  id: 'oil-bonded-sand',
  role: 'mould',
  name: 'Oil-bonded fine sand',
  words: ['waterless sand', 'oil sand'],
  description: 'Fine sand, AFS 100 to 150, with an oil and treated clay; no water. Never baked.',
  properties: {
    'density.bulk': [
      {
        at: 'rammed',
        value: '1500 kg/m³',
        spread: '7 %',
        source: { key: 'estimate', at: 'as rammed fine silica sand', how: 'estimate' },
      },
    ],
    heat: [
      {
        at: 'to the metal’s temperature',
        value: '1050 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'silica with a little oil', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: 'to the metal’s temperature',
        value: '0.5 W/(m·K)',
        spread: '30 %',
        source: { key: 'estimate', at: 'fine dry silica sand', how: 'estimate' },
      },
    ],
    permeability: [
      {
        at: 'AFS 100 to 150',
        value: '15 AFS',
        spread: '100 %',
        source: { key: 'makers-data', at: 'waterless sands', how: 'memory' },
      },
    ],
    'grain-size': [
      {
        at: 'AFS 130',
        value: '0.11 mm',
        spread: '35 %',
        source: { key: 'estimate', at: '15 divided by the AFS number', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'rammed',
        value: '0.41 1',
        spread: '12 %',
        source: { key: 'estimate', at: 'grains, clay and oil taken off', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'stored dry',
        value: '0.3 %',
        spread: '100 %',
        source: { key: 'trade-practice', at: 'no water is added', how: 'common practice' },
      },
    ],
    'strength.tensile': [
      {
        at: 'rammed',
        value: '12 kPa',
        spread: '110 %',
        source: { key: 'estimate', at: 'about an eighth of a compression of 90 kPa', how: 'estimate' },
      },
    ],
    'strength.shear': [
      {
        at: 'rammed',
        value: '25 kPa',
        spread: '100 %',
        source: { key: 'estimate', at: 'a quarter to a third of the compression', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'copper alloy pressed on a fine face, first second',
        value: '1000 W/(m²·K)',
        spread: '100 %',
        source: { key: 'estimate', at: 'liquid contact before a gap opens: 500 to 2000', how: 'estimate' },
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
        value: '60 °C',
        spread: '10 °C',
        source: { key: 'trade-practice', at: 'warm only to take off the chill', how: 'common practice' },
        note: 'Light oils flash at about 150 to 220 °C.',
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1200 °C',
        spread: '50 °C',
        source: { key: 'trade-practice', at: 'the binder chars; the base is silica', how: 'common practice' },
      },
    ],
  },
  cautions: [
    'Never bake or dry it in an oven, and never warm it with a flame: the oil smokes, runs and can catch fire.',
    'Pouring makes oil smoke and carbon monoxide: extraction until the smoke stops. A flame at the vents is normal.',
    'Silica dust destroys lungs without warning: wet methods, vacuum not broom, a fitted P3 or P100 mask.',
  ],
});
