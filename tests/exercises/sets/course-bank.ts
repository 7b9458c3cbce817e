import { readdirSync, readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import type { Model } from '../../../calculators/core/model.ts';
import type { Library } from '../../../calculators/exercises/answer.ts';
import type { Bank, Draft } from '../../../calculators/exercises/sets/building.ts';
import { setFrom } from '../../../calculators/exercises/sets/building.ts';
import {
  gradedSet,
  fingerprint,
  keptFormula,
  type GradedSet,
  type SetFile,
} from '../../../calculators/exercises/sets/set-file.ts';
import { formulas } from '../../../calculators/formulas/index.ts';
import { materials } from '../../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../../calculators/materials/resolve.ts';
import { models } from '../../../calculators/models/index.ts';

const folder = new URL('../../../content/exercises/', import.meta.url);
const stock = resolvedMaterials(materials);
export const modelOf: Library['model'] = (id) => (models as Record<string, Model>)[id];

/** The exercises of the course as a set is built from them, without the site. */
export const bank: Bank = {
  library: '0.1.0',
  exercises: readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => ({
      id: name.slice(0, -5),
      exercise: load(readFileSync(new URL(name, folder), 'utf8')) as Record<string, unknown>,
      unit: '',
      lesson: '',
      outcome: 'What the outcome says',
    })),
  formulas: Object.fromEntries(Object.values(formulas).map((formula) => [formula.id, keptFormula(formula)])),
  materials: stock,
  stock: Object.fromEntries(Object.values(materials).map(({ id, name, role }) => [id, { name, role }])),
  models: Object.fromEntries(
    Object.values(models as Record<string, Model>).map((model) => [model.id, fingerprint(model, stock)]),
  ),
};

export const draftOf = (ids: readonly string[], more: Partial<Draft> = {}): Draft => ({
  id: 'mill-1',
  edition: 1,
  title: 'Fittings of the mill',
  note: '',
  asks: 'Your name',
  rules: { numbers: 'own', feedback: 'after', hints: true, worked: true, keep: 'last' },
  picks: ids.map((id) => ({ id })),
  ...more,
});

export function fileOf(draft: Draft): SetFile {
  const built = setFrom(draft, bank);
  if (!built.ok) throw new Error(built.reason);
  return JSON.parse(JSON.stringify(built.value)) as SetFile;
}

export const setOf = (draft: Draft): GradedSet => gradedSet(fileOf(draft));
