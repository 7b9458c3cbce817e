import { children, functions, symbolsOf, type Environment, type Expression } from './expression.ts';

/**
 * An expression as a list of instructions on one running value, the symbols in numbered places. A search asks
 * an equation dozens of times and a plan is sampled a thousand times, so this is kept free of objects.
 */
export interface Program {
  /** Pairs: what to do, and with which place, number or function. */
  readonly code: Int32Array;
  readonly numbers: Float64Array;
}

const [fromPlace, fromNumber, save, negate, unary, pairwise] = [0, 1, 2, 3, 4, 5] as const;
/** With the running value on the left: a place, a number; or on the right, the left one having been saved. */
const binaries = {
  '+': { place: 6, number: 7, saved: 8 },
  '-': { place: 9, number: 10, saved: 11 },
  '*': { place: 12, number: 13, saved: 14 },
  '/': { place: 15, number: 16, saved: 17 },
  '^': { place: 18, number: 19, saved: 20 },
} as const;

const names = Object.keys(functions);
const table = Object.values(functions) as readonly ((...values: number[]) => number)[];

/** Deep enough for the longest text the language reads. */
const stack = new Float64Array(4096);

type Place = (name: string) => number | undefined;

/** `place` numbers the symbols; a symbol without a place reads as NaN. */
export function programOf(e: Expression, place: Place): Program {
  const code: number[] = [];
  const numbers: number[] = [];

  /** Where a name or number is read from; nothing for what has to be worked first. */
  function leafOf(one: Expression): readonly ['place' | 'number', number] | undefined {
    const at = one.kind === 'name' && one.name !== 'pi' ? place(one.name) : undefined;
    if (at !== undefined) return ['place', at];
    if (one.kind !== 'number' && one.kind !== 'name') return undefined;
    numbers.push(one.kind === 'number' ? one.value : one.name === 'pi' ? Math.PI : Number.NaN);
    return ['number', numbers.length - 1];
  }

  function visit(one: Expression): void {
    const leaf = leafOf(one);
    if (leaf) {
      code.push(leaf[0] === 'place' ? fromPlace : fromNumber, leaf[1]);
      return;
    }
    const [first, ...rest] = children(one);
    visit(first!);
    if (one.kind === 'negate') code.push(negate, 0);
    else if (one.kind === 'call' && rest.length === 0) code.push(unary, names.indexOf(one.fn));
    for (const other of rest) {
      const direct = one.kind === 'binary' ? leafOf(other) : undefined;
      if (direct && one.kind === 'binary') {
        code.push(binaries[one.op][direct[0]], direct[1]);
        continue;
      }
      code.push(save, 0);
      visit(other);
      if (one.kind === 'binary') code.push(binaries[one.op].saved, 0);
      else if (one.kind === 'call') code.push(pairwise, names.indexOf(one.fn));
    }
  }

  visit(e);
  return { code: Int32Array.from(code), numbers: Float64Array.from(numbers) };
}

/** The value of the expression with the symbols in `places`. Plain numbers as cases make one jump of the choice. */
export function valueOf({ code, numbers }: Program, places: Float64Array): number {
  let top = 0;
  let value = 0;
  for (let i = 0; i < code.length; i += 2) {
    const at = code[i + 1]!;
    switch (code[i]) {
      case 0: // fromPlace
        value = places[at]!;
        break;
      case 1: // fromNumber
        value = numbers[at]!;
        break;
      case 2: // save
        stack[top++] = value;
        break;
      case 3: // negate
        value = -value;
        break;
      case 4: // unary
        value = table[at]!(value);
        break;
      case 5: // pairwise
        value = table[at]!(stack[--top]!, value);
        break;
      case 6: // + place
        value += places[at]!;
        break;
      case 7: // + number
        value += numbers[at]!;
        break;
      case 8: // + saved
        value = stack[--top]! + value;
        break;
      case 9: // - place
        value -= places[at]!;
        break;
      case 10: // - number
        value -= numbers[at]!;
        break;
      case 11: // - saved
        value = stack[--top]! - value;
        break;
      case 12: // * place
        value *= places[at]!;
        break;
      case 13: // * number
        value *= numbers[at]!;
        break;
      case 14: // * saved
        value = stack[--top]! * value;
        break;
      case 15: // / place
        value /= places[at]!;
        break;
      case 16: // / number
        value /= numbers[at]!;
        break;
      case 17: // / saved
        value = stack[--top]! / value;
        break;
      case 18: // ^ place
        value **= places[at]!;
        break;
      case 19: // ^ number
        value **= numbers[at]!;
        break;
      default: // ^ saved
        value = stack[--top]! ** value;
    }
  }
  return value;
}

/** A closure that evaluates the expression; built once, no code is ever evaluated from text. */
export function compile(e: Expression): (environment: Environment) => number {
  const symbols = symbolsOf(e);
  const program = programOf(e, (name) => {
    const at = symbols.indexOf(name);
    return at < 0 ? undefined : at;
  });
  const places = new Float64Array(symbols.length);
  return (environment) => {
    for (let i = 0; i < symbols.length; i += 1) places[i] = environment[symbols[i]!] ?? Number.NaN;
    return valueOf(program, places);
  };
}
