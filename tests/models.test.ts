import { describe, expect, it } from 'vitest';
import type { Input, Model, QuantityInput, Row, Scalar, Values } from '../calculators/core/model.ts';
import { quantityFigures } from '../calculators/core/quantity.ts';
import { createRandom } from '../calculators/core/random.ts';
import { sameDimension, toSI, unit, type Quantity } from '../calculators/core/units.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { materials } from '../calculators/materials/index.ts';
import { resolvedMaterials } from '../calculators/materials/resolve.ts';
import { models } from '../calculators/models/index.ts';
import { completeInputs } from '../calculators/models/inputs.ts';
import { sources } from '../calculators/sources.ts';

const resolved = resolvedMaterials(materials);
const all = Object.values(models);
type Random = ReturnType<typeof createRandom>;
type Single = Exclude<Input, { kind: 'list' }>;

const quantitiesOf = (inputs: Readonly<Record<string, Input>>): [string, QuantityInput][] =>
  Object.entries(inputs).flatMap(([name, input]) => {
    if (input.kind === 'quantity') return [[name, input] as [string, QuantityInput]];
    if (input.kind !== 'list') return [];
    return quantitiesOf(input.item).map(([field, spec]): [string, QuantityInput] => [
      `${name}.${field}`,
      spec,
    ]);
  });

/** A number of the range, at its ends now and then; logarithmic where the range is wide. */
function inside({ range, unit: symbol, usual = 1 }: QuantityInput, random: Random): number {
  const [low, high] = range ?? [usual, usual];
  const roll = random.uniform();
  const part = roll < 0.08 ? 0 : roll > 0.92 ? 1 : random.uniform();
  const value = low > 0 && high / low > 20 ? low * (high / low) ** part : low + (high - low) * part;
  return toSI(value, symbol);
}

function scalar(input: Single, random: Random, usual: Scalar): Scalar {
  if (input.kind === 'quantity') return inside(input, random);
  if (input.kind === 'flag') return random.uniform() < 0.5;
  if (input.kind === 'choice') {
    const options = Object.keys(input.options);
    return options[Math.floor(random.uniform() * options.length)];
  }
  return usual;
}

/** Every input somewhere in its range; lists keep their rows and get new numbers. */
function pointOf(model: Model, random: Random): Values {
  const start = completeInputs(model, {}, resolved).values;
  return Object.fromEntries(
    Object.entries(model.inputs).map(([name, input]) => {
      if (input.kind !== 'list') return [name, scalar(input, random, start[name] as Scalar)];
      const rows = (start[name] as readonly Row[]).map((row) =>
        Object.fromEntries(
          Object.entries(input.item).map(([field, spec]) => [
            field,
            spec.kind === 'quantity' && row[field] !== undefined ? inside(spec, random) : row[field],
          ]),
        ),
      );
      return [name, rows];
    }),
  );
}

