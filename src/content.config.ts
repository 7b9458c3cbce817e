import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { defineCollection } from 'astro:content';
import { sources, type SourceKey } from '../calculators/sources.ts';

const sourceKey = z.enum(Object.keys(sources) as [SourceKey, ...SourceKey[]]);
const how = z.enum(['read', 'memory', 'common practice', 'estimate']);
const citation = z.strictObject({ key: sourceKey, at: z.string(), how });
const slug = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and single dashes');

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    outcomes: z
      .array(z.strictObject({ id: slug, text: z.string(), serves: z.array(slug).default([]) }))
      .min(1)
      .max(3),
    needs: z.array(slug).default([]),
    formulas: z.array(z.string()).default([]),
    exercises: z.array(slug).default([]),
    safety: z.boolean().default(false),
    sources: z.array(sourceKey).default([]),
    /** For who teaches it: what has to be on the table, and what to do before their eyes. */
    bring: z.array(z.string()).default([]),
    show: z.string().optional(),
    minutes: z.number().int().positive(),
  }),
});

/** A given is a quantity with its unit, a choice, or (in a part) `$part` and `=given`. */
const given = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));
const vary = z.record(
  z.string(),
  z.union([
    z.strictObject({ from: z.string(), to: z.string(), step: z.string() }),
    z.array(z.union([z.string(), z.number()])).min(2),
  ]),
);

const mistake = z.union([
  z.strictObject({ equation: z.string(), says: z.string() }),
  z.strictObject({
    slip: z.enum(['gauge-for-absolute', 'celsius-for-kelvin', 'diameter-for-radius', 'factor-1000']),
    of: z.string().optional(),
    says: z.string(),
  }),
  z.strictObject({ change: z.record(z.string(), z.string()), says: z.string() }),
]);

const every = {
  title: z.string(),
  outcome: z.string(),
  misconceptions: z.array(slug).default([]),
  marks: z.number().int().positive(),
  difficulty: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  tolerance: z.string().optional(),
  question: z.string(),
  hints: z.array(z.string()).default([]),
  source: citation.optional(),
  worked: z.string().optional(),
};

const computed = {
  formula: z.string().optional(),
  model: z.string().optional(),
  find: z.string(),
  'answer-unit': z.string().optional(),
  mistakes: z.array(mistake).default([]),
};

const options = z.array(z.strictObject({ text: z.string(), right: z.boolean(), because: z.string() })).min(2);

const exercises = defineCollection({
  loader: glob({ base: './content/exercises', pattern: '*.yaml' }),
  schema: z.discriminatedUnion('kind', [
    z.strictObject({ ...every, ...computed, kind: z.literal('number'), given, vary: vary.optional() }),
    z.strictObject({
      ...every,
      kind: z.literal('steps'),
      given: given.optional(),
      vary: vary.optional(),
      parts: z
        .array(
          z.strictObject({
            ...computed,
            id: z.string(),
            question: z.string(),
            given,
            marks: z.number().int().positive(),
            hints: z.array(z.string()).default([]),
          }),
        )
        .min(2),
    }),
    z.strictObject({ ...every, kind: z.literal('choice'), options }),
    z.strictObject({
      ...every,
      kind: z.literal('order'),
      items: z.array(z.string()).min(3),
      because: z.string(),
    }),
    z.strictObject({ ...every, kind: z.literal('diagnose'), evidence: z.array(z.string()).min(1), options }),
    z.strictObject({
      ...every,
      kind: z.literal('design'),
      model: z.string(),
      start: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.array(given)])),
      change: z.array(z.string()).min(1),
      must: z.array(z.string()).min(1),
      passing: given,
    }),
    z.strictObject({ ...every, kind: z.literal('text'), rubric: z.array(z.string()).min(1) }),
  ]),
});

/** One term a file; the body says what it means in a sentence or three. */
const glossary = defineCollection({
  loader: glob({ base: './content/glossary', pattern: '*.{md,mdx}' }),
  schema: z.strictObject({
    title: z.string(),
    also: z.array(z.string()).default([]),
    sign: z.string().optional(),
    unit: z.string().optional(),
    see: z.array(slug).default([]),
    formulas: z.array(z.string()).default([]),
    lessons: z.array(slug).default([]),
    sources: z.array(sourceKey).default([]),
  }),
});

/** One defect a file: what is seen, what it is told apart from and by what, causes and changes. */
const defects = defineCollection({
  loader: glob({ base: './content/defects', pattern: '*.{md,mdx}' }),
  schema: z.strictObject({
    title: z.string(),
    also: z.array(z.string()).default([]),
    family: z.enum(['holes', 'seams', 'missing', 'extra', 'skin', 'shape', 'metal']),
    looks: z.string(),
    apart: z.array(z.strictObject({ from: slug, by: z.string() })).min(1),
    causes: z.array(z.string()).default([]),
    remedies: z.array(z.string()).default([]),
    formulas: z.array(z.string()).default([]),
    lessons: z.array(slug).default([]),
    sources: z.array(sourceKey).default([]),
  }),
});

export const collections = { lessons, exercises, glossary, defects };
