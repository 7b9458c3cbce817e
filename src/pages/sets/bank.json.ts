import { version } from '../../../package.json';
import { keptFormula, fingerprint } from '../../../calculators/exercises/sets/set-file.ts';
import type { Bank } from '../../../calculators/exercises/sets/building.ts';
import type { Model } from '../../../calculators/core/model.ts';
import { formulas } from '../../../calculators/formulas/index.ts';
import { materials } from '../../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../../calculators/materials/resolve.ts';
import { models } from '../../../calculators/models/index.ts';
import { readExercises } from '../../layouts/exercise-list.ts';

/** All that a set is built from, as data: the builder and a short link read it. */
export async function GET(): Promise<Response> {
  const stock = resolvedMaterials(materials);
  const placed = await readExercises();
  const bank: Bank = {
    library: version,
    exercises: placed.map(({ entry, place }) => ({
      id: entry.id,
      exercise: JSON.parse(JSON.stringify(entry.data)) as Record<string, unknown>,
      unit: place.unit.title,
      lesson: place.lesson.data.title,
      outcome:
        place.lesson.data.outcomes.find(({ id }) => id === entry.data.outcome)?.text ?? entry.data.outcome,
    })),
    formulas: Object.fromEntries(
      Object.values(formulas).map((formula) => [formula.id, keptFormula(formula)]),
    ),
    materials: stock,
    stock: Object.fromEntries(Object.values(materials).map(({ id, name, role }) => [id, { name, role }])),
    models: Object.fromEntries(
      Object.values<Model>(models).map((model) => [model.id, fingerprint(model, stock)]),
    ),
  };
  return new Response(JSON.stringify(bank), { headers: { 'content-type': 'application/json' } });
}
