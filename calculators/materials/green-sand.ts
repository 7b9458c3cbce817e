import { defineMaterial } from '../core/material.ts';

export const greenSand = defineMaterial({
  id: 'green-sand',
  role: 'mould',
  name: 'Green sand',
  words: ['damp sand', 'moulding sand'],
  description: 'Sand with clay and 3 to 5 % of water, poured damp.',
  properties: {
    'density.bulk': [
      {
        at: 'rammed, damp',
        value: '1600 kg/m³',
        spread: '6 %',
        source: { key: 'estimate', at: 'rammed silica sand with clay and water', how: 'estimate' },
      },
    ],
    heat: [
      {
        at: 'apparent, to the metal’s temperature',
        value: '1170 J/(kg·K)',
        spread: '8 %',
        source: { key: 'estimate', at: 'dry sand with the moisture’s share', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: 'apparent, with moisture moving',
        value: '0.9 W/(m·K)',
        spread: '45 %',
        source: { key: 'estimate', at: 'dry sand raised by steam carrying heat', how: 'estimate' },
      },
    ],
    permeability: [
      {
        at: 'synthetic sand for bronze',
        value: '30 AFS',
        spread: '100 %',
        source: { key: 'heine-loper-rosenthal', at: 'tables of moulding sands', how: 'memory' },
      },
      {
        at: 'natural sand for brass, AFS 140 to 150',
        value: '16 AFS',
        spread: '25 %',
        source: {
          key: 'heine-loper-rosenthal',
          at: 'table of clay-bonded sand properties by alloy cast',
          how: 'memory',
        },
      },
      {
        at: 'natural sand for aluminium, AFS 160 to 225',
        value: '10 AFS',
        spread: '40 %',
        source: {
          key: 'heine-loper-rosenthal',
          at: 'table of clay-bonded sand properties by alloy cast',
          how: 'memory',
        },
      },
    ],
    'grain-size': [
      {
        at: 'AFS 100',
        value: '0.15 mm',
        spread: '40 %',
        source: { key: 'estimate', at: '15 divided by the AFS number', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'rammed',
        value: '0.38 1',
        spread: '15 %',
        source: { key: 'estimate', at: 'grains, clay and water taken off', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'bentonite-bonded',
        value: '4 %',
        spread: '25 %',
        source: { key: 'heine-loper-rosenthal', at: 'tables of moulding sands', how: 'memory' },
      },
      {
        at: 'naturally bonded',
        value: '7 %',
        spread: '15 %',
        source: { key: 'heine-loper-rosenthal', at: 'tables of moulding sands', how: 'memory' },
      },
    ],
    'strength.tensile': [
      {
        at: 'green',
        value: '12 kPa',
        spread: '110 %',
        source: { key: 'estimate', at: 'a tenth to a sixth of the green compression', how: 'estimate' },
      },
    ],
    'strength.shear': [
      {
        at: 'green',
        value: '25 kPa',
        spread: '100 %',
        source: { key: 'estimate', at: 'a quarter to a third of the green compression', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'copper alloy, first second',
        value: '800 W/(m²·K)',
        spread: '100 %',
        source: { key: 'estimate', at: 'liquid contact before a gap opens', how: 'estimate' },
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
        value: '49 °C',
        spread: '5 °C',
        source: {
          key: 'trade-practice',
          at: 'hot sand limit, 120 °F: warmer sand is weak and sticks',
          how: 'common practice',
        },
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
    'It is wet: vent it well, keep faces away from the sprue, and never pour on a puddle or a squeezed-wet patch.',
    '4 % of water in 100 g of heated sand makes about 7 litres of steam.',
  ],
});
