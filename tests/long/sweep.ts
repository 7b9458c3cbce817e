import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { parseEquation } from '../../calculators/core/expression.ts';
import type { Input, Model, QuantityInput, Row, Scalar, Values } from '../../calculators/core/model.ts';
import { createRandom, type Random } from '../../calculators/core/random.ts';
import { residual, solve } from '../../calculators/core/solve.ts';
import { toSI, unit } from '../../calculators/core/units.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { chance, oneOf } from './draw.ts';
import type { Fact } from './monotone.ts';

const books = resolvedMaterials(materials);

/** A number inside a range, at its ends now and then; logarithmic where the range is wide. */
function within([low, high]: readonly [number, number], random: Random): number {
  const roll = random.uniform();
  if (roll < 0.05) return low;
  if (roll > 0.95) return high;
  const part = random.uniform();
  return low > 0 && high / low > 20 ? low * (high / low) ** part : low + (high - low) * part;
}

/** A number in, at the end of, or well outside a range: nobody keeps a reader from typing it. */
function around(range: readonly [number, number], random: Random): number {
  if (chance(random, 0.8)) return within(range, random);
  const [low, high] = range;
  const roll = random.uniformInt(6);
  if (roll === 0) return 0;
  if (roll === 1) return -within(range, random);
  if (roll === 2) return high + 3 * (high - low) * random.uniform();
  if (roll === 3) return low - 3 * (high - low) * random.uniform();
  return oneOf(random, [1e-12, 1e12, high * 1000, -1]);
}

type Place = (range: readonly [number, number], random: Random) => number;

const specsOf = (formula: Formula): [string, SymbolSpec][] =>
  Object.entries(formula.symbols).filter(([, { constant }]) => constant === undefined);

/** Cold below nothing cannot be typed: the field refuses it. */
const typed = (value: number, symbol: SymbolSpec['unit']): number =>
  unit(symbol).kind === 'temperature' ? Math.max(0, toSI(value, symbol)) : toSI(value, symbol);

const pointOf = (formula: Formula, place: Place, random: Random): Record<string, number> =>
  Object.fromEntries(
    specsOf(formula).map(([name, spec]) => [name, typed(place(spec.range ?? [0, 1], random), spec.unit)]),
  );

export function soughtOf(formula: Formula): string {
  const { left } = parseEquation(formula.equation);
  return left.kind === 'name' ? left.name : Object.keys(formula.symbols)[0]!;
}

export interface Swept {
  readonly answered: number;
  /** The first thing found wrong. */
  readonly wrong?: string;
}

/**
 * Solves a formula at points in and around its ranges, mostly for what is usually sought: a finite answer that
 * satisfies the equation, or a refusal in words. Nothing throws.
 */
export function sweepFormula(formula: Formula, count: number): Swept {
  const random = createRandom(`sweep ${formula.id}`);
  const sought = soughtOf(formula);
  const names = specsOf(formula).map(([name]) => name);
  let answered = 0;
  for (let i = 0; i < count; i += 1) {
    const point = pointOf(formula, around, random);
    // Another symbol may need a search of hundreds of trials, so it is sought less often.
    const find = chance(random, 0.95) ? sought : oneOf(random, names);
    const at = (): string => `${find} at ${JSON.stringify(point)}`;
    try {
      const solved = solve(formula, point, find);
      if (!solved.ok) {
        if (!/\p{L}{3}/u.test(solved.reason)) return { answered, wrong: `no reason for ${at()}` };
        continue;
      }
      answered += 1;
      if (!Number.isFinite(solved.value)) return { answered, wrong: `${solved.value} for ${at()}` };
      // Far outside the ranges a sum may cancel to nothing but its rounding; there it need only be a number.
      const inside = solved.warnings.length === 0;
      const off = (part: number): number =>
        residual(formula, { ...point, [find]: solved.value * (1 + part) });
      const lies = Math.abs(off(0)) <= 1e-6 || off(1e-10) * off(-1e-10) <= 0;
      if (inside && !lies) return { answered, wrong: `${solved.value} leaves ${off(0)} for ${at()}` };
    } catch (error) {
      return { answered, wrong: `throws ${String(error)} for ${at()}` };
    }
  }
  return { answered };
}

/** Pairs of points inside the ranges that differ in one symbol: the answer follows the sense of the fact. */
export function keepsTo(plain: Formula, [symbol, sense, why, when]: Fact, count: number): Swept {
  const formula =
    when === undefined ? plain : { ...plain, where: [...(plain.where ?? []), { test: when, why }] };
  const random = createRandom(`monotone ${formula.id} ${symbol}`);
  const spec = formula.symbols[symbol];
  if (!spec?.range) return { answered: 0, wrong: `${formula.id} has no ${symbol} with a range` };
  const sought = soughtOf(formula);
  let answered = 0;
  for (let i = 0; i < count; i += 1) {
    const point = pointOf(formula, within, random);
    const [less, more] = [within(spec.range, random), within(spec.range, random)]
      .map((value) => toSI(value, spec.unit))
      .sort((a, b) => a - b) as [number, number];
    const low = solve(formula, { ...point, [symbol]: less }, sought);
    const high = solve(formula, { ...point, [symbol]: more }, sought);
    if (!low.ok || !high.ok || low.roots.length > 1 || high.roots.length > 1) continue;
    answered += 1;
    const rise = sense === '+' ? high.value - low.value : low.value - high.value;
    if (rise < -1e-9 * Math.max(Math.abs(low.value), Math.abs(high.value)))
      return {
        answered,
        wrong: `${sought} goes from ${low.value} to ${high.value} as ${symbol} goes from ${less} to ${more} at ${JSON.stringify(point)}`,
      };
  }
  return { answered };
}

