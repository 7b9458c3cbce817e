import { defineMaterial } from '../core/material.ts';

export const pla = defineMaterial({
  id: 'pla',
  role: 'pattern',
  name: 'Printed plastic, PLA',
  words: ['polylactide', 'filament'],
  description: 'Polylactide filament, solid infill.',
  properties: {
    'density.solid': [
      {
        at: 'solid infill, 20 °C',
        value: '1240 kg/m³',
        spread: '2 %',
        source: { key: 'makers-data', at: 'polylactide data sheets', how: 'memory' },
        note: 'A hollow or sparse print does not qualify: use its mass and the drawing’s volume.',
      },
    ],
  },
  cautions: ['Burnout smoke: vent the oven outdoors.'],
});
