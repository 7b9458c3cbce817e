import type { Library } from '../../../calculators/exercises/answer.ts';
import type { DesignExercise, Exercise } from '../../../calculators/exercises/definition.ts';
import { fingerprint, type GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { modelValues } from '../../../calculators/exercises/answer.ts';
import { printQuantity } from '../../../calculators/core/print.ts';
import type { Lever } from '../exercise.tsx';

export { workshopFor } from '../../workers/library.ts';

/** Models of the set that compute otherwise now than when it was made, or are gone. */
export function changedModels(set: GradedSet, { model }: Library): string[] {
  return Object.entries(set.models).flatMap(([id, before]) => {
    const found = model(id);
    return found && fingerprint(found, set.materials) === before ? [] : [id];
  });
}

/** Name and sign of what each part asks for. */
export function soughtOf(
  exercise: Exercise,
  library: Library,
): { readonly name: string; readonly sign: string }[] {
  const asked = exercise.kind === 'number' ? [exercise] : exercise.kind === 'steps' ? exercise.parts : [];
  return asked.map(({ formula, model, find }) => {
    const spec =
      formula === undefined
        ? library.model(model ?? '')?.outputs[find]
        : library.formula(formula)?.symbols[find];
    return { name: spec?.name ?? 'answer', sign: spec?.sign ?? find };
  });
}

/** The inputs a design lets the learner change, each as it stands at the start. */
export function leversOf(design: DesignExercise, library: Library, stock: GradedSet['stock'] = {}): Lever[] {
  const model = library.model(design.model);
  if (!model) return [];
  const start = modelValues(model, design.start, library.materials);
  return design.change.flatMap((input): Lever[] => {
    const spec = model.inputs[input];
    if (!spec || spec.kind === 'list') return [];
    const value = start[input];
    if (spec.kind === 'quantity') {
      const text = typeof value === 'number' ? printQuantity(value, spec.show ?? spec.unit) : '';
      const written = design.start[input];
      return [{ input, name: spec.name, text: typeof written === 'string' ? written : text }];
    }
    const options: Record<string, string> =
      spec.kind === 'choice'
        ? spec.options
        : spec.kind === 'flag'
          ? { true: 'yes', false: 'no' }
          : spec.kind === 'material'
            ? Object.fromEntries(
                Object.entries(stock).flatMap(([id, { name, role }]) =>
                  role === spec.role ? [[id, name]] : [],
                ),
              )
            : {};
    return [{ input, name: spec.name, text: String(value), ...(spec.kind !== 'text' && { options }) }];
  });
}
