import { describe, expect, it } from 'vitest';
import { formulas } from '../calculators/formulas/index.ts';
import { models } from '../calculators/models/index.ts';
import { allChecks } from './published/index.ts';
import { agreements } from './published/libraries.ts';
import { looked } from './published/looked.ts';
import { modelChecks } from './published/models.ts';
import { solidChecks } from './published/solids.ts';

describe('general-purpose libraries', () => {
  it.each(agreements.map((row) => [row.id, row] as const))('agree: %s', (_, { points, worst, allowed }) => {
    expect(points).toBeGreaterThan(50);
    expect(worst).toBeLessThanOrEqual(allowed);
  });
});

describe('where was looked', () => {
  const read = new Map<string, number>();
  const count = (id: string, how: string): void => {
    if (how === 'read') read.set(id, (read.get(id) ?? 0) + 1);
  };
  for (const { formula, source } of allChecks) count(formula, source.how);
  for (const { model, source } of modelChecks) count(model, source.how);
  for (const { source } of solidChecks) count('pattern/primitives', source.how);
  const all = [...Object.keys(formulas), ...Object.keys(models)];
  const short = all.filter((id) => (read.get(id) ?? 0) < 2);

  it('is said of calculations with fewer than two figures read, and of no other', () => {
    expect(
      Object.keys(looked).filter((id) => !short.includes(id)),
      'no longer short, or no such id',
    ).toEqual([]);
    expect(Object.values(looked).filter((where) => where.length < 20)).toEqual([]);
  });
});
