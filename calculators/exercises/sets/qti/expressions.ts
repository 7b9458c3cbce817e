import type { Expression } from '../../../core/expression.ts';
import { unit } from '../../../core/units.ts';
import { element } from './xml.ts';

/** Sums in the vocabulary of QTI 3.0. Everything is a float; what has no word there is thrown as a sentence. */
export class Unsayable extends Error {
  override name = 'Unsayable';
}

export const float = (value: number): string => {
  if (!Number.isFinite(value)) throw new Unsayable('a number is not finite');
  return element('qti-base-value', { 'base-type': 'float' }, String(value));
};
export const variable = (identifier: string): string => element('qti-variable', { identifier });
export const sum = (...terms: string[]): string => element('qti-sum', {}, ...terms);
export const product = (...terms: string[]): string => element('qti-product', {}, ...terms);
export const minus = (a: string, b: string): string => element('qti-subtract', {}, a, b);
export const over = (a: string, b: string): string => element('qti-divide', {}, a, b);
export const power = (a: string, b: string): string => element('qti-power', {}, a, b);
export const least = (...terms: string[]): string => element('qti-min', {}, ...terms);
export const most = (...terms: string[]): string => element('qti-max', {}, ...terms);
export const operator = (name: string, a: string): string => element('qti-math-operator', { name }, a);

const sayable: Readonly<Record<string, string>> = {
  exp: 'exp',
  ln: 'ln',
  log10: 'log',
  sin: 'sin',
  cos: 'cos',
  tan: 'tan',
  asin: 'asin',
  acos: 'acos',
  atan: 'atan',
  abs: 'abs',
};

/** An expression with its names replaced by what stands for them. */
export function said(e: Expression, names: Readonly<Record<string, string>>): string {
  switch (e.kind) {
    case 'number':
      return float(e.value);
    case 'name': {
      if (e.name === 'pi') return element('qti-math-constant', { name: 'pi' });
      if (!Object.hasOwn(names, e.name)) throw new Unsayable(`${e.name} has no value`);
      return names[e.name]!;
    }
    case 'negate':
      return product(float(-1), said(e.operand, names));
    case 'binary': {
      const [a, b] = [said(e.left, names), said(e.right, names)];
      return { '+': sum, '-': minus, '*': product, '/': over, '^': power }[e.op](a, b);
    }
    case 'call': {
      const args = e.args.map((arg) => said(arg, names));
      if (e.fn === 'sqrt') return power(args[0]!, float(0.5));
      if (e.fn === 'min') return least(...args);
      if (e.fn === 'max') return most(...args);
      const name = sayable[e.fn];
      if (name === undefined) throw new Unsayable(`QTI has no ${e.fn}`);
      return operator(name, args[0]!);
    }
  }
}

/** The same quantity in the coherent unit, and from it in another. */
export const toCoherent = (value: string, symbol: string): string => {
  const { factor, offset } = unit(symbol);
  const scaled = factor === 1 ? value : product(value, float(factor));
  return offset === 0 ? scaled : sum(scaled, float(offset));
};
export const fromCoherent = (value: string, symbol: string): string => {
  const { factor, offset } = unit(symbol);
  const shifted = offset === 0 ? value : minus(value, float(offset));
  return factor === 1 ? shifted : over(shifted, float(factor));
};
