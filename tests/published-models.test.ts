import { describe, expect, it } from 'vitest';
import { quantityFigures, readSpread } from '../calculators/core/quantity.ts';
import { materials } from '../calculators/materials/index.ts';
import { resolvedMaterials } from '../calculators/materials/resolve.ts';
import { models } from '../calculators/models/index.ts';
import { completeInputs } from '../calculators/models/inputs.ts';
import { sources } from '../calculators/sources.ts';
import { allChecks } from './published/index.ts';
import { modelChecks } from './published/models.ts';

const resolved = resolvedMaterials(materials);

describe('the published checks of models', () => {
  it('each have a name of their own, a source, and ask for what they were not given', () => {
    const ids = [...allChecks, ...modelChecks].map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    for (const { source, given, find } of modelChecks) {
      expect(sources[source.key]).toBeDefined();
      expect(['read', 'memory']).toContain(source.how);
      expect(find in given).toBe(false);
    }
  });

  it.each(modelChecks.map((check) => [check.id, check.title, check] as const))(
    '%s: %s',
    (_id, _title, check) => {
      const model = models[check.model];
      if (!model) throw new Error(`no model "${check.model}"`);
      const { values, problems } = completeInputs(model, check.given, resolved);
      expect(problems).toEqual([]);
      const result = model.run(values);
      const found = result.values[check.find];
      if (found === undefined) throw new Error(result.notes.join(' '));
      const { value, unit } = quantityFigures(check.expect);
      expect(Math.abs(found - value), `${found} for ${value} in SI`).toBeLessThanOrEqual(
        readSpread(check.tolerance, value, unit) * (1 + 1e-9),
      );
    },
  );
});
