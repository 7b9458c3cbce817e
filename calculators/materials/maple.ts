import { defineMaterial } from '../core/material.ts';

export const maple = defineMaterial({
  id: 'maple',
  role: 'pattern',
  name: 'Maple',
  words: ['hard maple', 'sycamore'],
  description: 'Dense hard wood for patterns that must last.',
  properties: {
    'density.solid': [
      {
        at: 'air-dry',
        value: '668 kg/m³',
        spread: '10 %',
        source: {
          key: 'ashrae',
          at: 'ch. 26, woods, maple, read through an open property library',
          how: 'read',
        },
        note: 'Weigh and measure the piece: one plank differs from the next.',
      },
    ],
  },
  cautions: ['Wood dust irritates and can cause cancer: extraction and a mask.'],
});
