import { defineMaterial } from '../core/material.ts';

export const plaster = defineMaterial({
  id: 'plaster',
  role: 'mould',
  name: 'Plaster mould',
  words: ['plaster of Paris', 'gypsum mould'],
  description: 'Casting plaster, cast on the pattern and dried right through.',
  properties: {
    'density.bulk': [
      {
        at: 'dried',
        value: '1100 kg/m³',
        spread: '18 %',
        source: { key: 'flemings', at: 'table of mould and metal properties', how: 'memory' },
      },
    ],
    heat: [
      {
        at: 'dried, to the metal’s temperature',
        value: '837 J/(kg·K)',
        spread: '19 %',
        source: { key: 'flemings', at: 'table of mould and metal properties, 0.20 cal/(g K)', how: 'memory' },
      },
    ],
    conductivity: [
      {
        at: 'dried, to the metal’s temperature',
        value: '0.347 W/(m·K)',
        spread: '25 %',
        source: {
          key: 'flemings',
          at: 'table of mould and metal properties, 8.3e-4 cal/(cm s K)',
          how: 'memory',
        },
      },
      {
        at: '20 °C, gypsum of 900 kg/m³',
        value: '0.3 W/(m·K)',
        spread: '10 %',
        source: {
          key: 'en-12524',
          at: 'table of design values, read through an open property library',
          how: 'read',
        },
      },
    ],
    permeability: [
      {
        at: 'plain',
        value: '1.5 AFS',
        spread: '100 %',
        source: { key: 'asm-15', at: 'plaster moulding: 1 to 2 plain, 15 to 30 foamed', how: 'memory' },
      },
    ],
    'grain-size': [
      {
        at: 'set crystals',
        value: '0.01 mm',
        spread: '150 %',
        source: { key: 'estimate', at: 'needle crystals of gypsum', how: 'estimate' },
      },
    ],
    porosity: [
      {
        at: 'dried',
        value: '0.55 1',
        spread: '15 %',
        source: { key: 'estimate', at: 'one less dried density over 2500 kg/m³', how: 'estimate' },
      },
    ],
    moisture: [
      {
        at: 'dried through',
        value: '1 %',
        spread: '150 %',
        source: { key: 'trade-practice', at: 'dried until its mass stands still', how: 'common practice' },
      },
    ],
    'strength.tensile': [
      {
        at: 'dried',
        value: '500 kPa',
        spread: '150 %',
        source: { key: 'estimate', at: 'a fraction of the set strength', how: 'estimate' },
      },
    ],
    interface: [
      {
        at: 'aluminium or zinc',
        value: '500 W/(m²·K)',
        spread: '150 %',
        source: { key: 'estimate', at: 'the mould’s own conductivity rules', how: 'estimate' },
      },
    ],
    emissivity: [
      {
        at: 'face',
        value: '0.9 1',
        spread: '10 %',
        source: { key: 'incropera', at: 'Table A.11, plaster', how: 'memory' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould, drying',
        value: '250 °C',
        spread: '50 °C',
        source: {
          key: 'estimate',
          at: 'cracks and loses its strength as the last water leaves',
          how: 'estimate',
        },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1100 °C',
        spread: '100 °C',
        source: {
          key: 'trade-practice',
          at: 'non-ferrous only; best for aluminium and zinc',
          how: 'common practice',
        },
      },
    ],
  },
  cautions: [
    'Damp plaster under metal explodes: dry it to constant mass, right through.',
    'Overheated gypsum gives off sulphur dioxide.',
  ],
});
