import { defineMaterial } from '../core/material.ts';

export const clayGraphiteCrucible = defineMaterial({
  id: 'clay-graphite-crucible',
  role: 'crucible',
  name: 'Clay-graphite crucible',
  words: ['plumbago crucible'],
  description: 'The general crucible for bronze, brass and silver in gas or electric furnaces.',
  properties: {
    'density.bulk': [
      {
        at: '20 °C',
        value: '2000 kg/m³',
        spread: '10 %',
        source: { key: 'makers-data', at: 'clay-graphite crucibles', how: 'memory' },
      },
    ],
    heat: [
      {
        at: '400 to 1000 °C',
        value: '1000 J/(kg·K)',
        spread: '20 %',
        source: { key: 'estimate', at: 'mass average of clay and graphite', how: 'estimate' },
      },
    ],
    conductivity: [
      {
        at: 'hot',
        value: '12 W/(m·K)',
        spread: '110 %',
        source: { key: 'makers-data', at: 'clay-graphite crucibles, to 25', how: 'memory' },
      },
      {
        at: 'academic test piece',
        value: '1.49 W/(m·K)',
        spread: '20 %',
        source: { key: 'clay-graphite-test', at: 'measured crucible body', how: 'read' },
      },
    ],
    emissivity: [
      {
        at: 'hot',
        value: '0.85 1',
        spread: '12 %',
        source: { key: 'incropera', at: 'Table A.11, by analogy with refractories', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'in use',
        value: '1400 °C',
        spread: '100 °C',
        source: { key: 'makers-data', at: 'clay-graphite crucibles', how: 'memory' },
      },
    ],
  },
  cautions: [
    'Warm a stored crucible for an hour or two at 150 to 200 °C, then slowly through red heat, before its first charge.',
    'A damp ring or a dull sound means a crack: throw it away.',
    'Never let metal freeze in it, and never wedge cold ingots across it.',
  ],
});
