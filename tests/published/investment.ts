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
  source: { key: 'cengel-boles', at: 'Table A-4, saturated water', how: 'memory' },
});

export const investmentChecks: readonly PublishedCheck[] = [
  saturated('steam-5', '5 °C', '0.8725 kPa'),
  saturated('steam-15', '15 °C', '1.7057 kPa'),
  saturated('steam-20', '20 °C', '2.3392 kPa'),
  saturated('steam-25', '25 °C', '3.1698 kPa'),
  saturated('steam-40', '40 °C', '7.3851 kPa'),
];
