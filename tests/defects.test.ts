import { readdirSync, readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { formulas } from '../calculators/formulas/index.ts';
import { defectDrawings } from '../src/figures/defects/drawings.ts';

interface Defect {
  readonly apart: readonly { readonly from: string; readonly by: string }[];
  readonly causes: readonly string[];
  readonly remedies: readonly string[];
  readonly formulas?: readonly string[];
  readonly lessons?: readonly string[];
}

const content = new URL('../content/', import.meta.url);
const namesIn = (folder: string): string[] =>
  readdirSync(new URL(folder, content)).map((name) => name.replace(/\.mdx?$/, ''));
const lessons = namesIn('lessons/');
const ids = namesIn('defects/');
const defects = ids.map((id) => {
  const text = readFileSync(new URL(`defects/${id}.md`, content), 'utf8');
  return [id, load(/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? '') as Defect] as const;
});

describe.each(defects)(
  'the defect %s',
  (id, { apart, causes, remedies, formulas: used, lessons: taught }) => {
    it('is told apart from other defects, each once', () => {
      const others = apart.map(({ from }) => from);
      expect(others.length).toBeGreaterThan(0);
      expect(others.filter((other) => other === id || !ids.includes(other))).toEqual([]);
      expect(new Set(others).size).toBe(others.length);
    });

    it('has causes and changes, and leads to lessons and formulas there are', () => {
      expect(causes.length).toBeGreaterThan(1);
      expect(remedies.length).toBeGreaterThan(1);
      expect((taught ?? []).filter((lesson) => !lessons.includes(lesson))).toEqual([]);
      expect(taught ?? [], 'lessons').not.toEqual([]);
      expect((used ?? []).filter((formula) => !Object.hasOwn(formulas, formula))).toEqual([]);
    });
  },
);

describe('the drawings of defects', () => {
  it('are of defects there are, and each says what to see', () => {
    expect(Object.keys(defectDrawings).filter((id) => !ids.includes(id))).toEqual([]);
    expect(Object.values(defectDrawings).filter(({ says }) => !says.endsWith('.'))).toEqual([]);
  });
});
