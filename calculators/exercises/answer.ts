import type { Formula, SymbolSpec } from '../core/formula.ts';
import type { Input, Model, Output, Values } from '../core/model.ts';
import { readQuantity, type Reading } from '../core/quantity.ts';
import { solve } from '../core/solve.ts';
import { completeInputs, type ResolvedMaterials } from '../models/inputs.ts';
import { findUnit, type UnitSymbol } from '../core/units.ts';
import type { DesignStart, Givens, NumberExercise, Part, StepsExercise, Variant } from './definition.ts';
import { figuresOfAnswer, type Written as Typed } from './figures.ts';

/** Where an exercise finds what computes its answer. */
export interface Library {
  readonly formula: (id: string) => Formula | undefined;
  readonly model: (id: string) => Model | undefined;
  /** What a model's numbers come from until they are given. */
  readonly materials?: ResolvedMaterials;
}

/** One number asked for, with everything needed to compute it. */
export interface Question {
  readonly calculation: { readonly formula: Formula } | { readonly model: Model };
  readonly find: string;
  /** What is sought: its name, sign and units. */
  readonly sought: Pick<SymbolSpec, 'name' | 'sign' | 'unit' | 'show'>;
  readonly answerUnit: UnitSymbol;
  /** Givens as the learner sees them. */
  readonly given: Givens;
  /** Givens in SI, words as words; of a model every input, those not given at their start. */
  readonly values: Values;
  /** How each quantity is written. */
  readonly written: Readonly<Record<string, Written>>;
  /** Significant figures the givens allow, never fewer than two nor more than four. */
  readonly figures: number;
  readonly tolerance: string;
}

export type Written = Extract<Reading, { ok: true }>;

export type Answer =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string };

const answers = new WeakMap<Question, Answer>();

/** The answer in SI, or a sentence why there is none. That to the question's own numbers is worked out once. */
export function answerOf(question: Question, values = question.values): Answer {
  if (values !== question.values) return worked(question, values);
  const known = answers.get(question) ?? worked(question, values);
  answers.set(question, known);
  return known;
}

function worked({ calculation, find }: Question, values: Values): Answer {
  if ('formula' in calculation) return solve(calculation.formula, numbersOf(values), find);
  const { model } = calculation;
  const result = model.run(values);
  const value = result.values[find];
  if (value === undefined) return { ok: false, reason: result.notes[0] ?? `${model.title} gives no ${find}` };
  return { ok: true, value };
}

export function numbersOf(values: Values): Record<string, number> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) => (typeof value === 'number' ? [[name, value]] : [])),
  );
}

/** Reads one given; throws a sentence when the text does not fit the symbol or input. */
function readGiven(text: string, spec: SymbolSpec | Input, what: string): Written | string {
  if ('kind' in spec && spec.kind !== 'quantity') return text;
  const reading = readQuantity(text, spec);
  if (!reading.ok) throw new Error(`${what} "${text}": ${reading.message}`);
  return reading;
}

/** Every input of a model in SI, from what is given as text. Throws a sentence for each that does not fit. */
export function modelValues(
  model: Model,
  given: Givens | DesignStart,
  materials: ResolvedMaterials = {},
): Values {
  const { values, problems } = completeInputs(model, given, materials);
  if (problems.length > 0) throw new Error(problems.join(' '));
  return values;
}

/** The question a number exercise asks with these numbers. Throws a sentence when the file does not fit its formula. */
export function questionOf(exercise: NumberExercise, variant: Variant, library: Library): Question {
  return question(exercise, exercise, variant.given, {}, library);
}

/** What a part has from an earlier one. */
export interface Carried {
  readonly value: number;
  readonly text: string;
  readonly figures: number;
  /** As it was shown: its number and unit. */
  readonly written: number;
  readonly unit: UnitSymbol;
}

