import { printExpression, type Expression } from './expression.ts';
import { dimensionText, sameDimension, type Dimension } from './units.ts';

const none: Dimension = [0, 0, 0, 0, 0];

/** Says which part of an equation has dimensions that do not fit. */
export class DimensionError extends Error {
  override name = 'DimensionError';
}

const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension =>
  a.map((exponent, i) => exponent + sign * b[i]!) as unknown as Dimension;

const times = (a: Dimension, factor: number): Dimension =>
  a.map((exponent) => exponent * factor) as unknown as Dimension;

/** The dimension of an expression; throws a `DimensionError` that quotes the part at fault. */
export function dimensionOf(e: Expression, symbols: Readonly<Record<string, Dimension>>): Dimension {
  switch (e.kind) {
    case 'number':
      return none;
    case 'name': {
      if (e.name === 'pi') return none;
      const found = symbols[e.name];
      if (!found) throw new DimensionError(`"${e.name}" is not a declared symbol`);
      return found;
    }
    case 'negate':
      return dimensionOf(e.operand, symbols);
    case 'call':
      return dimensionOfCall(e, symbols);
    case 'binary':
      return dimensionOfBinary(e, symbols);
  }
}

function dimensionOfCall(
  e: Extract<Expression, { kind: 'call' }>,
  symbols: Readonly<Record<string, Dimension>>,
): Dimension {
  const args = e.args.map((arg) => dimensionOf(arg, symbols));
  const [first = none] = args;
  if (e.fn === 'sqrt') return times(first, 0.5);
  if (e.fn === 'abs') return first;
  if (e.fn === 'min' || e.fn === 'max') {
    if (!args.every((arg) => sameDimension(arg, first))) {
      throw new DimensionError(`${printExpression(e)} compares things of different dimension`);
    }
    return first;
  }
  if (!sameDimension(first, none)) {
    throw new DimensionError(
      `${e.fn} needs a bare number, but ${printExpression(e)} gives it ${dimensionText(first)}`,
    );
  }
  return none;
}

function dimensionOfBinary(
  e: Extract<Expression, { kind: 'binary' }>,
  symbols: Readonly<Record<string, Dimension>>,
): Dimension {
  const left = dimensionOf(e.left, symbols);
  if (e.op === '^') {
    const exponent = constantOf(e.right);
    if (exponent !== undefined) return times(left, exponent);
    const right = dimensionOf(e.right, symbols);
    if (!sameDimension(left, none) || !sameDimension(right, none)) {
      throw new DimensionError(
        `${printExpression(e)} raises ${dimensionText(left)} to a power that is not a fixed number`,
      );
    }
    return none;
  }
  const right = dimensionOf(e.right, symbols);
  if (e.op === '*') return combine(left, right, 1);
  if (e.op === '/') return combine(left, right, -1);
  if (!sameDimension(left, right)) {
    throw new DimensionError(`${printExpression(e)} adds ${dimensionText(left)} to ${dimensionText(right)}`);
  }
  return left;
}

/** The value of an exponent built of numbers alone: `2`, `-1`, `1/4`. */
function constantOf(e: Expression): number | undefined {
  if (e.kind === 'number') return e.value;
  if (e.kind === 'negate') {
    const inner = constantOf(e.operand);
    return inner === undefined ? undefined : -inner;
  }
  if (e.kind !== 'binary') return undefined;
  const left = constantOf(e.left);
  const right = constantOf(e.right);
  if (left === undefined || right === undefined) return undefined;
  return e.op === '/' ? left / right : e.op === '*' ? left * right : undefined;
}
