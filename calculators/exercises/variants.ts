import { createRandom, type Random } from '../core/random.ts';
import type { Exercise, Variant, Variation } from './definition.ts';

/** Every value a variation can take, as text. A grid is counted in whole steps, so no rounding creeps in. */
export function valuesOf(variation: Variation): readonly string[] {
  if (Array.isArray(variation)) return variation as readonly string[];
  const known = grids.get(variation) ?? gridOf(variation);
  grids.set(variation, known);
  return known;
}

const grids = new WeakMap<Variation, readonly string[]>();

function gridOf(variation: Variation): string[] {
  const { from, to, step } = variation as Exclude<Variation, readonly string[]>;
  const [first, unit] = numberAndUnit(from);
  const [last, lastUnit] = numberAndUnit(to);
  const [size, sizeUnit] = numberAndUnit(step);
  if (unit !== lastUnit || unit !== sizeUnit) {
    throw new Error(`a step grid needs one unit, but has ${from}, ${to} and ${step}`);
  }
  const count = (last - first) / size;
  if (!(count >= 1) || Math.abs(count - Math.round(count)) > 1e-6) {
    throw new Error(`from ${from} to ${to} is not a whole number of steps of ${step}`);
  }
  const decimals = Math.max(...[from, step].map(decimalsOf));
  return Array.from({ length: Math.round(count) + 1 }, (_, i) =>
    `${(first + i * size).toFixed(decimals)} ${unit}`.trim(),
  );
}

function numberAndUnit(text: string): [number, string] {
  const match = /^(-?\d+(?:\.\d+)?)\s*(.*)$/.exec(text);
  if (!match) throw new Error(`"${text}" is not a number with a unit`);
  return [Number(match[1]), match[2]!];
}

const decimalsOf = (text: string): number => /^-?\d+\.(\d+)/.exec(text)?.[1]?.length ?? 0;

/**
 * The numbers one learner gets: always the same for the same seed, learner and exercise, on every machine and
 * in every version, because marks are worked out again from them.
 */
export function drawVariant(exercise: Exercise, seed: string, learner = ''): Variant {
  const random = createRandom(`${seed}/${learner}/${exercise.id}`);
  const given: Record<string, string> = 'given' in exercise ? { ...exercise.given } : {};
  if ('vary' in exercise) {
    for (const name of Object.keys(exercise.vary).sort()) {
      const values = valuesOf(exercise.vary[name]!);
      given[name] = values[random.uniformInt(values.length)]!;
    }
  }
  return { seed, given, order: orderOf(exercise, random) };
}

function orderOf(exercise: Exercise, random: Random): number[] {
  const count =
    'options' in exercise ? exercise.options.length : 'items' in exercise ? exercise.items.length : 0;
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i -= 1) {
    const j = random.uniformInt(i + 1);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  // Items already in the right order would leave nothing to do.
  if (exercise.kind === 'order' && order.every((item, i) => item === i)) order.push(order.shift()!);
  return order;
}
