import { Decimal } from 'decimal.js';

Decimal.set({ precision: 50 });

/**
 * Reads arithmetic as a person writes it, `7520 × 9.80665 = 73 746 Pa; 15 000 ÷ 73 746 = 0.2034 m`, and works it
 * again to fifty digits. It knows nothing of any formula: only the numbers and signs on the page. A written
 * number stands for all that round to it, so every value is an interval.
 */
export interface Interval {
  readonly low: Decimal;
  readonly high: Decimal;
}

export interface Claim {
  readonly text: string;
  readonly worked: Interval;
  readonly written: Interval;
  /** The two have a number in common, leaving aside a power of ten: units change on the way. */
  readonly holds: boolean;
}

const exact = (value: Decimal): Interval => ({ low: value, high: value });
const over = (values: readonly Decimal[]): Interval => ({
  low: Decimal.min(...values),
  high: Decimal.max(...values),
});
const both = (a: Interval, b: Interval, f: (x: Decimal, y: Decimal) => Decimal): Interval =>
  over([f(a.low, b.low), f(a.low, b.high), f(a.high, b.low), f(a.high, b.high)]);
const each = (a: Interval, f: (x: Decimal) => Decimal): Interval => over([f(a.low), f(a.high)]);

/** Whole numbers up to here are taken as exact; a larger one may be rounded, to four figures at the least. */
const exactUpTo = 1000;

function intervalOf(text: string): Interval {
  const plain = text.replace(/[ ,]/g, '');
  const value = new Decimal(plain);
  const [, whole = '', decimals = '', power = '0'] = /^(\d*)\.?(\d*)(?:e([-+]?\d+))?$/i.exec(plain) ?? [];
  const isWhole = !plain.includes('.') && !plain.includes('e');
  if (isWhole && value.lte(exactUpTo)) return exact(value);
  const zeros = isWhole ? Math.min(/0*$/.exec(whole)![0].length, whole.length - 4) : 0;
  const half = new Decimal(10).pow(Number(power) - decimals.length + zeros).div(2);
  return { low: value.minus(half), high: value.plus(half) };
}

type Token = { readonly number: Interval } | { readonly sign: string };

const words: readonly (readonly [RegExp, string])[] = [
  [/e to it|e to that/gi, ' exp '],
  [/ten to it/gi, ' ten '],
  [/fourth root/gi, ' fourth '],
  [/cube root(?! of)/gi, ' cube '],
  [/\b(?:the )?cube root of/gi, '∛'],
  [/\b(?:the )?root of/gi, '√'],
  [/\b(?:its )?(?:square )?root\b/gi, ' root '],
  [/\bsquared\b/gi, ' squared '],
  [/\b(?:doubled|twice (?:it|that))/gi, ' doubled '],
  [/\bhalf of it/gi, ' halved '],
  [/\b(?:multiplied by|times)\b/gi, '×'],
  [/\bplus\b/gi, '+'],
  [/\b(?:less|minus)\b/gi, '−'],
  [/\b(?:divided by|over)\b/gi, '÷'],
  [/\b(?:is|gives|leaves|are|makes)\b/gi, '='],
];
const after = ['exp', 'ten', 'fourth', 'cube', 'root', 'squared', 'doubled', 'halved'];
const raised: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4, '⁵': 5 };

const token =
  /\s*(?:(\d{1,3}(?:[ ,]\d{3})+(?:\.\d+)?(?!\d)|\d+\.?\d*(?:e[-+]?\d+)?|\.\d+)|(π)|(sin|cos|tan|ln|exp|ten|fourth|cube|root|squared|doubled|halved)(?![a-z])|([-+−×·*÷/=()√∛²³⁴⁵°;^])|([^\s\d]))/uy;
/** A unit that follows a number: `J/m²`, `kg/m³`, `mm`, `%`, `°C`, `Δ°C`. */
const unitAfter =
  /\s*(?:°C|°F|%|(?:[µmkMcd]?(?:m|g|s|h|K|Pa|J|W|L|N|mol|min|bar|mm|in|ft)[²³]?)(?:[·/](?:[µmkMcd]?(?:m|g|s|h|K|Pa|J|W|mol|min|in)[²³]?))*)(?![A-Za-z0-9])/uy;

