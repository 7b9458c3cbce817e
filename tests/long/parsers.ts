import { readdirSync, readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import type { Library } from '../../calculators/exercises/answer.ts';
import type { Exercise, NumberExercise, StepsExercise } from '../../calculators/exercises/definition.ts';
import { markNumber, markSteps, type Marked } from '../../calculators/exercises/marking.ts';
import { ExerciseError, readExercise } from '../../calculators/exercises/reading.ts';
import { drawVariant } from '../../calculators/exercises/variants.ts';
import {
  ExpressionError,
  parseEquation,
  printEquation,
  symbolsOf,
} from '../../calculators/core/expression.ts';
import { compile } from '../../calculators/core/program.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import { isolate } from '../../calculators/core/isolate.ts';
import type { Model } from '../../calculators/core/model.ts';
import { readQuantity, unitChoices } from '../../calculators/core/quantity.ts';
import type { Random } from '../../calculators/core/random.ts';
import { unit, unitSymbols } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { readFragment, writeFragment } from '../../calculators/models/pour-plan/fragment.ts';
import { readPlanFile, writePlanFile } from '../../calculators/models/pour-plan/plan-file.ts';
import { backUp, readBackup, restore, type Keeper } from '../../src/islands/device.ts';
import { entryFromLink, fromFragment, homeUnit, readEntry, toFragment } from '../../src/islands/entries.ts';
import { formFrom, textsOf, unreadable } from '../../src/islands/form-entries.ts';
import { shelfFrom } from '../../src/islands/plan/store.ts';
import { readersOfFiles } from './files.ts';
import type { Reader } from './reader.ts';
import { readersOfWhatIsSent } from './sent.ts';
import { chance, injured, injuredData, noise, oneOf } from './draw.ts';

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

// Quantities

const numbers = [
  '150',
  '0.4',
  '.5',
  '1,5',
  '1 250',
  '1,234.5',
  '1½',
  '3/4',
  '1 3/4',
  '2e-3',
  '4×10⁻³',
  '-20',
  '−7',
  '0',
  '1e308',
];
const spreads = ['', '', '', ' ± 2 %', ' ± 0.5', ' +/- 3 mm', '±10%', ' ± -1', ' ± 1 ± 2'];
const names = unitSymbols.flatMap((symbol) => [symbol, unit(symbol).name]);

function quantityText(random: Random): string {
  const text = `${oneOf(random, numbers)}${oneOf(random, ['', ' ', '  '])}${oneOf(random, names)}${oneOf(random, spreads)}`;
  const roll = random.uniform();
  return roll < 0.3 ? text : roll < 0.92 ? injured(random, text) : noise(random);
}

/** The field is carried before the text, so that one text is one input. */
const fields = unitSymbols.map((symbol) => ({ unit: symbol, show: oneLike(symbol) }));

function oneLike(symbol: (typeof unitSymbols)[number]) {
  const like = unitChoices(symbol).filter(({ kind }) => kind === unit(symbol).kind);
  return like[like.length - 1]?.symbol ?? symbol;
}

const quantities: Reader = {
  name: 'a quantity',
  make: (random) => `${random.uniformInt(fields.length)}|${quantityText(random)}`,
  wrong: (input) => {
    const at = input.indexOf('|');
    const field = fields[Number(input.slice(0, at))];
    if (!field) return undefined;
    const read = readQuantity(input.slice(at + 1), field);
    if (!read.ok) return /[.:]$/.test(read.message) ? undefined : `says "${read.message}"`;
    const { value, spread, figures, written, unit: symbol } = read;
    if (!Number.isFinite(value)) return `gives ${value}`;
    if (spread !== undefined && !(spread >= 0 && spread < Infinity)) return `gives a spread of ${spread}`;
    if (!(figures >= 1)) return `counts ${figures} figures`;
    const again = readQuantity(`${written} ${symbol === '1' ? '' : symbol}`, {
      unit: field.unit,
      show: symbol,
    });
    if (!again.ok) return `cannot read back ${written} ${symbol}: ${again.message}`;
    return Math.abs(again.value - value) <= 1e-12 * Math.abs(value)
      ? undefined
      : `reads back as ${again.value}`;
  },
};

// Expressions

const atoms = ['a', 'b', 'rho_l', 'T1', 'pi', '2', '0.5', '1e3', '0', '7'];
const calls = [
  'sqrt',
  'exp',
  'ln',
  'log10',
  'sin',
  'cos',
  'tan',
  'abs',
  'erf',
  'erfcx',
  'min',
  'max',
  'constructor',
];

function expressionText(random: Random, depth = 5): string {
  const inner = (): string => expressionText(random, depth - 1);
  if (depth === 0 || chance(random, 0.25)) return oneOf(random, atoms);
  const roll = random.uniformInt(5);
  if (roll === 0) return `(${inner()})`;
  if (roll === 1) return `-${inner()}`;
  if (roll === 2) return `${oneOf(random, calls)}(${inner()}${chance(random, 0.3) ? `, ${inner()}` : ''})`;
  return `${inner()} ${oneOf(random, ['+', '-', '*', '/', '^'])} ${inner()}`;
}

const points = [
  { a: 1.7, b: 0.3, rho_l: 2.1, T1: 0.9 },
  { a: 0.2, b: 5.5, rho_l: 1, T1: 12 },
];
const close = (a: number, b: number): boolean =>
  (!Number.isFinite(a) && !Number.isFinite(b)) ||
  Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b), 1e-9);

