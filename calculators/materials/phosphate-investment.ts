import { defineMaterial } from '../core/material.ts';

export const phosphateInvestment = defineMaterial({
  id: 'phosphate-investment',
  role: 'mould',
  name: 'Phosphate-bonded investment',
  words: ['phosphate investment', 'high-heat investment'],
  description: 'Silica bonded with magnesium phosphate, for metals too hot for gypsum.',
  properties: {
    'density.bulk': [
      {
        at: 'fired',
        value: '1800 kg/m³',
        spread: '8 %',
        source: { key: 'estimate', at: 'dental and casting literature', how: 'estimate' },
      },
    ],
    heat: [
      {
        at: '800 °C',
        value: '1000 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: '800 °C',
        value: '0.8 W/(m·K)',
        spread: '55 %',
        source: { key: 'estimate', at: 'denser than gypsum-bonded, same base', how: 'estimate' },
      },
    ],
    permeability: [
      {
        at: 'fired',
        value: '1 AFS',
        spread: '300 %',
        source: { key: 'estimate', at: 'below gypsum-bonded; order of magnitude', how: 'estimate' },
      },
    ],
    'grain-size': [
      {
        at: 'powder',
        value: '0.05 mm',
        spread: '100 %',
        source: { key: 'estimate', at: 'fine and coarse silica mixed', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'fired',
        value: '0.31 1',
        spread: '20 %',
        source: { key: 'estimate', at: 'one less fired density over 2600 kg/m³', how: 'estimate' },
      },
    ],
    'strength.tensile': [
      {
        at: 'fired',
        value: '1000 kPa',
        spread: '200 %',
        source: { key: 'estimate', at: 'several times gypsum-bonded', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'copper alloy',
        value: '500 W/(m²·K)',
        spread: '150 %',
        source: { key: 'estimate', at: 'the mould’s own conductivity rules', how: 'estimate' },
      },
    ],
    emissivity: [
      {
        at: 'fired face',
        value: '0.9 1',
        spread: '10 %',
        source: { key: 'estimate', at: 'as other silica refractories', how: 'estimate' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould',
        value: '1000 °C',
        spread: '50 °C',
        source: { key: 'trade-practice', at: 'burnt out at 750 to 1000 °C', how: 'common practice' },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1500 °C',
        spread: '100 °C',
        source: { key: 'trade-practice', at: 'dental casting alloys', how: 'common practice' },
      },
    ],
  },
  cautions: [
    'Gives off ammonia as it sets and heats: extraction.',
    'Investment powder is mostly crystalline silica: weigh and mix under extraction with a fitted mask, break out wet.',
    'Your powder’s own sheet outranks this page.',
  ],
});
