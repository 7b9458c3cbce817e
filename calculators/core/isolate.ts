import {
  binary,
  call,
  countOf,
  number,
  type Equation,
  type Expression,
  type FunctionName,
} from './expression.ts';

const inverses: Partial<Record<FunctionName, (other: Expression) => Expression>> = {
  sqrt: (other) => binary('^', other, number(2)),
  exp: (other) => call('ln', other),
  ln: (other) => call('exp', other),
  log10: (other) => binary('^', number(10), other),
  sin: (other) => call('asin', other),
  cos: (other) => call('acos', other),
  tan: (other) => call('atan', other),
  asin: (other) => call('sin', other),
  acos: (other) => call('cos', other),
  atan: (other) => call('tan', other),
};

/**
 * The equation rearranged so that `symbol` stands alone on the left, or undefined when it is written more
 * than once or stands where there is no inverse. An even power gives its positive root: quantities of the
 * bench are positive, and the solver checks every answer in the equation as stated.
 */
export function isolate(equation: Equation, symbol: string): Equation | undefined {
  const onLeft = countOf(symbol, equation.left);
  if (onLeft + countOf(symbol, equation.right) !== 1) return undefined;
  let here = onLeft === 1 ? equation.left : equation.right;
  let other = onLeft === 1 ? equation.right : equation.left;
  while (here.kind !== 'name') {
    const step = unwrap(here, other, symbol);
    if (!step) return undefined;
    [here, other] = step;
  }
  return { left: here, right: other };
}

function unwrap(here: Expression, other: Expression, symbol: string): [Expression, Expression] | undefined {
  if (here.kind === 'negate') return [here.operand, negated(other)];
  if (here.kind === 'call') {
    const inverse = inverses[here.fn];
    const [argument] = here.args;
    return inverse && argument && here.args.length === 1 ? [argument, inverse(other)] : undefined;
  }
  if (here.kind !== 'binary') return undefined;
  const { op, left, right } = here;
  const inLeft = countOf(symbol, left) === 1;
  switch (op) {
    case '+':
      return inLeft ? [left, binary('-', other, right)] : [right, binary('-', other, left)];
    case '-':
      return inLeft ? [left, binary('+', other, right)] : [right, binary('-', left, other)];
    case '*':
      return inLeft ? [left, divided(other, right)] : [right, divided(other, left)];
    case '/':
      return inLeft ? [left, binary('*', other, right)] : [right, divided(left, other)];
    case '^':
      return inLeft ? [left, root(other, right)] : [right, binary('/', call('ln', other), call('ln', left))];
  }
}

function negated(e: Expression): Expression {
  if (e.kind === 'negate') return e.operand;
  if (e.kind === 'binary' && e.op === '-') return binary('-', e.right, e.left);
  return { kind: 'negate', operand: e };
}

/** a / (b / c) reads better as a c / b. */
function divided(top: Expression, bottom: Expression): Expression {
  if (bottom.kind === 'binary' && bottom.op === '/') {
    return binary('/', binary('*', top, bottom.right), bottom.left);
  }
  if (top.kind === 'binary' && top.op === '/') return binary('/', top.left, binary('*', top.right, bottom));
  return binary('/', top, bottom);
}

function root(e: Expression, exponent: Expression): Expression {
  if (exponent.kind === 'number') {
    if (exponent.value === 2) return call('sqrt', e);
    if (exponent.value === -1) return divided(number(1), e);
    return binary('^', e, binary('/', number(1), exponent));
  }
  return binary('^', e, divided(number(1), exponent));
}