const expressions: Reader = {
  name: 'an equation',
  make: (random) => {
    const text = `${oneOf(random, atoms)} = ${expressionText(random)}`;
    const roll = random.uniform();
    if (roll < 0.001) return `a = ${'('.repeat(random.uniformInt(60_000))}b`;
    return roll < 0.4 ? text : roll < 0.92 ? injured(random, text) : noise(random);
  },
  wrong: (text) => {
    let equation;
    try {
      equation = parseEquation(text);
    } catch (error) {
      return error instanceof ExpressionError ? undefined : `throws ${String(error)}`;
    }
    const printed = printEquation(equation);
    const back = parseEquation(printed);
    if (printEquation(back) !== printed) return `prints as "${printed}", then as "${printEquation(back)}"`;
    const [value, again] = [compile(equation.right), compile(back.right)];
    for (const point of points) {
      const [first, second] = [value(point), again(point)];
      // Order of rounding may decide between a huge number and none; a value both have must agree.
      if (
        Number.isFinite(first) &&
        Math.abs(first) < 1e12 &&
        Number.isFinite(second) &&
        !close(first, second) &&
        !touchy(text)
      )
        return `is ${first}, and ${second} once printed and read back`;
    }
    for (const symbol of symbolsOf(equation.left, equation.right)) {
      const isolated = isolate(equation, symbol);
      if (isolated && printEquation(parseEquation(printEquation(isolated))) !== printEquation(isolated))
        return `rearranged for ${symbol} does not read back`;
    }
    return undefined;
  },
};

/** Where brackets that change only the rounding are left out, a difference or a steep function may show it. */
const touchy = (text: string): boolean => /sin|cos|tan|exp|erfcx|\^|-/.test(text);

// Links

const cards = Object.values(formulas) as readonly Formula[];

const calculatorLinks: Reader = {
  name: 'a link to a calculator',
  make: (random) => {
    const formula = oneOf(random, cards);
    const parts = Object.keys(formula.symbols)
      .filter(() => chance(random, 0.3))
      .map(
        (symbol) => `${symbol}=${encodeURIComponent(quantityText(random).replace(/[\ud800-\udfff]/g, ''))}`,
      );
    const text = `#${formula.id}:find=${oneOf(random, Object.keys(formula.symbols))}&${parts.join('&')}`;
    return chance(random, 0.3) ? text : injured(random, text);
  },
  wrong: (text) => {
    const id = /^#?([a-z-]+\/[a-z-]+):/.exec(text)?.[1] ?? '';
    const formula = (formulas as Record<string, Formula>)[id];
    if (!formula)
      return fromFragment(text, 'filling/velocity') === undefined ? undefined : 'is taken for another';
    const found = fromFragment(text, id);
    if (!found) return undefined;
    const entries = Object.fromEntries(
      Object.entries(formula.symbols).flatMap(([symbol, spec]) => {
        const written = Object.hasOwn(found, symbol) ? found[symbol] : undefined;
        return written === undefined ? [] : [[symbol, entryFromLink(written, spec, homeUnit(spec))]];
      }),
    );
    for (const [symbol, entry] of Object.entries(entries)) {
      const read = readEntry(entry, formula.symbols[symbol]!);
      if (read.ok && !Number.isFinite(read.value)) return `${symbol} is ${read.value}`;
    }
    const [find = ''] = Object.keys(formula.symbols);
    const again = fromFragment(`#${toFragment(id, find, entries, formula.symbols)}`, id) ?? {};
    for (const [symbol, entry] of Object.entries(entries)) {
      const spec = formula.symbols[symbol]!;
      const [before, after] = [entry, entryFromLink(again[symbol] ?? '', spec, homeUnit(spec))].map((each) =>
        readEntry(each, spec),
      );
      if (symbol === find || !before?.ok || !after) continue;
      if (!after.ok || Math.abs(after.value - before.value) > 1e-9 * Math.abs(before.value))
        return `${symbol} is written as ${again[symbol] ?? 'nothing'}, which is another`;
    }
    return undefined;
  },
};

