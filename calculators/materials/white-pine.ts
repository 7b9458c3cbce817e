import { defineMaterial } from '../core/material.ts';

export const whitePine = defineMaterial({
  id: 'white-pine',
  role: 'pattern',
  name: 'Pine',
  words: ['pine', 'softwood'],
  description: 'Soft even-grained pine, the patternmaker’s first wood.',
  properties: {
    'density.solid': [
      {
        at: 'air-dry',
        value: '400 kg/m³',
        spread: '15 %',
        source: {
          key: 'ashrae',
          at: 'ch. 26, woods, eastern white pine, read through an open property library',
          how: 'read',
        },
        note: 'Weigh and measure the piece: one plank differs from the next.',
      },
    ],
  },
  cautions: ['Wood dust irritates and can cause cancer: extraction and a mask.'],
});
