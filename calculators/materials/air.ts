import { defineMaterial } from '../core/material.ts';

export const air = defineMaterial({
  id: 'air',
  role: 'fluid',
  name: 'Air',
  words: ['gas'],
  description: 'Dry air at one atmosphere.',
  properties: {
    'density.gas': [
      {
        at: '20 °C',
        value: '1.204 kg/m³',
        spread: '0.5 %',
        source: { key: 'iso-2533', at: 'gas law at 101.325 kPa, dry', how: 'estimate' },
      },
      {
        at: '26.85 °C',
        value: '1.1614 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 300 K', how: 'memory' },
      },
      {
        at: '126.85 °C',
        value: '0.8711 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 400 K', how: 'memory' },
      },
      {
        at: '326.85 °C',
        value: '0.5804 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 600 K', how: 'memory' },
      },
      {
        at: '526.85 °C',
        value: '0.4354 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 800 K', how: 'memory' },
      },
      {
        at: '726.85 °C',
        value: '0.3482 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1000 K', how: 'memory' },
      },
      {
        at: '926.85 °C',
        value: '0.2902 kg/m³',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1200 K', how: 'memory' },
      },
    ],
    heat: [
      {
        at: '26.85 °C',
        value: '1007 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 300 K', how: 'memory' },
      },
      {
        at: '126.85 °C',
        value: '1014 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 400 K', how: 'memory' },
      },
      {
        at: '326.85 °C',
        value: '1051 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 600 K', how: 'memory' },
      },
      {
        at: '526.85 °C',
        value: '1099 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 800 K', how: 'memory' },
      },
      {
        at: '726.85 °C',
        value: '1141 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1000 K', how: 'memory' },
      },
      {
        at: '926.85 °C',
        value: '1175 J/(kg·K)',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1200 K', how: 'memory' },
      },
    ],
    conductivity: [
      {
        at: '26.85 °C',
        value: '0.0263 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 300 K', how: 'memory' },
      },
      {
        at: '126.85 °C',
        value: '0.0338 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 400 K', how: 'memory' },
      },
      {
        at: '326.85 °C',
        value: '0.0469 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 600 K', how: 'memory' },
      },
      {
        at: '526.85 °C',
        value: '0.0573 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 800 K', how: 'memory' },
      },
      {
        at: '726.85 °C',
        value: '0.0667 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1000 K', how: 'memory' },
      },
      {
        at: '926.85 °C',
        value: '0.0763 W/(m·K)',
        spread: '2 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1200 K', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: '20 °C',
        value: '0.01813 mPa·s',
        spread: '1 %',
        source: { key: 'iso-2533', at: 'Sutherland’s formula', how: 'estimate' },
      },
      {
        at: '26.85 °C',
        value: '0.01846 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 300 K', how: 'memory' },
      },
      {
        at: '126.85 °C',
        value: '0.02301 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 400 K', how: 'memory' },
      },
      {
        at: '326.85 °C',
        value: '0.03058 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 600 K', how: 'memory' },
      },
      {
        at: '526.85 °C',
        value: '0.03698 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 800 K', how: 'memory' },
      },
      {
        at: '726.85 °C',
        value: '0.04244 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1000 K', how: 'memory' },
      },
      {
        at: '926.85 °C',
        value: '0.0473 mPa·s',
        spread: '1 %',
        source: { key: 'incropera', at: 'Table A.4, air, 1200 K', how: 'memory' },
      },
    ],
  },
});
