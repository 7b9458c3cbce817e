import type { Formula } from '../../calculators/core/formula.ts';
import type { Model } from '../../calculators/core/model.ts';
import type { Library } from '../../calculators/exercises/answer.ts';
import type { Exercise } from '../../calculators/exercises/definition.ts';
import { libraryOf } from '../../calculators/exercises/sets/marking-hand-ins.ts';
import type { GradedSet } from '../../calculators/exercises/sets/set-file.ts';
import type { ResolvedMaterials } from '../../calculators/models/inputs.ts';

const modelFiles = import.meta.glob<Record<string, unknown>>([
  '../../calculators/models/*.ts',
  '!**/index.ts',
  '!**/inputs.ts',
]);

const isModel = (value: unknown, id: string): value is Model =>
  typeof value === 'object' && value !== null && 'run' in value && 'id' in value && value.id === id;

/** The model with this id, fetched by itself: its file is the last part of the id. */
async function loadModel(id: string): Promise<Model> {
  const name = `/${id.split('/').at(-1)}.ts`;
  const load = Object.entries(modelFiles).find(([path]) => path.endsWith(name))?.[1];
  const found = load && Object.values(await load()).find((value) => isModel(value, id));
  if (!isModel(found, id)) throw new Error(`there is no model "${id}"`);
  return found;
}

/** What the exercise computes with: the formulas it came with, and its models, each fetched once. */
export async function libraryFor(
  exercise: Exercise,
  formulas: Readonly<Record<string, Formula>>,
  materials: ResolvedMaterials,
): Promise<Library> {
  const asked = exercise.kind === 'steps' ? exercise.parts : 'model' in exercise ? [exercise] : [];
  const ids = [...new Set(asked.flatMap(({ model }) => model ?? []))];
  const models = Object.fromEntries(
    await Promise.all(ids.map(async (id) => [id, await loadModel(id)] as const)),
  );
  return { formula: (id) => formulas[id], model: (id) => models[id], materials };
}

/** What a set is marked with: its own formulas and materials, and the models it names, fetched once. */
export async function workshopFor(set: GradedSet): Promise<Library> {
  const libraries = await Promise.all(
    set.questions.map((exercise) =>
      libraryFor(exercise, set.formulas, set.materials).catch((): Library => libraryOf(set, () => undefined)),
    ),
  );
  return libraryOf(set, (id) =>
    libraries.map((library) => library.model(id)).find((model) => model !== undefined),
  );
}
