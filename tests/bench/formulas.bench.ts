import { parseEquation } from '../../calculators/core/expression.ts';
import { compile } from '../../calculators/core/program.ts';
import { solve } from '../../calculators/core/solve.ts';
import { formulaSpread } from '../../calculators/core/spread.ts';
import { velocity } from '../../calculators/formulas/filling/velocity.ts';
import { compare } from './compare.ts';

const sum = 'C * sqrt(2 * g * h)';
const { right } = parseEquation(`v = ${sum}`);
const compiled = compile(right);
const numbers = { C: 0.7, g: 9.80665, h: 0.2 };

compare('A speed from a head', [
  { name: 'written out in code', run: () => numbers.C * Math.sqrt(2 * numbers.g * numbers.h) },
  { name: 'its equation, compiled once', run: () => compiled(numbers) },
  {
    name: 'its equation, parsed and compiled each time',
    run: () => compile(parseEquation(`v = ${sum}`).right)(numbers),
  },
]);

const names = Object.keys(velocity.symbols);
const sought = names[0] ?? 'v';
const usual = Object.fromEntries(
  Object.entries(velocity.symbols).map(([name, { constant, usual: start, range }]) => [
    name,
    constant ?? start ?? ((range?.[0] ?? 0) + (range?.[1] ?? 2)) / 2,
  ]),
);
const value = (find: string): number => {
  const solved = solve(velocity, usual, find);
  return solved.ok ? solved.value : 0;
};

compare(`The card of ${velocity.id}`, [
  { name: `solved for ${sought}`, run: () => value(sought) },
  { name: 'solved for the head', run: () => value('h') },
  {
    name: 'with its spread, sampled',
    run: () => formulaSpread(velocity, usual, { h: 0.005 }, sought)?.spread ?? 0,
  },
]);
