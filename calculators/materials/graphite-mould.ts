import { defineMaterial } from '../core/material.ts';

export const graphiteMould = defineMaterial({
  id: 'graphite-mould',
  role: 'mould',
  name: 'Graphite mould',
  words: ['ingot mould'],
  description: 'A block of machined graphite, for ingots and repeated small castings.',
  properties: {
    'density.bulk': [
      {
        at: '20 °C',
        value: '1550 kg/m³',
        spread: '20 %',
        source: {
          key: 'vdi-heat-atlas',
          at: 'table of refractories, carbon and graphite, read through an open property library',
          how: 'read',
        },
      },
      {
        at: 'fine-grained, 20 °C',
        value: '1800 kg/m³',
        spread: '4 %',
        source: { key: 'makers-data', at: 'fine-grained graphite', how: 'memory' },
      },
    ],
    heat: [
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
        at: '20 °C',
        value: '710 J/(kg·K)',
        spread: '3 %',
        source: { key: 'crc-handbook', at: 'specific heat of graphite', how: 'memory' },
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
        note: 'Grades run from 50 to 150: ask for the sheet of the block.',
      },
      {
        at: '20 °C, fine-grained',
        value: '110 W/(m·K)',
        spread: '36 %',
        source: { key: 'makers-data', at: 'fine-grained graphite', how: 'memory' },
      },
    ],
    porosity: [
      {
        at: 'block',
        value: '0.2 1',
        spread: '60 %',
        source: { key: 'estimate', at: 'one less bulk over 2260 kg/m³', how: 'estimate' },
      },
    ],
    'strength.tensile': [
      {
        at: '20 °C',
        value: '20000 kPa',
        spread: '60 %',
        source: { key: 'makers-data', at: 'fine-grained graphite', how: 'memory' },
      },
    ],
    interface: [
      {
        at: 'copper or silver alloy',
        value: '3000 W/(m²·K)',
        spread: '150 %',
        source: { key: 'estimate', at: 'a hard smooth wall; falls when a gap opens', how: 'estimate' },
      },
    ],
    emissivity: [
      {
        at: 'machined',
        value: '0.85 1',
        spread: '10 %',
        source: { key: 'makers-data', at: 'emissivity table of an infra-red instrument maker', how: 'read' },
      },
    ],
    'temperature.limit': [
      {
        at: 'whole mould, in air',
        value: '450 °C',
        spread: '50 °C',
        source: { key: 'makers-data', at: 'oxidises from about 400 °C', how: 'read' },
      },
    ],
    'temperature.metal': [
      {
        at: 'hottest metal poured into it',
        value: '1300 °C',
        spread: '100 °C',
        source: { key: 'trade-practice', at: 'burns slowly in air at each pour', how: 'common practice' },
      },
    ],
  },
  cautions: [
    'Dry and warm it first: a cold block sweats under a torch.',
    'Graphite dust conducts: keep it out of electric furnaces.',
  ],
});
