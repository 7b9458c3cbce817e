import type { ModelCheck } from './model-check.ts';

const noInt1 = Array.from({ length: 11 }, (_, i) => ({ x: `${60 + i}`, y: `${130 + i}` }));
const noInt2 = [
  { x: '4', y: '3' },
  { x: '5', y: '4' },
  { x: '6', y: '4' },
];
const fit = (
  id: string,
  pours: ModelCheck['given'][string],
  find: 'constant' | 'deviation',
  expect: ModelCheck['expect'],
): ModelCheck => ({
  id,
  model: 'inspection/calibrate',
  title: `${id.startsWith('NoInt1') ? 'Eleven' : 'Three'} points through the origin: ${find === 'constant' ? 'slope' : 'residual deviation'}`,
  given: { what: 'factor', scatter: 'even', pours },
  find,
  expect,
  tolerance: '0.000001 %',
  source: { key: 'nist-strd', at: id.slice(0, 6), how: 'memory' },
});

const boils = (
  id: string,
  title: string,
  given: ModelCheck['given'],
  expect: ModelCheck['expect'],
  tolerance: ModelCheck['tolerance'],
  source: ModelCheck['source'],
): ModelCheck => ({
  id,
  model: 'investment/boil',
  title,
  given,
  find: 'stalls',
  expect,
  tolerance,
  source,
});

export const benchModelChecks: readonly ModelCheck[] = [
  fit('NoInt1-slope', noInt1, 'constant', '2.07438016528926 1'),
  fit('NoInt1-scatter', noInt1, 'deviation', '3.56753034006338 1'),
  fit('NoInt2-slope', noInt2, 'constant', '0.727272727272727 1'),
  fit('NoInt2-scatter', noInt2, 'deviation', '0.369274472937998 1'),
  boils(
    'boil-sea-25',
    'Water at 25 °C by the sea: 29.0 inHg of vacuum',
    { z: '0 m', T: '25 °C' },
    '29.0 inHg',
    '0.05 inHg',
    { key: 'boiling-note', at: 'water condensing at 25 °C', how: 'read' },
  ),
  {
    id: 'mix-sterling',
    model: 'charge/make-up',
    title: 'Twenty grams of sterling: 18.5 g of silver and 1.5 g of copper',
    given: {
      batch: '20 g',
      scale: '0.001 g',
      stock: [
        { name: 'fine silver', price: '900', Ag: '100 %' },
        { name: 'copper', price: '10', Cu: '100 %' },
      ],
      target: [{ element: 'Ag', least: '92.5 %', most: '100 %' }],
      loss: [],
    },
    find: 'price',
    // 0.0185 kg at 900 and 0.0015 kg at 10: 16.65 + 0.015.
    expect: '16.665 1',
    tolerance: '0.01 %',
    source: { key: 'jewellers-forum', at: 'alloy recipe for sterling', how: 'read' },
    note: 'The source gives the two masses; the prices only weigh them.',
  },
];