function scalar(
  input: Exclude<Input, { kind: 'list' }>,
  place: Place,
  random: Random,
  start: Scalar,
): Scalar {
  if (input.kind === 'quantity') return typed(place(input.range ?? [0, 1], random), input.unit);
  if (input.kind === 'flag') return chance(random, 0.5);
  return input.kind === 'choice' ? oneOf(random, Object.keys(input.options)) : start;
}

/** Whether so many seconds of the processor are over: a clock would count what else the machine does. */
function stopAfter(seconds: number): () => boolean {
  const from = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(from);
    return user + system > 1e6 * seconds;
  };
}

const starts = new Map<string, Values>();

function modelPoint(model: Model, place: Place, random: Random): Values {
  const start = starts.get(model.id) ?? completeInputs(model, {}, books).values;
  starts.set(model.id, start);
  return Object.fromEntries(
    Object.entries(model.inputs).map(([name, input]) => {
      // Most inputs stay at their start, so that an odd one is not hidden behind a refusal of another.
      if (chance(random, 0.6)) return [name, start[name]];
      if (input.kind !== 'list') return [name, scalar(input, place, random, start[name] as Scalar)];
      const rows = (start[name] as readonly Row[]).map((row) =>
        Object.fromEntries(
          Object.entries(input.item).map(([field, spec]) => [
            field,
            spec.kind === 'quantity' && row[field] !== undefined
              ? typed(place(spec.range ?? [0, 1], random), spec.unit)
              : row[field],
          ]),
        ),
      );
      return [name, chance(random, 0.1) ? [] : rows];
    }),
  );
}

type Held = (random: Random) => Values;

/** Inputs with which a sum that may take seconds takes a moment, all others being free. */
export const quick: Readonly<Record<string, Held>> = {
  'freezing/transient': (random) => ({
    geometry: oneOf(random, ['plate', 'cylinder', 'sphere']),
    cells: 2 + random.uniformInt(4),
    most: 500,
  }),
};

/** Runs a model at points in and around its ranges, for so many points or seconds, whichever ends first. */
export function sweepModel(
  model: Model,
  count: number,
  seconds = Infinity,
  held: Held = () => ({}),
): Swept & { readonly points: number } {
  const random = createRandom(`sweep ${model.id}`);
  const stop = stopAfter(seconds);
  let answered = 0;
  let points = 0;
  for (; points < count && !stop(); points += 1) {
    const point = { ...modelPoint(model, around, random), ...held(random) };
    const at = (): string => `at ${JSON.stringify(point)}`;
    try {
      const { values, steps, checks, notes } = model.run(point);
      const numbers = [...Object.entries(values), ...checks.map(({ id, margin }) => [id, margin] as const)];
      const bad = numbers.find(([, value]) => !Number.isFinite(value));
      if (bad) return { points, answered, wrong: `${bad[0]} is ${bad[1]} ${at()}` };
      const step = steps.find(({ value }) => value !== undefined && !Number.isFinite(value));
      if (step) return { points, answered, wrong: `the line ${step.id} is ${step.value} ${at()}` };
      if (checks.some(({ why }) => /NaN|undefined|Infinity/.test(why)))
        return { points, answered, wrong: `a sentence without its number ${at()}` };
      if (Object.keys(values).length > 0) answered += 1;
      else if (notes.join('').length < 10)
        return { points, answered, wrong: `nothing and no reason ${at()}` };
    } catch (error) {
      return { points, answered, wrong: `throws ${String(error)} ${at()}` };
    }
  }
  return { points, answered };
}

/** The share of itself that an answer may be off by its arithmetic, where that is more than a part in a million. */
const exactness: Readonly<Record<string, number>> = {
  // After a short climb the lag is nearly all of the climb, and its series (`warming/ramp.ts`) leaves out terms below
  // 1e-8 of the largest, some hundreds of them, and what follows the 33rd root: a part in 100,000 together.
  'investment/centre-lag': 2e-5,
};

export function modelKeepsTo(
  model: Model,
  { raise, answer, sense }: { readonly raise: string; readonly answer: string; readonly sense: '+' | '-' },
  count: number,
  seconds = Infinity,
): Swept {
  const exact = exactness[model.id] ?? 1e-6;
  const random = createRandom(`monotone ${model.id} ${raise} ${answer}`);
  const spec = model.inputs[raise] as QuantityInput | undefined;
  if (spec?.kind !== 'quantity' || !spec.range || !(answer in model.outputs))
    return { answered: 0, wrong: `${model.id} has no ${raise} or no ${answer}` };
  const stop = stopAfter(seconds);
  let answered = 0;
  for (let i = 0; i < count && !stop(); i += 1) {
    const point = modelPoint(model, within, random);
    const [less, more] = [within(spec.range, random), within(spec.range, random)]
      .map((value) => toSI(value, spec.unit))
      .sort((a, b) => a - b) as [number, number];
    const low = model.run({ ...point, [raise]: less }).values[answer];
    const high = model.run({ ...point, [raise]: more }).values[answer];
    if (low === undefined || high === undefined) continue;
    answered += 1;
    const rise = sense === '+' ? high - low : low - high;
    if (rise < -exact * Math.max(Math.abs(low), Math.abs(high)))
      return {
        answered,
        wrong: `${answer} goes from ${low} to ${high} as ${raise} goes from ${less} to ${more} at ${JSON.stringify(point)}`,
      };
  }
  return { answered };
}
