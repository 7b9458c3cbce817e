import type { ModelCheck } from './model-check.ts';

/** A tube stood in water, as a channel that rises: no metal freezes in it, and surface tension draws it up. */
const water = (rho: string, gamma: string): ModelCheck['given'] => ({
  T_gate: '20 °C',
  T_mould: '20 °C',
  liquidus: '0.01 °C',
  solidus: '0 °C',
  rho,
  gamma,
  c: '4180 J/(kg·K)',
  L: '334 kJ/kg',
  mu: '1 mPa·s',
  theta: '0 deg',
  head: '0 mm',
});

export const frontChecks: readonly ModelCheck[] = [
  {
    id: 'front-capillary-rise-half-millimetre',
    model: 'filling/front',
    title: 'Water drawn up a glass tube of 0.500 mm radius',
    given: {
      ...water('1000 kg/m³', '0.0728 N/m'),
      sections: [
        { name: 'Tube', from: 'gate', shape: 'round', length: '60 mm', thickness: '1 mm', rise: '60 mm' },
      ],
    },
    find: 'reached',
    expect: '29.7 mm',
    tolerance: '0.05 mm',
    source: {
      key: 'openstax-physics',
      at: 'ch. 11, problem 79, 2.97 cm; answer read in an open solutions page',
      how: 'read',
    },
    note: 'The channel stands upright and the front ends where the weight of the column equals the tension round its rim; the surge past it, which the balance of momentum gives, is not counted.',
  },
  {
    id: 'front-capillary-rise-millimetre',
    model: 'filling/front',
    title: 'Water at 30 °C drawn up a glass tube of 1 mm radius',
    given: {
      ...water('995.7 kg/m³', '0.0712 N/m'),
      sections: [
        { name: 'Tube', from: 'gate', shape: 'round', length: '40 mm', thickness: '2 mm', rise: '40 mm' },
      ],
    },
    find: 'reached',
    expect: '14.6 mm',
    tolerance: '0.05 mm',
    source: { key: 'ecourses-fluids', at: 'capillary action, case study solution', how: 'read' },
    note: 'The channel stands upright, wetted fully, with no head but what the tension gives.',
  },
];
