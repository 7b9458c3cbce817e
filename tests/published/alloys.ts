import type { Quantity } from '../../calculators/core/units.ts';
import type { ModelCheck } from './model-check.ts';

const line = (
  id: string,
  title: string,
  system: string,
  share: Quantity,
  find: 'liquidus' | 'solidus' | 'rest',
  expect: Quantity,
  tolerance: Quantity,
  source: ModelCheck['source'],
): ModelCheck => ({
  id,
  model: 'charge/liquidus',
  title,
  given: { system, share },
  find,
  expect,
  tolerance,
  source,
});

const cda = { key: 'copper-development', at: 'alloy data, melting range', how: 'memory' } as const;
const asm2 = { key: 'asm-2', at: 'properties of cast and wrought alloys', how: 'memory' } as const;

export const alloyChecks: readonly ModelCheck[] = [
  line(
    'sterling-liquidus',
    'Sterling begins to freeze',
    'ag-cu',
    '7.5 %',
    'liquidus',
    '893 °C',
    '6 Δ°C',
    asm2,
  ),
  line('sterling-solidus', 'Sterling, all solid', 'ag-cu', '7.5 %', 'solidus', '802 °C', '6 Δ°C', asm2),
  line(
    'coin-silver-solidus',
    'Silver with 10 % copper, all solid',
    'ag-cu',
    '10 %',
    'solidus',
    '779 °C',
    '2 Δ°C',
    asm2,
  ),
  line(
    'brass-70-30-liquidus',
    'Brass 70/30 begins to freeze',
    'cu-zn',
    '30 %',
    'liquidus',
    '955 °C',
    '10 Δ°C',
    cda,
  ),
  line('brass-70-30-solidus', 'Brass 70/30, all solid', 'cu-zn', '30 %', 'solidus', '915 °C', '10 Δ°C', cda),
  line(
    'brass-90-10-liquidus',
    'Brass 90/10 begins to freeze',
    'cu-zn',
    '10 %',
    'liquidus',
    '1045 °C',
    '5 Δ°C',
    cda,
  ),
  line(
    'bronze-10-liquidus',
    'Bronze of 10 % tin begins to freeze',
    'cu-sn',
    '10 %',
    'liquidus',
    '1000 °C',
    '10 Δ°C',
    {
      key: 'getty-bronze',
      at: 'melting range of 90/10 bronze',
      how: 'read',
    },
  ),
  line('bronze-10-solidus', 'Bronze of 10 % tin, all solid', 'cu-sn', '10 %', 'solidus', '830 °C', '12 Δ°C', {
    key: 'getty-bronze',
    at: 'melting range of 90/10 bronze',
    how: 'read',
  }),
  line(
    'al-7si-liquidus',
    'Aluminium with 7 % silicon begins to freeze',
    'al-si',
    '7 %',
    'liquidus',
    '615 °C',
    '5 Δ°C',
    asm2,
  ),
  line(
    'al-12si-liquidus',
    'Aluminium with 12 % silicon begins to freeze',
    'al-si',
    '12 %',
    'liquidus',
    '582 °C',
    '5 Δ°C',
    asm2,
  ),
];

const iso = { key: 'iso-8062-3', at: 'Table 2, read in a copy of the table', how: 'read' } as const;
const width = (id: string, size: Quantity, grade: string, expect: Quantity): ModelCheck => ({
  id,
  model: 'pattern/tolerance',
  title: `Tolerance of ${size}, DCTG ${grade}`,
  given: { size, grade },
  find: 'width',
  expect,
  tolerance: '0.0001 mm',
  source: iso,
});

/** One figure from each row of the table, at its upper end where a slip of a row would show. */
export const toleranceChecks: readonly ModelCheck[] = [
  width('A09', '10 mm', '12', '4.2 mm'),
  width('A10', '16 mm', '4', '0.28 mm'),
  width('A11', '25 mm', '9', '1.7 mm'),
  width('A12', '40 mm', '16', '14 mm'),
  width('A13', '63 mm', '11', '4 mm'),
  width('A14', '100 mm', '7', '1.1 mm'),
  width('A15', '160 mm', '1', '0.15 mm'),
  width('A16', '250 mm', '13', '11 mm'),
];
