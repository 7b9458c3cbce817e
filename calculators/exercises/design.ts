import type { Model, Values } from '../core/model.ts';
import { readGiven, startOf } from './answer.ts';
import type { DesignExercise, Givens } from './definition.ts';

export interface MarkedDesign {
  readonly verdict: 'right' | 'wrong';
  readonly marks: number;
  readonly of: number;
  /** The checks the exercise asks for, as they stand. */
  readonly checks: readonly {
    readonly id: string;
    readonly title: string;
    readonly verdict: string;
    readonly why: string;
  }[];
  readonly says: readonly string[];
}

/** A design exercise's inputs in SI: the model's start, the exercise's, then the learner's changes. */
export function designInputs(exercise: DesignExercise, changes: Givens, model: Model): Values {
  const values: Record<string, Values[string]> = { ...startOf(model) };
  for (const [name, text] of [...Object.entries(exercise.start), ...Object.entries(changes)]) {
    const input = model.inputs[name];
    if (!input) throw new Error(`${model.id} has no input "${name}"`);
    const read = readGiven(text, input, input.name);
    values[name] = typeof read === 'object' ? read.value : read;
  }
  return values;
}

/** Right when every check the exercise names holds and nothing was changed but what may be. */
export function markDesign(exercise: DesignExercise, changes: Givens, model: Model): MarkedDesign {
  const { marks: of } = exercise;
  const stray = Object.keys(changes).find((name) => !exercise.change.includes(name));
  if (stray !== undefined) {
    const says = [`${model.inputs[stray]?.name ?? stray} is not yours to change here.`];
    return { verdict: 'wrong', marks: 0, of, checks: [], says };
  }
  const result = model.run(designInputs(exercise, changes, model));
  const checks = exercise.must.map((id) => {
    const check = result.checks.find((found) => found.id === id);
    if (!check) throw new Error(`${model.id} has no check "${id}"`);
    return { id, title: check.title, verdict: check.verdict, why: check.why };
  });
  const holding = checks.filter(({ verdict }) => verdict === 'holds').length;
  const right = holding === checks.length;
  const marks = right ? of : Math.floor((of * holding) / (checks.length + 1));
  const says = checks
    .filter(({ verdict }) => verdict !== 'holds')
    .map(({ title, why }) => `${title}: ${why}`);
  return { verdict: right ? 'right' : 'wrong', marks, of, checks, says };
}