/** The question a part asks, given the answers of the parts it builds on. */
export function partQuestion(
  exercise: StepsExercise,
  part: Part,
  variant: Variant,
  carried: Readonly<Record<string, Carried>>,
  library: Library,
): Question {
  const given: Record<string, string> = {};
  const before: Record<string, Carried> = {};
  for (const [name, text] of Object.entries(part.given)) {
    const reference = text.slice(1);
    if (text.startsWith('=')) {
      const shared = variant.given[reference];
      if (shared === undefined) throw new Error(`part "${part.id}" takes ${text}, which is not a given`);
      given[name] = shared;
    } else if (text.startsWith('$')) {
      const earlier = carried[reference];
      if (!earlier) throw new Error(`part "${part.id}" takes ${text}, which is not an earlier part`);
      given[name] = earlier.text;
      before[name] = earlier;
    } else given[name] = text;
  }
  return question(part, exercise, given, before, library);
}

/** Questions put before, by who computes them: a class has each of them many times. */
const asked = new WeakMap<Library, WeakMap<NumberExercise | Part, Map<string, Question>>>();
const mostKept = 2000;

function question(
  part: NumberExercise | Part,
  exercise: { readonly tolerance: string },
  given: Givens,
  carried: Readonly<Record<string, Carried>>,
  library: Library,
): Question {
  const ofLibrary = asked.get(library) ?? new WeakMap<NumberExercise | Part, Map<string, Question>>();
  asked.set(library, ofLibrary);
  const kept = ofLibrary.get(part) ?? new Map<string, Question>();
  ofLibrary.set(part, kept);
  const key = JSON.stringify([exercise.tolerance, given, carried]);
  const known = kept.get(key);
  if (known) return known;
  const put = putQuestion(part, exercise, given, carried, library);
  if (kept.size >= mostKept) kept.clear();
  kept.set(key, put);
  return put;
}

function putQuestion(
  asked: NumberExercise | Part,
  { tolerance }: { readonly tolerance: string },
  given: Givens,
  carried: Readonly<Record<string, Carried>>,
  library: Library,
): Question {
  const formula = asked.formula === undefined ? undefined : library.formula(asked.formula);
  const model = asked.model === undefined ? undefined : library.model(asked.model);
  const calculation = formula ? { formula } : model ? { model } : undefined;
  if (!calculation)
    throw new Error(`there is no ${asked.formula ? 'formula' : 'model'} "${asked.formula ?? asked.model}"`);
  const specs: Readonly<Record<string, SymbolSpec | Input>> = formula?.symbols ?? model!.inputs;
  const outputs: Readonly<Record<string, SymbolSpec | Output>> = formula?.symbols ?? model!.outputs;
  const sought = outputs[asked.find];
  if (!sought)
    throw new Error(`there is no "${asked.find}" to find; there are ${Object.keys(outputs).join(', ')}`);
  const answerUnit = asked.answerUnit ?? sought.show ?? sought.unit;
  if (!findUnit(answerUnit)) throw new Error(`there is no unit "${answerUnit}"`);

  const values: Record<string, Values[string]> = {};
  const written: Record<string, Written> = {};
  const typed: Record<string, Typed> = {};
  for (const [name, text] of Object.entries(given)) {
    const spec = specs[name];
    if (!spec) throw new Error(`"${name}" is given, but there are only ${Object.keys(specs).join(', ')}`);
    const earlier = carried[name];
    const read = earlier ?? readGiven(text, spec, name);
    values[name] = typeof read === 'object' ? read.value : read;
    if (typeof read === 'object') typed[name] = read;
    if (typeof read === 'object' && 'ok' in read) written[name] = read;
  }
  if (model) {
    const texts = Object.fromEntries(Object.entries(given).filter(([name]) => !carried[name]));
    const complete = modelValues(model, texts, library.materials);
    for (const [name, value] of Object.entries(complete)) if (!carried[name]) values[name] = value;
  }
  const fewest = Math.min(...Object.values(typed).map(({ figures }) => figures));
  const figures =
    (formula && figuresOfAnswer(formula, asked.find, numbersOf(values), typed, answerUnit as UnitSymbol)) ??
    fewest;
  return {
    calculation,
    find: asked.find,
    sought,
    answerUnit: answerUnit as UnitSymbol,
    given,
    values,
    written,
    figures: Math.max(2, Math.min(4, figures)),
    tolerance,
  };
}
