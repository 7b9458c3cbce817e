import { defineMaterial } from '../core/material.ts';

export const fusedSilicaCrucible = defineMaterial({
  id: 'fused-silica-crucible',
  role: 'crucible',
  name: 'Fused silica crucible',
  words: ['quartz crucible', 'melting dish'],
  description: 'Fused silica dishes and pots for torch melts of silver, gold and bronze.',
  properties: {
    'density.bulk': [
      {
        at: 'sintered',
        value: '1940 kg/m³',
        spread: '8 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'dense quartz glass',
        value: '2200 kg/m³',
        spread: '1 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    heat: [
      {
        at: '1000 °C',
        value: '972 J/(kg·K)',
        spread: '20 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
      {
        at: '20 °C',
        value: '750 J/(kg·K)',
        spread: '5 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    conductivity: [
      {
        at: '1000 °C, sintered',
        value: '1.67 W/(m·K)',
        spread: '20 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, read through an open property library',
          how: 'read',
        },
      },
      {
        at: '20 °C',
        value: '1.4 W/(m·K)',
        spread: '5 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    emissivity: [
      {
        at: 'hot',
        value: '0.7 1',
        spread: '40 %',
        source: { key: 'incropera', at: 'Table A.11, quartz, by analogy', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'in use, short melts',
        value: '1300 °C',
        spread: '100 °C',
        source: {
          key: 'trade-practice',
          at: 'turns to cristobalite and crumbles with long holds above 1100 °C',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: [
    'Not for aluminium: it reacts with silica.',
    'Fluoride and strong alkali fluxes dissolve it.',
    'Once it has turned white and crumbly it sheds silica dust: throw it away.',
    'Warm a stored crucible for an hour or two at 150 to 200 °C, then slowly through red heat, before its first charge.',
  ],
});
