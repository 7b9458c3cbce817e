import type { PublishedCheck } from './check.ts';

const perFoot = (
  id: string,
  metal: string,
  onPattern: '12.09375 in' | '12.1875 in' | '12.15625 in' | '12.21875 in',
  expect: '0.781 %' | '1.562 %' | '1.302 %' | '1.823 %',
): PublishedCheck => ({
  id,
  formula: 'pattern/contraction',
  title: `Allowance of ${metal}, from inches per foot to per cent`,
  given: { L: '12 in', L_p: onPattern },
  find: 's',
  expect,
  tolerance: '0.1 %',
  source: { key: 'dooley', at: 'table of pattern allowances', how: 'read' },
});

const leans = (
  id: string,
  h: '1 in' | '0.5 in',
  theta: '1 deg' | '3 deg' | '5 deg',
  expect: '0.0175 in' | '0.052 in' | '0.044 in',
  tolerance: '0.3 %' | '1 %' | '1.2 %',
  key: 'draft-table' | 'draft-chart',
): PublishedCheck => ({
  id,
  formula: 'pattern/draft',
  title: `Lean of a side ${h} deep at ${theta}`,
  given: { h, theta },
  find: 'd',
  expect,
  tolerance,
  source: { key, at: `row of ${h}`, how: 'read' },
});

export const patternChecks: readonly PublishedCheck[] = [
  perFoot('A03', 'cast iron, 3/32 in', '12.09375 in', '0.781 %'),
  perFoot('A04', 'tin, steel and brass, 3/16 in', '12.1875 in', '1.562 %'),
  perFoot('A05', 'bronze, 5/32 in', '12.15625 in', '1.302 %'),
  perFoot('A06', 'aluminium, zinc, lead and yellow brass, 7/32 in', '12.21875 in', '1.823 %'),
  {
    id: 'A20',
    formula: 'pattern/draft',
    title: 'One sixteenth of an inch to the foot, as a lean',
    given: { h: '12 in', theta: '0.298 deg' },
    find: 'd',
    expect: '0.0625 in',
    tolerance: '0.3 %',
    source: { key: 'trade-practice', at: 'draft of precise patterns, 1/16 inch per foot', how: 'read' },
  },
  {
    id: 'A02-three-ways',
    formula: 'pattern/allowance-chain',
    title: 'Volume of a pattern 1 % larger each way',
    given: { L: '1 m', s_1: '1 %', s_2: '1 %', s_3: '1 %' },
    find: 'L_0',
    expect: '1.03 m',
    tolerance: '0.05 %',
    source: { key: 'gate-me', at: '2004, volume ratio of pattern and casting', how: 'read' },
    note: 'Three equal factors in a row, as length, width and height make a volume.',
  },
  leans('draft-1', '1 in', '1 deg', '0.0175 in', '0.3 %', 'draft-table'),
  leans('draft-3', '1 in', '3 deg', '0.052 in', '1 %', 'draft-chart'),
  leans('draft-half-5', '0.5 in', '5 deg', '0.044 in', '1.2 %', 'draft-chart'),
  {
    id: 'three-rises',
    formula: 'pattern/allowance-chain',
    title: 'Three rises of 12 %, one upon the other: 40.4928 % in all',
    given: { L: '1 m', s_1: '12 %', s_2: '12 %', s_3: '12 %' },
    find: 'L_0',
    expect: '1.404928 m',
    tolerance: '0.0001 %',
    source: { key: 'percent-answers', at: 'successive increases of 12, 12 and 12 per cent', how: 'read' },
    note: 'Larger than any allowance; the chain is the same.',
  },
];
