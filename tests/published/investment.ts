import type { PublishedCheck } from './check.ts';

const saturated = (
  id: string,
  T: '5 °C' | '15 °C' | '20 °C' | '25 °C' | '40 °C',
  expect: PublishedCheck['expect'],
): PublishedCheck => ({
  id,
  formula: 'investment/vapour-pressure',
  title: `Saturated water at ${T}`,
  given: { T },
  find: 'p',
  expect,
  tolerance: '0.1 %',
  source: { key: 'water-tables', at: 'saturated water, temperature table', how: 'read' },
});

export const investmentChecks: readonly PublishedCheck[] = [
  saturated('steam-5', '5 °C', '0.8721 kPa'),
  saturated('steam-15', '15 °C', '1.7051 kPa'),
  saturated('steam-20', '20 °C', '2.339 kPa'),
  saturated('steam-25', '25 °C', '3.169 kPa'),
  saturated('steam-40', '40 °C', '7.384 kPa'),
];
