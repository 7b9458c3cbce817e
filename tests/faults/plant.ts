import {
  binary,
  call,
  name,
  number,
  parseEquation,
  printEquation,
  symbolsOf,
  type Equation,
  type Expression,
} from '../../calculators/core/expression.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import { createRandom } from '../../calculators/core/random.ts';
import { residual, solve } from '../../calculators/core/solve.ts';
import { sameDimension, toSI, unit } from '../../calculators/core/units.ts';

/** A formula with one mistake put in on purpose, and what the mistake is. */
export interface Fault {
  readonly what: string;
  readonly formula: Formula;
}

type Rewrite = (e: Expression) => Expression | undefined;

/** Every tree that differs from `e` by one application of `rewrite`. */
function rewritings(e: Expression, rewrite: Rewrite): Expression[] {
  const here = rewrite(e);
  const found = here ? [here] : [];
  if (e.kind === 'negate') {
    found.push(...rewritings(e.operand, rewrite).map((operand) => ({ ...e, operand })));
  } else if (e.kind === 'binary') {
    found.push(...rewritings(e.left, rewrite).map((left) => ({ ...e, left })));
    found.push(...rewritings(e.right, rewrite).map((right) => ({ ...e, right })));
  } else if (e.kind === 'call') {
    e.args.forEach((arg, i) => {
      for (const changed of rewritings(arg, rewrite)) {
        found.push({ ...e, args: e.args.map((other, k) => (k === i ? changed : other)) });
      }
    });
  }
  return found;
}

function replaceAll(e: Expression, replace: Rewrite): Expression {
  const changed = replace(e);
  if (changed) return changed;
  if (e.kind === 'negate') return { ...e, operand: replaceAll(e.operand, replace) };
  if (e.kind === 'binary') return binary(e.op, replaceAll(e.left, replace), replaceAll(e.right, replace));
  if (e.kind === 'call') return call(e.fn, ...e.args.map((arg) => replaceAll(arg, replace)));
  return e;
}

const droppedPower: Rewrite = (e) => {
  if (e.kind === 'binary' && e.op === '^') return e.left;
  if (e.kind === 'call' && e.fn === 'sqrt') return e.args[0];
  return undefined;
};

const wrongNumber: Rewrite = (e) => {
  if (e.kind === 'name' && e.name === 'pi') return number(3);
  return e.kind === 'number' ? number(e.value === 0 ? 1 : e.value * 1.5) : undefined;
};

const flippedSign: Rewrite = (e) => {
  if (e.kind !== 'binary' || (e.op !== '+' && e.op !== '-')) return undefined;
  return binary(e.op === '+' ? '-' : '+', e.left, e.right);
};

const turnedOver: Rewrite = (e) => {
  if (e.kind !== 'binary' || (e.op !== '*' && e.op !== '/')) return undefined;
  return binary(e.op === '*' ? '/' : '*', e.left, e.right);
};

/**
 * Every fault of the planted kinds that can be put into this formula. A change that leaves the equation
 * saying the same, such as two terms of a sum changing places, is no fault.
 */
export function faultsOf(formula: Formula): Fault[] {
  return changesOf(formula).filter((fault) => !saysTheSame(formula, fault.formula));
}

/** Whether everything that satisfies the one equation satisfies the other, tried at 20 points of the ranges. */
function saysTheSame(sound: Formula, changed: Formula): boolean {
  const random = createRandom(sound.id);
  const [find = ''] = Object.keys(sound.symbols);
  const open = Object.entries(sound.symbols).filter(
    ([symbol, { constant }]) => symbol !== find && constant === undefined,
  );
  let tried = 0;
  for (let i = 0; i < 400 && tried < 20; i += 1) {
    const point = Object.fromEntries(
      open.map(([symbol, { range, usual, unit: written }]) => {
        const [low, high] = range ?? [usual ?? 1, usual ?? 1];
        return [symbol, toSI(low + (high - low) * random.uniform(), written)];
      }),
    );
    const solved = solve(sound, point, find);
    if (!solved.ok) continue;
    tried += 1;
    const off = residual(changed, { ...point, [find]: solved.value });
    if (!(Math.abs(off) < 1e-9)) return false;
  }
  return tried > 0;
}

function changesOf(formula: Formula): Fault[] {
  const equation = parseEquation(formula.equation);
  const faults: Fault[] = [];
  const plant = (what: string, { left, right }: Equation, symbols = formula.symbols): void => {
    const text = printEquation({ left, right });
    if (text === printEquation(equation) && symbols === formula.symbols) return;
    faults.push({ what: `${what}: ${text}`, formula: { ...formula, equation: text, symbols } });
  };
  const onEach = (what: string, rewrite: Rewrite): void => {
    for (const right of rewritings(equation.right, rewrite)) plant(what, { ...equation, right });
    for (const left of rewritings(equation.left, rewrite)) plant(what, { ...equation, left });
  };
  onEach('dropped square', droppedPower);
  onEach('wrong constant', wrongNumber);
  onEach('wrong sign', flippedSign);
  onEach('upside down', turnedOver);

  const everywhere = (what: string, replace: Rewrite): void =>
    plant(what, { left: replaceAll(equation.left, replace), right: replaceAll(equation.right, replace) });
  const symbols = symbolsOf(equation.left, equation.right);
  for (const symbol of symbols) {
    const spec = formula.symbols[symbol];
    if (!spec) continue;
    const put =
      (instead: Expression): Rewrite =>
      (e) =>
        e.kind === 'name' && e.name === symbol ? instead : undefined;
    everywhere(`${symbol} in a wrong unit`, put(binary('/', name(symbol), number(1000))));
    if (unit(spec.unit).kind === 'temperature') {
      everywhere(`${symbol} in °C for K`, put(binary('-', name(symbol), number(273.15))));
    }
    if (spec.constant !== undefined) {
      const wrong = { ...spec, constant: spec.constant * 1.1 };
      faults.push({
        what: `wrong constant ${symbol}`,
        formula: { ...formula, symbols: { ...formula.symbols, [symbol]: wrong } },
      });
    }
    for (const other of symbols.slice(symbols.indexOf(symbol) + 1)) {
      const second = formula.symbols[other];
      if (!second || !sameDimension(unit(spec.unit).dimension, unit(second.unit).dimension)) continue;
      everywhere(`${symbol} and ${other} swapped`, (e) => {
        if (e.kind !== 'name') return undefined;
        if (e.name === symbol) return name(other);
        return e.name === other ? name(symbol) : undefined;
      });
    }
  }
  return faults;
}