/** Runs of arithmetic: words that are no arithmetic part them. */
function runsOf(text: string): Token[][] {
  const plain = words.reduce((so, [pattern, sign]) => so.replace(pattern, sign), text);
  const runs: Token[][] = [[]];
  let at = 0;
  while (at < plain.length) {
    token.lastIndex = at;
    const match = token.exec(plain);
    if (!match) break;
    at = token.lastIndex;
    const [, digits, pi, word, sign] = match;
    const run = runs[runs.length - 1]!;
    if (digits !== undefined) {
      run.push({ number: intervalOf(digits) });
      unitAfter.lastIndex = at;
      const unit = unitAfter.exec(plain);
      // °, for the sine, is kept; a unit says nothing to arithmetic.
      if (unit && !/^\s*°$/.test(unit[0])) at = unitAfter.lastIndex;
    } else if (pi !== undefined) run.push({ number: exact(Decimal.acos(-1)) });
    else if (word !== undefined) run.push({ sign: word === 'exp' && plain[at] === '(' ? 'e^' : word });
    else if (sign !== undefined && sign !== ';') run.push({ sign });
    else if (run.length > 0) runs.push([]);
  }
  return runs.filter((run) => run.length > 0);
}

class Unread extends Error {}

/** One expression of a run; `before` is the number it goes on from when it begins with a sign. */
function workOut(run: readonly Token[], before: Interval | undefined): Interval {
  let at = 0;
  const signAt = (): string | undefined => {
    const here = run[at];
    return here && 'sign' in here ? here.sign : undefined;
  };
  const take = (...signs: readonly string[]): string | undefined => {
    const sign = signAt();
    if (sign === undefined || !signs.includes(sign)) return undefined;
    at += 1;
    return sign;
  };
  const sum = (first?: Interval): Interval => {
    let value = product(first);
    for (let sign = take('+', '−', '-'); sign; sign = take('+', '−', '-'))
      value = both(value, product(), (x, y) => (sign === '+' ? x.plus(y) : x.minus(y)));
    return value;
  };
  const product = (first?: Interval): Interval => {
    let value = first ?? signed();
    for (;;) {
      const sign = take('×', '·', '*', '÷', '/');
      const next = run[at];
      // 2√x and 4(a + b) are products without a sign.
      const silent = sign === undefined && next && 'sign' in next && ['√', '('].includes(next.sign);
      if (sign === undefined && !silent) return value;
      const other = signed();
      if ((sign === '÷' || sign === '/') && (other.low.isZero() || other.high.isZero()))
        throw new Unread('divides by nothing');
      value = both(value, other, (x, y) => (sign === '÷' || sign === '/' ? x.div(y) : x.times(y)));
    }
  };
  const signed = (): Interval => {
    if (take('−', '-')) return each(signed(), (x) => x.neg());
    return power();
  };
  const power = (): Interval => {
    let value = atom();
    for (let sign = take('²', '³', '⁴', '⁵', '^'); sign; sign = take('²', '³', '⁴', '⁵', '^')) {
      const exponent = sign === '^' ? signed() : exact(new Decimal(raised[sign]!));
      value = both(value, exponent, (x, y) => x.pow(y));
    }
    return value;
  };
  const atom = (): Interval => {
    const here = run[at];
    if (!here) throw new Unread('ends too soon');
    at += 1;
    if ('number' in here) return here.number;
    if (here.sign === '(') {
      const inner = sum();
      if (!take(')')) throw new Unread('a bracket is open');
      return inner;
    }
    if (here.sign === '√') return each(power(), (x) => x.sqrt());
    if (here.sign === '∛') return each(power(), (x) => x.cbrt());
    if (here.sign === 'ln') return each(power(), (x) => x.ln());
    if (here.sign === 'e^') return each(power(), (x) => x.exp());
    if (['sin', 'cos', 'tan'].includes(here.sign)) {
      const angle = power();
      const degrees = take('°') !== undefined;
      const part = degrees ? Decimal.acos(-1).div(180) : new Decimal(1);
      return each(angle, (x) => Decimal[here.sign as 'sin' | 'cos' | 'tan'](x.times(part)));
    }
    throw new Unread(`"${here.sign}" here`);
  };

  const first = signAt();
  let value: Interval;
  if (first !== undefined && after.includes(first)) {
    at += 1;
    if (!before) throw new Unread('nothing to go on from');
    const one = new Decimal(1);
    value = each(before, (x) =>
      first === 'exp'
        ? x.exp()
        : first === 'ten'
          ? new Decimal(10).pow(x)
          : first === 'fourth'
            ? x.pow(one.div(4))
            : first === 'cube'
              ? x.cbrt()
              : first === 'root'
                ? x.sqrt()
                : first === 'squared'
                  ? x.times(x)
                  : first === 'doubled'
                    ? x.times(2)
                    : x.div(2),
    );
  } else value = sum();
  if (at < run.length) throw new Unread('more than one expression');
  if (!value.low.isFinite() || !value.high.isFinite()) throw new Unread('no number');
  return value;
}

