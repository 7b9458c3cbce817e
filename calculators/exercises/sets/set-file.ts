import { parseEquation, symbolsOf } from '../../core/expression.ts';
import type { Formula, SymbolSpec } from '../../core/formula.ts';
import type { Role } from '../../core/material.ts';
import type { Model } from '../../core/model.ts';
import { findUnit } from '../../core/units.ts';
import { defaultInputs, type ResolvedMaterials } from '../../models/inputs.ts';
import type { Exercise, Variation } from '../definition.ts';
import { readExercise } from '../reading.ts';
import { valuesOf } from '../variants.ts';
import { setSchema } from './formats.ts';
import { faultOf } from './schema.ts';
import { canonical, hashOf, sha256 } from './sha256.ts';
import { parseUntrusted, type Read } from './untrusted.ts';

/** How a set is worked on and counted. Dates are advice: nothing here can hold anybody to them. */
export interface Rules {
  /** Each learner's own numbers, or the same for all. */
  readonly numbers: 'own' | 'same';
  readonly feedback: 'at-once' | 'after' | 'never';
  readonly hints: boolean;
  readonly worked: boolean;
  /** Which of several hand-ins of one learner counts. */
  readonly keep: 'first' | 'last' | 'best';
  readonly opens?: string;
  readonly closes?: string;
}

/** An exercise as the data of its file, so that the one reader of exercises reads it. */
export type ExerciseData = Readonly<Record<string, unknown>>;

export interface SetQuestion {
  readonly id: string;
  readonly exercise: ExerciseData;
}

/** A formula as plain data, without what only a page shows. */
export type KeptFormula = Pick<Formula, 'title' | 'equation' | 'symbols' | 'where' | 'empirical' | 'noSolve'>;

/** A set with its snapshot: marking reads this and nothing else, so an old hand-in is always marked as it was meant. */
export interface SetFile {
  readonly format: 'warm-mould-set';
  readonly version: 1;
  readonly id: string;
  /** Counts up with every change after the set has gone out. */
  readonly edition: number;
  readonly title: string;
  readonly note?: string;
  /** What a learner signs with: a name, or a number the instructor gave. */
  readonly asks: string;
  /** The version of the library that wrote it. */
  readonly library: string;
  readonly rules: Rules;
  /** The public key hand-ins are sealed to: a point of P-256. */
  readonly seal?: string;
  readonly questions: readonly SetQuestion[];
  /** What each outcome says, by its id. */
  readonly outcomes: Readonly<Record<string, string>>;
  readonly formulas: Readonly<Record<string, KeptFormula>>;
  readonly materials: ResolvedMaterials;
  /** What its materials are called and used as, where a question lets one be chosen. */
  readonly stock?: Readonly<Record<string, { readonly name: string; readonly role: Role }>>;
  /** Models are code and cannot be kept; this stands for what each gave when the set was made. */
  readonly models: Readonly<Record<string, string>>;
  readonly hash: string;
}

/** A set as marking uses it. */
export interface GradedSet extends Omit<SetFile, 'questions' | 'formulas'> {
  readonly questions: readonly Exercise[];
  readonly formulas: Readonly<Record<string, Formula>>;
  readonly marks: number;
}

export const setLimits = { characters: 2_000_000, depth: 14 } as const;
const mostValues = 10_000;

/** The file with its hash: over everything else it holds. */
export function withHash(file: Omit<SetFile, 'hash'>): SetFile {
  const { hash: _, ...rest } = file as SetFile;
  return { ...rest, hash: hashOf(rest) };
}

export const writeSet = (file: SetFile): string => `${JSON.stringify(file)}\n`;

/** Reads a set from anywhere. Never throws; the reason is a sentence. */
export function readSet(text: string): Read<GradedSet> {
  const parsed = parseUntrusted(text, setLimits);
  return parsed.ok ? readSetData(parsed.value) : parsed;
}

export function readSetData(data: unknown): Read<GradedSet> {
  const later = laterVersion(data, 'warm-mould-set', 'a set');
  if (later !== undefined) return { ok: false, reason: later };
  const fault = faultOf(data, setSchema, 'The set');
  if (fault !== undefined) return { ok: false, reason: `The set cannot be used. ${fault}` };
  const file = data as SetFile;
  const { hash, ...rest } = file;
  if (hashOf(rest) !== hash)
    return { ok: false, reason: 'The set was changed or damaged after it was saved. Ask for it again.' };
  try {
    return { ok: true, value: gradedSet(file) };
  } catch (error) {
    return { ok: false, reason: `The set cannot be used. ${sentence(error)}` };
  }
}

/** A sentence when the data is of another kind, or of a version to come. */
export function laterVersion(data: unknown, format: string, what: string): string | undefined {
  const { format: found, version } = (typeof data === 'object' && data !== null ? data : {}) as Record<
    string,
    unknown
  >;
  if (found !== format) return `This is not ${what}: no such file was written by these pages.`;
  if (typeof version === 'number' && version > 1)
    return `This is ${what} of a later version of these pages. Open it with the newest ones.`;
  return undefined;
}

