import type { ModelCheck } from './model-check.ts';

const cengel = (at: string) =>
  ({ key: 'cengel', at: `${at}, read in a textbook companion`, how: 'read' }) as const;

export const warmingChecks: readonly ModelCheck[] = [
  {
    id: 'H44',
    model: 'sand/warm-through',
    title: 'Brass plate of 4 cm, seven minutes at 500 °C: its face',
    given: {
      thickness: '4 cm',
      k: '110 W/(m·K)',
      rho: '8530 kg/m³',
      c: '380 J/(kg·K)',
      h_oven: '120 W/(m²·K)',
      T_start: '20 °C',
      T_oven: '500 °C',
      t_oven: '420 s',
    },
    find: 'face',
    expect: '282 °C',
    tolerance: '3 °C',
    source: cengel('Example 4-4'),
    note: 'The book reads a chart; the series gives 279.7 °C.',
  },
  {
    id: 'H42',
    model: 'sand/warm-through',
    title: 'Egg of 5 cm in boiling water: time until its middle is at 70 °C',
    given: {
      shape: 'ball',
      thickness: '5 cm',
      k: '0.627 W/(m·K)',
      rho: '1000 kg/m³',
      c: '4152.3 J/(kg·K)',
      h_oven: '1200 W/(m²·K)',
      T_start: '5 °C',
      T_oven: '95 °C',
      T_want: '70 °C',
    },
    find: 'time',
    expect: '865 s',
    tolerance: '0.5 %',
    source: cengel('Example 4-3'),
  },
  {
    id: 'H38-series',
    model: 'sand/warm-through',
    title: 'Thermocouple bead of 1 mm: 99 % of the way',
    given: {
      shape: 'ball',
      thickness: '1 mm',
      k: '35 W/(m·K)',
      rho: '8500 kg/m³',
      c: '320 J/(kg·K)',
      h_oven: '210 W/(m²·K)',
      T_start: '0 °C',
      T_oven: '100 °C',
      T_want: '99 °C',
    },
    find: 'time',
    expect: '10 s',
    tolerance: '1 %',
    source: cengel('Example 4-1'),
  },
];
