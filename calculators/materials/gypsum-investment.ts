import { defineMaterial } from '../core/material.ts';

export const gypsumInvestment = defineMaterial({
  id: 'gypsum-investment',
  role: 'mould',
  name: 'Gypsum-bonded investment',
  words: ['plaster investment', 'jewellery investment'],
  description: 'Silica bonded with plaster, 40 parts of water to 100 of powder, burnt out and poured hot.',
  properties: {
    'density.bulk': [
      {
        at: 'fired',
        value: '1230 kg/m³',
        spread: '6 %',
        source: {
          key: 'estimate',
          at: 'from the mix: 100 g of powder sets with 40 g of water to 80 cm³, then dries',
          how: 'estimate',
        },
      },
    ],
    heat: [
      {
        at: '500 °C',
        value: '950 J/(kg·K)',
        spread: '14 %',
        source: { key: 'estimate', at: 'mass average of silica and anhydrite', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: '500 °C',
        value: '0.4 W/(m·K)',
        spread: '55 %',
        source: {
          key: 'estimate',
          at: 'between design values for gypsum and a plaster mould',
          how: 'estimate',
        },
        note: 'No measured value was found; freezing time goes as one over it.',
      },
    ],
    permeability: [
      {
        at: 'fired',
        value: '2 AFS',
        spread: '200 %',
        source: {
          key: 'estimate',
          at: 'order of magnitude from plaster and investment moulds',
          how: 'estimate',
        },
      },
    ],
    'grain-size': [
      {
        at: 'powder',
        value: '0.03 mm',
        spread: '100 %',
        source: { key: 'estimate', at: 'fine silica flour with coarser grains', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'fired',
        value: '0.5 1',
        spread: '12 %',
        source: { key: 'estimate', at: 'one less fired density over 2500 kg/m³', how: 'estimate' },
      },
    ],
    'strength.tensile': [
      {
        at: 'fired',
        value: '300 kPa',
        spread: '200 %',
        source: { key: 'estimate', at: 'an eighth of the green compression', how: 'estimate' },
      },
      {
        at: 'set two hours, compression',
        value: '2400 kPa',
        spread: '30 %',
        source: { key: 'iso-7490', at: 'least compressive strength two hours after mixing', how: 'memory' },
      },
    ],
    interface: [
      {
        at: 'copper or silver alloy',
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
        source: { key: 'incropera', at: 'Table A.11, plaster', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould, burnt clean',
        value: '750 °C',
        spread: '20 °C',
        source: { key: 'trade-practice', at: 'ceiling of the burnout oven', how: 'common practice' },
      },
      {
        at: 'with carbon left in it',
        value: '700 °C',
        spread: '50 °C',
        source: {
          key: 'trade-practice',
          at: 'calcium sulphate breaks down early in a reducing gas',
          how: 'common practice',
        },
      },
      {
        at: 'breakdown begins, clean',
        value: '900 °C',
        spread: '30 °C',
        source: { key: 'gypsum-breakdown', at: 'thermogravimetry of gypsum-bonded investments', how: 'read' },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1100 °C',
        spread: '50 °C',
        source: {
          key: 'trade-practice',
          at: 'above about 1100 to 1150 °C gypsum breaks down on the metal',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: [
    'Above 750 °C, or sooner with wax left in it, gypsum gives off sulphur dioxide: vent the oven outdoors.',
    'Investment powder is mostly crystalline silica: weigh and mix under extraction with a fitted mask, break out wet.',
    'Quench only after the button is solid and dark, with a face shield: the hot mould spits steam.',
    'Your powder’s own sheet outranks this page.',
  ],
});