describe.each(all.map((model) => [model.id, model] as const))('%s', (_id, model) => {
  it('describes every input and output, with a range, its reason and a start inside it', () => {
    expect(model.answers).toMatch(/[.?]$/);
    expect(model.assumes.length).toBeGreaterThan(0);
    for (const citation of [model.source, ...(model.alsoSee ?? [])]) {
      expect(sources[citation.key]).toBeDefined();
      expect(citation.at.length).toBeGreaterThan(2);
    }
    for (const [name, spec] of quantitiesOf(model.inputs)) {
      expect(spec.name.length, name).toBeGreaterThan(0);
      expect(spec.range, `${name} needs a range`).toBeDefined();
      expect(spec.why, `${name} needs the reason its range ends`).toBeTruthy();
      const [low, high] = spec.range!;
      expect(low, name).toBeLessThan(high);
      if (spec.usual !== undefined) {
        expect(spec.usual, name).toBeGreaterThanOrEqual(low);
        expect(spec.usual, name).toBeLessThanOrEqual(high);
      }
    }
    const shown = [...quantitiesOf(model.inputs), ...Object.entries(model.outputs)];
    for (const [name, spec] of shown) {
      const [written, bench] = [unit(spec.unit), unit(spec.show ?? spec.unit)];
      expect(sameDimension(written.dimension, bench.dimension), name).toBe(true);
      expect(written.kind, name).toBe(bench.kind);
    }
  });

  it('answers as it starts, with every number in its working', () => {
    const { values, problems } = completeInputs(model, {}, resolved);
    expect(problems).toEqual([]);
    const result = model.run(values);
    expect(Object.keys(result.values).length, result.notes.join(' ')).toBeGreaterThan(0);
    for (const name of Object.keys(result.values)) expect(Object.keys(model.outputs)).toContain(name);
    expect(result.steps.length).toBeGreaterThan(0);
    for (const step of result.steps) {
      if (step.formula !== undefined) expect(formulas[step.formula], step.formula).toBeDefined();
      if (step.value !== undefined) expect(Number.isFinite(step.value), step.id).toBe(true);
    }
    const ids = result.steps.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('gives the same for the same and keeps nothing', () => {
    const { values } = completeInputs(model, {}, resolved);
    const before = JSON.stringify(values);
    expect(model.run(values)).toEqual(model.run(values));
    expect(JSON.stringify(values)).toBe(before);
  });

  it.each(model.examples.map((example) => [example.title, example] as const))(
    'agrees with %s',
    (_title, example) => {
      expect(Object.keys(example.expect).length).toBeGreaterThan(0);
      const { values, problems } = completeInputs(model, example.given, resolved);
      expect(problems).toEqual([]);
      const result = model.run(values);
      for (const [find, text] of Object.entries(example.expect) as [string, Quantity][]) {
        const found = result.values[find];
        if (found === undefined) throw new Error(`${find}: ${result.notes.join(' ')}`);
        const { value, halfDigit } = quantityFigures(text);
        expect(Math.abs(found - value), `${find}: ${found} for ${value} in SI`).toBeLessThanOrEqual(
          halfDigit * (1 + 1e-9),
        );
      }
    },
  );

  it('is finite or refuses in words all over its ranges', () => {
    const random = createRandom(`models ${model.id}`);
    let answered = 0;
    for (let i = 0; i < 80; i += 1) {
      const point = pointOf(model, random);
      const result = model.run(point);
      const text = JSON.stringify(point);
      for (const [name, value] of Object.entries(result.values))
        expect(Number.isFinite(value), `${name} at ${text}`).toBe(true);
      for (const check of result.checks)
        expect(Number.isFinite(check.margin), `${check.id} at ${text}`).toBe(true);
      if (Object.keys(result.values).length > 0) answered += 1;
      else expect(result.notes.join('').length, text).toBeGreaterThan(10);
    }
    expect(answered).toBeGreaterThan(0);
  });

  it('says what is missing instead of throwing when everything is left out', () => {
    expect(() => model.run({})).not.toThrow();
  });

  it.each(
    (model.monotone ?? []).map((rule) => [`${rule.input} ${rule.sense} ${rule.output}`, rule] as const),
  )('keeps to %s', (_name, { input, output, sense }) => {
    const spec = model.inputs[input];
    if (spec?.kind !== 'quantity' || !spec.range) throw new Error(`${input} is no quantity with a range`);
    expect(model.outputs[output], output).toBeDefined();
    const random = createRandom(`monotone ${model.id} ${input} ${output}`);
    let compared = 0;
    for (let i = 0; i < 60; i += 1) {
      const point = pointOf(model, random);
      const [less, more] = [inside(spec, random), inside(spec, random)].sort((a, b) => a - b) as [
        number,
        number,
      ];
      const low = model.run({ ...point, [input]: less }).values[output];
      const high = model.run({ ...point, [input]: more }).values[output];
      if (low === undefined || high === undefined) continue;
      compared += 1;
      const rise = sense === '+' ? high - low : low - high;
      expect(rise, JSON.stringify({ ...point, [input]: [less, more] })).toBeGreaterThanOrEqual(
        -1e-6 * Math.max(Math.abs(low), Math.abs(high)),
      );
    }
    expect(compared).toBeGreaterThan(0);
  });
});
