import { defineMaterial } from '../core/material.ts';

export const graphiteCrucible = defineMaterial({
  id: 'graphite-crucible',
  role: 'crucible',
  name: 'Graphite crucible',
  words: ['graphite pot'],
  description: 'Pure graphite, for electric furnaces and precious metals.',
  properties: {
    'density.bulk': [
      {
        at: '20 °C',
        value: '1800 kg/m³',
        spread: '14 %',
        source: { key: 'makers-data', at: 'graphites', how: 'memory' },
      },
    ],
    heat: [
      {
        at: '800 °C',
        value: '1366 J/(kg·K)',
        spread: '8 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
      {
        at: '20 °C',
        value: '710 J/(kg·K)',
        spread: '3 %',
        source: { key: 'crc-handbook', at: 'specific heat of graphite', how: 'memory' },
      },
      {
        at: '400 °C',
        value: '1108 J/(kg·K)',
        spread: '8 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
      {
        at: '1200 °C',
        value: '1588 J/(kg·K)',
        spread: '8 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
    ],
    conductivity: [
      {
        at: '400 °C',
        value: '67 W/(m·K)',
        spread: '125 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
    ],
    emissivity: [
      {
        at: 'hot',
        value: '0.85 1',
        spread: '7 %',
        source: {
          key: 'makers-data',
          at: 'emissivity table of an infra-red instrument maker, 1 µm',
          how: 'read',
        },
      },
      {
        at: 'filed surface, 20 °C',
        value: '0.98 1',
        spread: '3 %',
        source: { key: 'makers-data', at: 'emissivity table of an infra-red instrument maker', how: 'read' },
      },
    ],
    'temperature.limit': [
      {
        at: 'in use, in air',
        value: '1300 °C',
        spread: '100 °C',
        source: {
          key: 'trade-practice',
          at: 'small electric furnaces; it burns from about 450 °C',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: [
    'It burns slowly in air and makes carbon monoxide: ventilate.',
    'Switch an open-element furnace off before you touch the melt with graphite or metal.',
    'Warm a stored crucible for an hour or two at 150 to 200 °C, then slowly through red heat, before its first charge.',
  ],
});