function planFragment(random: Random): string {
  const parts = Object.entries(pourPlan.inputs).flatMap(([name, input]) => {
    if (chance(random, 0.95)) return [];
    if (input.kind === 'quantity')
      return [`${name}=${encodeURIComponent(quantityText(random).replace(/[\ud800-\udfff]/g, ''))}`];
    if (input.kind === 'choice') return [`${name}=${oneOf(random, [...Object.keys(input.options), 'none'])}`];
    if (input.kind === 'flag') return [`${name}=${oneOf(random, ['yes', 'no', 'maybe'])}`];
    if (input.kind === 'list')
      return [
        `${name}=${Array.from({ length: random.uniformInt(5) }, () =>
          Object.keys(input.item)
            .map(() => oneOf(random, ['', '2+mm', 'web', 'plate', '~']))
            .join('~'),
        ).join(';')}`,
      ];
    return [`${name}=${oneOf(random, ['bronze', 'sand', 'no+such'])}`];
  });
  const text = parts.join('&');
  return chance(random, 0.3) ? text : injured(random, text);
}

const books = resolvedMaterials(materials);

/** What was read must be whole: it is written and read again to the same, and the plan takes all of it. */
function planTaken(inputs: ReturnType<typeof readFragment>['inputs']): string | undefined {
  const back = readFragment(pourPlan, writeFragment(pourPlan, inputs));
  const emptied = Object.fromEntries(Object.entries(back.inputs).filter(([, value]) => value !== ''));
  const kept = Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== ''));
  if (!same(sorted(emptied), sorted(kept)) && wellFormed(inputs))
    return `is written and read again as ${JSON.stringify(back)}`;
  const file = readPlanFile(writePlanFile({ name: 'n', inputs }), pourPlan);
  if (file.problems.length > 0 || !same(file.inputs, inputs))
    return `does not survive its file: ${file.problems.join(' ')}`;
  const materialsGiven = Object.entries(pourPlan.inputs)
    .filter(([, input]) => input.kind === 'material')
    .map(([name]) => name);
  const rest = Object.fromEntries(Object.entries(inputs).filter(([name]) => !materialsGiven.includes(name)));
  const { problems } = completeInputs(pourPlan, rest, books);
  return problems.length === 0 ? undefined : `is not taken by the plan: ${problems.join(' ')}`;
}

/** Half of a surrogate pair cannot be put into an address; empty rows and cells are left out of one. */
const wellFormed = (inputs: object): boolean => {
  const text = JSON.stringify(inputs);
  return !/\\ud[89a-f]/i.test(text) && !/\{\}|""|\[\]/.test(text);
};

const sorted = (value: Readonly<Record<string, unknown>>): unknown =>
  Object.entries(value)
    .map(([name, entry]) => [
      name,
      Array.isArray(entry) ? (entry as object[]).map((row) => Object.entries(row).sort()) : entry,
    ])
    .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));

const planLinks: Reader = {
  name: 'a link to a plan',
  make: planFragment,
  wrong: (text) => {
    const { inputs, problems } = readFragment(pourPlan, text);
    if (!problems.every((problem) => problem.length > 10)) return 'a problem without words';
    return planTaken(inputs);
  },
};

const planFiles: Reader = {
  name: 'a plan file',
  make: (random) => {
    const { inputs } = readFragment(pourPlan, planFragment(random));
    const data: unknown = { format: 'warm-mould-plan', version: 1, name: 'Lamp shield', inputs };
    const text = JSON.stringify(chance(random, 0.6) ? injuredData(random, data) : data);
    return chance(random, 0.6) ? text : injured(random, text);
  },
  wrong: (text) => {
    const { inputs, problems, name } = readPlanFile(text, pourPlan);
    if (typeof name !== 'string' || name.trim() === '') return 'has no name';
    if (!problems.every((problem) => problem.length > 10)) return 'a problem without words';
    return planTaken(inputs);
  },
};

const shelves: Reader = {
  name: 'the plans kept on the device',
  make: (random) => {
    const { inputs } = readFragment(pourPlan, planFragment(random));
    const data = {
      plans: [
        { name: 'One', texts: inputs },
        { name: 'Two', texts: {} },
      ],
      open: random.uniformInt(3),
    };
    const text = JSON.stringify(injuredData(random, data));
    return chance(random, 0.7) ? text : injured(random, text);
  },
  wrong: (text) => {
    const { shelf } = shelfFrom(text, { name: 'First', texts: {} });
    const open = shelf.plans[shelf.open];
    if (!open) return `opens plan ${shelf.open} of ${shelf.plans.length}`;
    // The inputs that are kept, and the materials whose numbers they follow.
    const inputs = Object.fromEntries(
      Object.entries(pourPlan.inputs).filter(([name, { kind }]) => kind === 'material' || name in open.texts),
    );
    const form = formFrom(inputs, open.texts);
    unreadable(inputs, form, books);
    const texts = textsOf(inputs, form, books);
    completeInputs({ id: 'pour-plan', inputs }, texts, books);
    return same(textsOf(inputs, formFrom(inputs, texts), books), texts)
      ? undefined
      : `is kept as ${JSON.stringify(texts)} and then otherwise`;
  },
};