function split(run: readonly Token[]): Token[][] {
  const sides: Token[][] = [[]];
  for (const one of run) {
    if ('sign' in one && one.sign === '=') sides.push([]);
    // "root 0.50495", "squared 0.93359": the sign is the sum, the number after it the result.
    else if ('sign' in one && after.includes(one.sign)) sides.push([one], []);
    else sides[sides.length - 1]!.push(one);
  }
  return sides.filter((side) => side.length > 0);
}

/** Whether two intervals share a number once one is moved by a power of ten. */
export function meet(a: Interval, b: Interval): boolean {
  const sizes = [a.low.abs(), b.low.abs()];
  if (sizes.some((size) => size.isZero())) return a.low.lte(b.high) && b.low.lte(a.high);
  const shift = Math.round(Decimal.log10(sizes[0]!.div(sizes[1]!)).toNumber());
  return [shift - 1, shift, shift + 1].some((power) => {
    const moved = each(b, (x) => x.times(new Decimal(10).pow(power)));
    return a.low.lte(moved.high) && moved.low.lte(a.high);
  });
}

const ahead = ['+', '−', '-', '×', '·', '÷', '/'];
const doing: Readonly<Record<string, (x: Decimal, y: Decimal) => Decimal>> = {
  '+': (x, y) => x.plus(y),
  '−': (x, y) => x.minus(y),
  '-': (x, y) => x.minus(y),
  '×': (x, y) => x.times(y),
  '·': (x, y) => x.times(y),
  '÷': (x, y) => x.div(y),
  '/': (x, y) => x.div(y),
};

function tried(run: readonly Token[], before?: Interval): Interval | undefined {
  try {
    return workOut(run, before);
  } catch (error) {
    if (error instanceof Unread || (error instanceof Error && error.message.includes('Decimal')))
      return undefined;
    throw error;
  }
}

/** What the first side of a line can mean: alone, and as going on from the number before it. */
function meanings(side: readonly Token[], before: Interval | undefined): Interval[] {
  const [first] = side;
  const sign = first && 'sign' in first ? first.sign : '';
  const found = [tried(side, before)];
  if (before && ahead.includes(sign)) {
    const rest = side.slice(1);
    const alone = tried(rest);
    if (alone && !(sign === '÷' && alone.low.isZero())) found.push(both(before, alone, doing[sign]!));
    found.push(tried([{ number: before }, ...side]));
  }
  if (ahead.includes(sign)) found.push(tried(side.slice(1)));
  return found.filter((value) => value !== undefined);
}

const isBare = (side: readonly Token[]): boolean =>
  side.filter((one) => !('sign' in one && ['−', '-', '(', ')'].includes(one.sign))).length < 2;
const isAfter = (side: readonly Token[]): boolean =>
  side.length === 1 && 'sign' in side[0]! && after.includes(side[0].sign);

/** Every sum in the text with the result that is written beside it. */
export function claimsIn(text: string): Claim[] {
  const claims: Claim[] = [];
  let before: Interval | undefined;
  for (const run of runsOf(text)) {
    const sides = split(run);
    const line = run.map((one) => ('sign' in one ? one.sign : shown(one.number))).join(' ');
    const claim = (ways: readonly Interval[], written: Interval): void => {
      const way = ways.find((worked) => meet(worked, written)) ?? ways[0];
      if (way) claims.push({ text: line, worked: way, written, holds: meet(way, written) });
    };
    let ways: readonly Interval[] = [];
    // 'times 3 × 4 = 12 gives 60': the last result belongs to the sum that the line's first sign goes on with.
    let goesOn: Interval[] = [];
    sides.forEach((side, at) => {
      const values =
        at === 0 || isAfter(side) ? meanings(side, before) : [tried(side)].filter((x) => x !== undefined);
      const [value] = values;
      const sum = at > 0 && !isBare(sides[at - 1]!);
      if (at > 0 && value && !isAfter(side) && (sum || isAfter(sides[at - 1]!))) claim(ways, value);
      else if (at > 1 && value && goesOn.length > 0) claim(goesOn, value);
      const [sign] = sides[0]!;
      const alone =
        at === 1 && sign && 'sign' in sign && ahead.includes(sign.sign) && tried(sides[0]!.slice(1));
      if (alone && before && value && meet(alone, value)) goesOn = [both(before, value, doing[sign.sign]!)];
      ways = values;
      if (value && at > 0) before = value;
    });
    if (sides.length === 1 && ways[0]) before = ways[0];
  }
  return claims;
}

const shown = ({ low, high }: Interval): string => low.plus(high).div(2).toSignificantDigits(8).toString();
