import type { PublishedCheck } from './check.ts';

const water = (
  id: string,
  T: '5 °C' | '15 °C' | '20 °C' | '25 °C' | '40 °C',
  expect: PublishedCheck['expect'],
) =>
  ({
    id,
    formula: 'inspection/water-density',
    title: `Water at ${T}`,
    given: { T },
    find: 'rho',
    expect,
    tolerance: '0.006 kg/m³',
    source: { key: 'crc-handbook', at: 'standard density of water', how: 'memory' },
    note: 'Tables on the 1990 scale lie some thousandths of a kilogram from this 1968-scale fit.',
  }) as const satisfies PublishedCheck;

export const inspectionChecks: readonly PublishedCheck[] = [
  {
    id: 'wet-weighing-iron',
    formula: 'inspection/density',
    title: 'A sample of 63.5 g that reads 55.4 g in water',
    given: { m_a: '0.0635 kg', m_w: '0.0554 kg', rho_w: '1000 kg/m³' },
    find: 'rho',
    expect: '7840 kg/m³',
    tolerance: '0.1 %',
    source: { key: 'giancoli', at: 'ch. 10, problem 27', how: 'read' },
  },
  {
    id: 'wet-weighing-coin',
    formula: 'inspection/density',
    title: 'Is the coin genuine: 8.630 g in air, 7.800 g in water',
    given: { m_a: '8.630 g', m_w: '7.800 g', rho_w: '1 g/cm³' },
    find: 'rho',
    expect: '10.4 g/cm³',
    tolerance: '0.05 g/cm³',
    source: { key: 'openstax-physics', at: 'ch. 11, example on an ancient coin', how: 'memory' },
    note: 'The two weighings were read in a public answer; the printed density is recalled.',
  },
  {
    id: 'M29',
    formula: 'inspection/porosity',
    title: 'Porosity of a ceramic, 3.75 against 3.98 g/cm³',
    given: { rho: '3.75 g/cm³', rho_0: '3.98 g/cm³' },
    find: 'phi',
    expect: '5.78 %',
    tolerance: '0.1 %',
    source: {
      key: 'school-physics',
      at: 'ceramics course notes, fraction of theoretical density',
      how: 'read',
    },
  },
  water('water-5', '5 °C', '999.967 kg/m³'),
  water('water-15', '15 °C', '999.103 kg/m³'),
  water('water-20', '20 °C', '998.207 kg/m³'),
  water('water-25', '25 °C', '997.047 kg/m³'),
  water('water-40', '40 °C', '992.216 kg/m³'),
];
