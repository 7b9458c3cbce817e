import { defineMaterial } from '../core/material.ts';

export const castableResin = defineMaterial({
  id: 'castable-resin',
  role: 'pattern',
  name: 'Castable resin',
  words: ['printed resin', 'photopolymer'],
  description: 'Photopolymer prints meant to burn out.',
  properties: {
    'density.solid': [
      {
        at: 'cured, 20 °C',
        value: '1150 kg/m³',
        spread: '6 %',
        source: { key: 'makers-data', at: 'photopolymer data sheets', how: 'memory' },
        note: 'Weigh a printed cube: makers differ.',
      },
    ],
  },
  cautions: [
    'Uncured resin harms skin: nitrile gloves, and cure it fully.',
    'Burns out slowly: follow the resin’s own schedule, and vent the oven outdoors.',
  ],
});
