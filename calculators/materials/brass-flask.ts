import { defineMaterial } from '../core/material.ts';

export const brassFlask = defineMaterial({
  id: 'brass-flask',
  role: 'mould',
  name: 'Brass flask',
  words: ['brass mould', 'moulding box'],
  description: 'A brass block or flask: a mould for tin, pewter and zinc, or the ring round a sand mould.',
  properties: {
    'density.bulk': [
      {
        at: '20 °C',
        value: '8400 kg/m³',
        spread: '2 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    heat: [
      {
        at: '20 °C',
        value: '380 J/(kg·K)',
        spread: '3 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    conductivity: [
      {
        at: '20 °C',
        value: '120 W/(m·K)',
        spread: '8 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    'strength.tensile': [
      {
        at: '20 °C',
        value: '350000 kPa',
        spread: '25 %',
        source: { key: 'smithells', at: 'brasses', how: 'memory' },
      },
    ],
    interface: [
      {
        at: 'zinc or tin alloy',
        value: '2000 W/(m²·K)',
        spread: '150 %',
        source: { key: 'estimate', at: 'a hard smooth wall, 800 to 5000', how: 'estimate' },
      },
    ],
    emissivity: [
      {
        at: 'dull',
        value: '0.3 1',
        spread: '60 %',
        source: { key: 'incropera', at: 'Table A.11, brass, polished to oxidised', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole flask',
        value: '400 °C',
        spread: '50 °C',
        source: {
          key: 'estimate',
          at: 'half its strength is gone well below the solidus at 899 °C',
          how: 'estimate',
        },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '450 °C',
        spread: '50 °C',
        source: { key: 'trade-practice', at: 'tin, pewter and zinc alloys', how: 'common practice' },
      },
    ],
  },
  cautions: ['A hot flask looks like a cold one: mark it, and have a landing place ready.'],
});
