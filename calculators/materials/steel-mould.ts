import { defineMaterial } from '../core/material.ts';

export const steelMould = defineMaterial({
  id: 'steel-mould',
  role: 'mould',
  name: 'Steel or iron mould',
  words: ['permanent mould', 'gravity die', 'cast iron mould'],
  description: 'A permanent mould of mild steel or iron, coated and warm.',
  properties: {
    'density.bulk': [
      {
        at: '20 °C',
        value: '7800 kg/m³',
        spread: '3 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    heat: [
      {
        at: '200 to 300 °C',
        value: '500 J/(kg·K)',
        spread: '12 %',
        source: { key: 'smithells', at: 'carbon steels', how: 'memory' },
      },
      {
        at: '20 °C',
        value: '450 J/(kg·K)',
        spread: '5 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    conductivity: [
      {
        at: '200 to 300 °C',
        value: '45 W/(m·K)',
        spread: '30 %',
        source: { key: 'smithells', at: 'carbon steels', how: 'memory' },
      },
      {
        at: '20 °C',
        value: '50 W/(m·K)',
        spread: '10 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'hot-work tool steel',
        value: '26 W/(m·K)',
        spread: '10 %',
        source: { key: 'makers-data', at: 'tool steels', how: 'memory' },
      },
    ],
    'strength.tensile': [
      {
        at: '20 °C',
        value: '400000 kPa',
        spread: '25 %',
        source: { key: 'smithells', at: 'mild steel', how: 'memory' },
      },
    ],
    interface: [
      {
        at: 'aluminium, coated wall, poured by hand',
        value: '1500 W/(m²·K)',
        spread: '200 %',
        source: { key: 'campbell-castings', at: 'interface coefficients, range 500 to 3000', how: 'memory' },
      },
      {
        at: 'aluminium–silicon eutectic on a chill',
        value: '5750 W/(m²·K)',
        spread: '15 %',
        source: { key: 'sahin', at: 'abstract, early to late', how: 'read' },
      },
    ],
    emissivity: [
      {
        at: 'oxidised',
        value: '0.8 1',
        spread: '15 %',
        source: { key: 'incropera', at: 'Table A.11, oxidised steel', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould',
        value: '400 °C',
        spread: '50 °C',
        source: { key: 'trade-practice', at: 'working range of a hand-poured mould', how: 'common practice' },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1000 °C',
        spread: '100 °C',
        source: {
          key: 'trade-practice',
          at: 'brass and below; copper alloys wear it fast',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: ['Warm it above 150 °C and coat it: a cold or rusty mould throws the metal.'],
});
