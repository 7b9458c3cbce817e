import { defineMaterial } from '../core/material.ts';

export const clayBondedSand = defineMaterial({
  id: 'clay-bonded-sand',
  role: 'mould',
  name: 'Clay-bonded fine sand, baked',
  words: ['dry sand', 'baked sand', 'loam', 'skin-dried', 'lamp shield mould'],
  description: 'Fine sand, AFS 130 to 150, bonded with clay, rammed damp and baked dry to constant mass.',
  properties: {
    'density.bulk': [
      {
        at: 'baked, 20 °C',
        value: '1500 kg/m³',
        spread: '7 %',
        source: { key: 'estimate', at: 'as rammed silica sand', how: 'estimate' },
      },
    ],
    heat: [
      {
        at: '20 °C to the metal’s temperature',
        value: '1100 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'silica with a tenth of fired clay', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: '20 °C to the metal’s temperature',
        value: '0.6 W/(m·K)',
        spread: '27 %',
        source: {
          key: 'estimate',
          at: 'as dry silica sand; fines lower it, clay bridges raise it',
          how: 'estimate',
        },
        note: 'For freezing. Warming and drying below 200 °C want the lower value.',
      },
      {
        at: '27 °C',
        value: '0.27 W/(m·K)',
        spread: '40 %',
        source: { key: 'incropera', at: 'Table A.3, sand', how: 'memory' },
      },
    ],
    permeability: [
      {
        at: 'baked, AFS 130 to 150',
        value: '10 AFS',
        spread: '150 %',
        source: { key: 'estimate', at: 'a fine sand hard rammed: 4 to 25', how: 'estimate' },
        note: 'Decides reach time and back-pressure: measure your own.',
      },
      {
        at: 'green, for brass, AFS 140 to 150',
        value: '16 AFS',
        spread: '25 %',
        source: {
          key: 'heine-loper-rosenthal',
          at: 'table of clay-bonded sand properties by alloy cast',
          how: 'memory',
        },
      },
    ],
    'grain-size': [
      {
        at: 'AFS 140',
        value: '0.11 mm',
        spread: '18 %',
        source: { key: 'estimate', at: '15 divided by the AFS number', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'baked',
        value: '0.43 1',
        spread: '12 %',
        source: { key: 'estimate', at: 'one less bulk over grain density, 2650 kg/m³', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'baked to constant mass, same day',
        value: '0.2 %',
        spread: '150 %',
        source: {
          key: 'trade-practice',
          at: 'weigh until the mass stands still for half an hour',
          how: 'common practice',
        },
      },
    ],
    'strength.tensile': [
      {
        at: 'baked',
        value: '60 kPa',
        spread: '150 %',
        source: {
          key: 'estimate',
          at: 'about a tenth of a dry compression of 300 to 1000 kPa',
          how: 'estimate',
        },
        note: 'A wide guess: make a test bar of your own sand.',
      },
    ],
    'strength.shear': [
      {
        at: 'baked',
        value: '100 kPa',
        spread: '150 %',
        source: { key: 'estimate', at: 'a quarter of the dry compression at its low end', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'copper alloy pressed on a fine face, first second',
        value: '1000 W/(m²·K)',
        spread: '100 %',
        source: { key: 'estimate', at: 'liquid contact before a gap opens: 500 to 2000', how: 'estimate' },
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
        at: 'whole mould, oven',
        value: '300 °C',
        spread: '50 °C',
        source: { key: 'trade-practice', at: 'baked at 150 to 300 °C for hours', how: 'common practice' },
      },
      {
        at: 'clay loses its bond',
        value: '550 °C',
        spread: '70 °C',
        source: { key: 'heine-loper-rosenthal', at: 'clays, loss of combined water', how: 'memory' },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1600 °C',
        spread: '60 °C',
        source: { key: 'trade-practice', at: 'silica with clay', how: 'common practice' },
      },
    ],
  },
  cautions: [
    'Silica dust destroys lungs without warning: wet methods, vacuum not broom, a fitted P3 or P100 mask.',
    'Bake to constant mass: half a per cent of water under a thin part blows the metal back.',
    'Pour the same day: it takes up water from the air.',
  ],
});