// Backups

function keeperOf(kept: Record<string, string>): Keeper {
  const map = new Map(Object.entries(kept));
  return {
    get length() {
      return map.size;
    },
    key: (at) => [...map.keys()][at] ?? null,
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, value) => void map.set(key, value),
    removeItem: (key) => void map.delete(key),
  };
}

const backups: Reader = {
  name: 'a backup',
  make: (random) => {
    const kept = Object.fromEntries(
      Array.from({ length: random.uniformInt(4) }, () => [`warm-mould:${noise(random, 4)}`, noise(random)]),
    );
    const data: unknown = { kind: 'warm-mould-backup', version: 1, saved: '2026-03-03', kept };
    const text = JSON.stringify(chance(random, 0.6) ? injuredData(random, data) : data);
    return chance(random, 0.6) ? text : injured(random, text);
  },
  wrong: (text) => {
    const read = readBackup(text);
    if (!read.ok) return /\.$/.test(read.reason) ? undefined : `says "${read.reason}"`;
    const keeper = keeperOf({ other: 'theirs' });
    if (restore(keeper, read.backup) !== undefined) return 'is refused by a device with room';
    if (keeper.getItem('other') !== 'theirs') return 'touches what is not ours';
    const back = backUp(keeper, read.backup.saved);
    const all = (kept: Readonly<Record<string, string>>) =>
      Object.entries(kept).sort(([a], [b]) => (a < b ? -1 : 1));
    return same(all(back.kept), all(read.backup.kept)) ? undefined : 'is restored to something else';
  },
};

// Exercises and answers

const folder = new URL('../../content/exercises/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => ({
    id: name.replace('.yaml', ''),
    data: load(readFileSync(new URL(name, folder), 'utf8')),
  }));

const exercises: Reader = {
  name: 'an exercise',
  make: (random) => JSON.stringify(injuredData(random, oneOf(random, files).data)),
  wrong: (text) => {
    let exercise: Exercise;
    try {
      exercise = readExercise('fuzzed', JSON.parse(text));
    } catch (error) {
      if (!(error instanceof ExerciseError)) return `throws ${String(error)}`;
      return error.problems.length > 0 && error.problems.every((problem) => problem.endsWith('.'))
        ? undefined
        : `says ${error.message}`;
    }
    return exercise.title.trim() === '' ? 'has no title' : undefined;
  },
};

const library: Library = {
  formula: (id) => (formulas as Record<string, Formula>)[id],
  model: (id) => (models as Record<string, Model>)[id],
  materials: books,
};

const computed = files.flatMap(({ id, data }): (NumberExercise | StepsExercise)[] => {
  const exercise = readExercise(id, data);
  // A model answers in milliseconds, a formula in microseconds: answers are read the same way for both.
  if (exercise.kind === 'number') return exercise.formula === undefined ? [] : [exercise];
  return exercise.kind === 'steps' && exercise.parts.every(({ formula }) => formula !== undefined)
    ? [exercise]
    : [];
});

function fairly({ verdict, marks, of, says, unit: unitVerdict }: Marked): string | undefined {
  if (!Number.isInteger(marks) || marks < 0 || marks > of) return `is given ${marks} of ${of}`;
  if (verdict !== 'right' && says.every((sentence) => sentence.length < 5)) return 'is marked without a word';
  if (verdict === 'unread' && marks > 0) return 'is given marks for what could not be read';
  return verdict === 'right' && unitVerdict === 'right' && marks !== of
    ? `is right for ${marks} of ${of}`
    : undefined;
}

const answers: Reader = {
  name: 'a learner’s answer',
  make: (random) => `${random.uniformInt(computed.length)}|${random.uniformInt(5)}|${quantityText(random)}`,
  wrong: (input) => {
    const [at = '', seed = '', ...rest] = input.split('|');
    const text = rest.join('|');
    const exercise = computed[Number(at)];
    if (!exercise) return undefined;
    const variant = drawVariant(exercise, seed);
    if (exercise.kind === 'number') return fairly(markNumber(exercise, variant, text, library));
    const given = Object.fromEntries(exercise.parts.map(({ id }) => [id, text]));
    return Object.values(markSteps(exercise, variant, given, library))
      .map(fairly)
      .find((wrong) => wrong !== undefined);
  },
};

export const readers: readonly Reader[] = [
  quantities,
  expressions,
  calculatorLinks,
  planLinks,
  planFiles,
  shelves,
  backups,
  exercises,
  answers,
  ...readersOfFiles,
  ...readersOfWhatIsSent,
];
