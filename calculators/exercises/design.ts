import type { Model, Values } from '../core/model.ts';
import type { ResolvedMaterials } from '../models/inputs.ts';
import { modelValues } from './answer.ts';
import type { DesignExercise, Givens } from './definition.ts';

export interface MarkedDesign {
  readonly verdict: 'right' | 'wrong' | 'unread';
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

/**
 * Right when every check the exercise names holds and nothing was changed but what may be. What cannot be
 * read is said, and nothing is marked.
 */
export function markDesign(
  exercise: DesignExercise,
  changes: Givens,
  model: Model,
  materials: ResolvedMaterials = {},
): MarkedDesign {
  const { marks: of } = exercise;
  const stray = Object.keys(changes).find((name) => !exercise.change.includes(name));
  if (stray !== undefined) {
    const says = [`${model.inputs[stray]?.name ?? stray} is not yours to change here.`];
    return { verdict: 'wrong', marks: 0, of, checks: [], says };
  }
  let inputs: Values;
  try {
    inputs = modelValues(model, { ...exercise.start, ...changes }, materials);
  } catch (error) {
    // The inputs are named as the fields are.
    const said = error instanceof Error ? error.message : String(error);
    const says = [
      said.replace(/(^|\s)([\w.-]+): /g, (whole, before: string, id: string) =>
        exercise.change.includes(id) ? `${before}${model.inputs[id]?.name ?? id}: ` : whole,
      ),
    ];
    return { verdict: 'unread', marks: 0, of, checks: [], says };
  }
  const result = model.run(inputs);
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
