import { defineMaterial } from '../core/material.ts';

export const mahogany = defineMaterial({
  id: 'mahogany',
  role: 'pattern',
  name: 'Mahogany',
  words: ['mahogany'],
  description: 'Stable hard pattern wood.',
  properties: {
    'density.solid': [
      {
        at: 'air-dry',
        value: '545 kg/m³',
        spread: '15 %',
        source: { key: 'smithells', at: 'densities of woods', how: 'memory' },
        note: 'Weigh and measure the piece: one plank differs from the next.',
      },
    ],
  },
  cautions: ['Wood dust irritates and can cause cancer: extraction and a mask.'],
});