/** Throws a sentence where the set contradicts itself. */
export function gradedSet(file: SetFile): GradedSet {
  const formulas = Object.fromEntries(
    Object.entries(file.formulas).map(([id, kept]) => [id, formulaFrom(id, kept)]),
  );
  const ids = new Set<string>();
  const questions = file.questions.map(({ id, exercise }) => {
    if (ids.has(id)) throw new Error(`The exercise "${id}" stands in it twice.`);
    ids.add(id);
    const read = readExercise(id, exercise, { leastMistakes: 0 });
    for (const variation of 'vary' in read ? Object.values(read.vary) : []) {
      checkSize(variation);
      // Throws the sentence now that marking would throw later.
      valuesOf(variation);
    }
    for (const formula of formulasOf(read))
      if (!Object.hasOwn(formulas, formula)) throw new Error(`The formula "${formula}" is missing from it.`);
    return read;
  });
  const marks = questions.reduce((sum, question) => sum + marksOf(question), 0);
  return { ...file, questions, formulas, marks };
}

/** The marks a question can give: of parts their sum. */
export function marksOf(exercise: Exercise): number {
  return exercise.kind === 'steps'
    ? exercise.parts.reduce((sum, { marks }) => sum + marks, 0)
    : exercise.marks;
}

export function formulasOf(exercise: Exercise): string[] {
  const asked = exercise.kind === 'steps' ? exercise.parts : exercise.kind === 'number' ? [exercise] : [];
  return asked.flatMap(({ formula }) => formula ?? []);
}

export function modelsOf(exercise: Exercise): string[] {
  if (exercise.kind === 'design') return [exercise.model];
  const asked = exercise.kind === 'steps' ? exercise.parts : exercise.kind === 'number' ? [exercise] : [];
  return asked.flatMap(({ model }) => model ?? []);
}

function formulaFrom(id: string, kept: KeptFormula): Formula {
  for (const [name, { unit, show }] of Object.entries<SymbolSpec>(kept.symbols))
    for (const symbol of [unit, show])
      if (symbol !== undefined && !findUnit(symbol))
        throw new Error(`${id}: ${name} has the unknown unit "${symbol}".`);
  const { left, right } = parseEquation(kept.equation);
  const stray = symbolsOf(left, right).find((name) => !Object.hasOwn(kept.symbols, name));
  if (stray !== undefined) throw new Error(`${id}: the equation has "${stray}", which is not described.`);
  const source = { key: 'nist-sp811', at: '', how: 'common practice' } as const;
  return { ...kept, id, answers: '', assumes: [], examples: [], source };
}

/** A grid of numbers is drawn from, so it may not be endless. */
function checkSize(variation: Variation): void {
  if (Array.isArray(variation)) {
    if (variation.length === 0 || variation.length > mostValues)
      throw new Error('A list of numbers is empty or too long.');
    return;
  }
  const { from, to, step } = variation as Exclude<Variation, readonly string[]>;
  const [first, last, size] = [from, to, step].map((text) => Number.parseFloat(text));
  if (!((last! - first!) / size! <= mostValues) || step.length > 40)
    throw new Error(`From ${from} to ${to} by ${step} is more than ${mostValues} numbers.`);
}

const keptSymbols = ['name', 'sign', 'unit', 'show', 'range', 'usual', 'constant', 'limit'] as const;

/** What a set keeps of a formula. */
export function keptFormula({ title, equation, symbols, where, empirical, noSolve }: Formula): KeptFormula {
  const kept = Object.fromEntries(
    Object.entries(symbols).map(([name, spec]) => [
      name,
      Object.fromEntries(keptSymbols.flatMap((key) => (spec[key] === undefined ? [] : [[key, spec[key]]]))),
    ]),
  ) as unknown as Formula['symbols'];
  return {
    title,
    equation,
    symbols: kept,
    ...(where && { where }),
    ...(empirical !== undefined && { empirical }),
    ...(noSolve && { noSolve }),
  };
}

/**
 * What stands for a model: its usual numbers to nine figures. When a later library gives another, the marker
 * says that these questions are marked by a changed model.
 */
export function fingerprint(model: Model, materials: ResolvedMaterials): string {
  const { values } = model.run(defaultInputs(model, materials).values);
  const figures = Object.entries(values).map(([name, value]) => [name, value.toPrecision(9)]);
  return sha256(canonical(figures.sort(([a], [b]) => (a! < b! ? -1 : 1))));
}

export const sentence = (error: unknown): string => {
  const said = error instanceof Error ? error.message : String(error);
  // What the language itself throws ends without a full stop.
  return /[.?]$/.test(said) ? said : `${said}.`;
};
