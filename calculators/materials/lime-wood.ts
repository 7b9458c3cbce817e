import { defineMaterial } from '../core/material.ts';

export const limeWood = defineMaterial({
  id: 'lime-wood',
  role: 'pattern',
  name: 'Lime',
  words: ['basswood', 'linden', 'tilia'],
  description: 'Fine close grain, carves cleanly.',
  properties: {
    'density.solid': [
      {
        at: 'air-dry',
        value: '500 kg/m³',
        spread: '15 %',
        source: { key: 'smithells', at: 'densities of woods', how: 'memory' },
        note: 'Weigh and measure the piece: one plank differs from the next.',
      },
    ],
  },
  cautions: ['Wood dust irritates and can cause cancer: extraction and a mask.'],
});
