import { defineMaterial } from '../core/material.ts';

export const resinBondedSand = defineMaterial({
  id: 'resin-bonded-sand',
  role: 'mould',
  name: 'Resin-bonded sand',
  words: ['no-bake', 'furan sand', 'cold-set'],
  description: 'Silica sand, AFS 50 to 60, set with a cold-setting resin.',
  properties: {
    'density.bulk': [
      {
        at: 'set',
        value: '1550 kg/m³',
        spread: '6 %',
        source: { key: 'estimate', at: 'rammed silica sand with resin', how: 'estimate' },
      },
    ],
    heat: [
      {
        at: '400 °C',
        value: '1000 J/(kg·K)',
        spread: '15 %',
        source: {
          key: 'makers-data',
          at: 'trade page on interface coefficients: 900 + 0.25 T in °C',
          how: 'read',
        },
      },
    ],
    conductivity: [
      {
        at: '400 °C',
        value: '0.55 W/(m·K)',
        spread: '37 %',
        source: {
          key: 'makers-data',
          at: 'trade page on interface coefficients: 0.65 − 0.00025 T in °C',
          how: 'read',
        },
      },
    ],
    permeability: [
      {
        at: 'AFS 50 to 60',
        value: '100 AFS',
        spread: '100 %',
        source: { key: 'heine-loper-rosenthal', at: 'tables of cores', how: 'memory' },
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
        at: 'set',
        value: '0.4 1',
        spread: '12 %',
        source: { key: 'estimate', at: 'grains and resin taken off', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'set one day',
        value: '0.3 %',
        spread: '150 %',
        source: { key: 'trade-practice', at: 'water of the hardener', how: 'common practice' },
      },
    ],
    'strength.tensile': [
      {
        at: '24 hours',
        value: '1500 kPa',
        spread: '110 %',
        source: { key: 'makers-data', at: 'tensile test of cold-set sands', how: 'memory' },
      },
    ],
    'strength.shear': [
      {
        at: '24 hours',
        value: '1500 kPa',
        spread: '110 %',
        source: { key: 'estimate', at: 'taken as the tensile strength', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'copper alloy, first second',
        value: '500 W/(m²·K)',
        spread: '150 %',
        source: { key: 'campbell-castings', at: 'interface coefficients, range 200 to 1000', how: 'memory' },
      },
      {
        at: 'aluminium, 7 % silicon, after a gap forms',
        value: '85 W/(m²·K)',
        spread: '40 %',
        source: { key: 'makers-data', at: 'trade page on interface coefficients', how: 'read' },
      },
      {
        at: 'aluminium, 7 % silicon, highest, round a core',
        value: '263 W/(m²·K)',
        spread: '40 %',
        source: { key: 'makers-data', at: 'trade page on interface coefficients', how: 'read' },
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
        value: '200 °C',
        spread: '40 °C',
        source: {
          key: 'estimate',
          at: 'the resin burns from 350 °C and weakens well before',
          how: 'estimate',
        },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1600 °C',
        spread: '60 °C',
        source: {
          key: 'trade-practice',
          at: 'silica; the resin burns away behind the face',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: [
    'Resin and hardener hurt skin and lungs: gloves, goggles, extraction, and the maker’s data sheet.',
    'Pouring gives off carbon monoxide and formaldehyde: extraction until the smoke stops.',
    'Silica dust destroys lungs without warning: wet methods, vacuum not broom, a fitted P3 or P100 mask.',
  ],
});
