import { defineMaterial } from '../core/material.ts';

export const castingWax = defineMaterial({
  id: 'casting-wax',
  role: 'pattern',
  name: 'Casting wax',
  words: ['wax', 'injection wax', 'carving wax'],
  description: 'Injection and carving waxes without much filler.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '960 kg/m³',
        spread: '4 %',
        source: { key: 'trade-practice', at: 'jewellers’ forum, injection wax 0.95 to 0.98', how: 'read' },
        note: 'Filled foundry waxes reach 1100: float or weigh a block of yours.',
      },
      {
        at: '20 °C, rule of thumb',
        value: '1000 kg/m³',
        spread: '5 %',
        source: { key: 'trade-practice', at: 'jewellers’ forum', how: 'read' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'from injection to 20 °C',
        value: '1 %',
        spread: '60 %',
        source: { key: 'trade-practice', at: '0.5 to 1.5 % with die and pressure', how: 'common practice' },
      },
    ],
    emissivity: [
      {
        at: '20 °C',
        value: '0.9 1',
        spread: '10 %',
        source: { key: 'estimate', at: 'as most organic solids', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Wax vapour burns and can explode in an oven: drain the wax first, vent the oven outdoors.',
    'Wax smoke irritates: extraction.',
  ],
});
