import type { Schema } from './schema.ts';

/** Every file format of graded sets, as JSON Schema. Served as they stand here, and read against as they stand here. */
const dialect = 'https://json-schema.org/draft/2020-12/schema';
/** One line without control characters: a name, a title, an answer. */
const line = (maxLength: number, minLength = 0): Schema => ({
  type: 'string',
  maxLength,
  ...(minLength > 0 && { minLength }),
  pattern: '^[^\\u0000-\\u001f\\u007f\\u2028\\u2029]*$',
});
const text = (maxLength: number): Schema => ({
  type: 'string',
  maxLength,
  pattern: '^[^\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f]*$',
});
const id: Schema = { type: 'string', maxLength: 80, pattern: '^[a-z0-9]+(-[a-z0-9]+)*$' };
const hash: Schema = { type: 'string', pattern: '^[0-9a-f]{64}$' };
const day: Schema = { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' };
const moment: Schema = {
  type: 'string',
  pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]{1,3})?Z$',
};
const bytes = (maxLength: number): Schema => ({ type: 'string', maxLength, pattern: '^[A-Za-z0-9_-]*$' });
const point: Schema = { type: 'string', minLength: 87, maxLength: 87, pattern: '^[A-Za-z0-9_-]*$' };
const number: Schema = { type: 'number' };
const record = (of: Schema, most: number): Schema => ({
  type: 'object',
  additionalProperties: of,
  maxProperties: most,
});

const of: Schema = {
  type: 'object',
  description: 'Which edition of which set this belongs to.',
  properties: { id, edition: { type: 'integer', minimum: 1, maximum: 9999 }, hash },
  required: ['id', 'edition', 'hash'],
  additionalProperties: false,
};

const symbol: Schema = {
  type: 'object',
  properties: {
    name: line(200),
    sign: line(40),
    unit: line(40),
    show: line(40),
    range: { type: 'array', items: number, minItems: 2, maxItems: 2 },
    usual: number,
    constant: number,
    limit: {
      type: 'object',
      properties: { above: number, below: number, why: line(400) },
      required: ['why'],
      additionalProperties: false,
    },
  },
  required: ['name', 'unit'],
  additionalProperties: false,
};

const formula: Schema = {
  type: 'object',
  description: 'An equation as text, with its symbols: all that marking computes from.',
  properties: {
    title: line(200),
    equation: line(600, 3),
    symbols: record(symbol, 40),
    where: {
      type: 'array',
      maxItems: 10,
      items: {
        type: 'object',
        properties: { test: line(200), why: line(400) },
        required: ['test', 'why'],
        additionalProperties: false,
      },
    },
    empirical: { type: 'boolean' },
    noSolve: record(line(400), 40),
  },
  required: ['title', 'equation', 'symbols'],
  additionalProperties: false,
};

const resolved: Schema = {
  type: 'object',
  properties: { value: number, spread: number },
  required: ['value', 'spread'],
  additionalProperties: false,
};

const rules: Schema = {
  type: 'object',
  properties: {
    numbers: { type: 'string', enum: ['own', 'same'] },
    feedback: { type: 'string', enum: ['at-once', 'after', 'never'] },
    hints: { type: 'boolean' },
    worked: { type: 'boolean' },
    keep: { type: 'string', enum: ['first', 'last', 'best'] },
    opens: day,
    closes: day,
  },
  required: ['numbers', 'feedback', 'hints', 'worked', 'keep'],
  additionalProperties: false,
};

const head = (name: string, title: string, description: string) => ({
  $schema: dialect,
  $id: `urn:warm-mould:schema:${name}:1`,
  title,
  description,
  type: 'object' as const,
  additionalProperties: false,
});
const format = (name: string) => ({
  format: { type: 'string', const: `warm-mould-${name}` } satisfies Schema,
  version: { type: 'integer', const: 1 } satisfies Schema,
});

export const setSchema: Schema = {
  ...head(
    'set',
    'A graded set',
    'Exercises with everything needed to mark them, whatever happens to the library.',
  ),
  properties: {
    ...format('set'),
    id,
    edition: { type: 'integer', minimum: 1, maximum: 9999 },
    title: line(120, 1),
    note: text(2000),
    asks: line(120, 1),
    library: line(40),
    rules,
    seal: point,
    questions: {
      type: 'array',
      minItems: 1,
      maxItems: 60,
      items: {
        type: 'object',
        properties: {
          id,
          exercise: {
            type: 'object',
            description: 'The exercise as its file states it.',
            properties: {
              kind: {
                type: 'string',
                enum: ['number', 'steps', 'choice', 'order', 'diagnose', 'design', 'text'],
              },
              marks: { type: 'integer', minimum: 1, maximum: 100 },
            },
            required: ['kind', 'marks', 'title', 'outcome', 'question', 'difficulty'],
          },
        },
        required: ['id', 'exercise'],
        additionalProperties: false,
      },
    },
    outcomes: record(line(300), 60),
    formulas: record(formula, 120),
    materials: record(record(resolved, 60), 100),
    stock: record(
      {
        type: 'object',
        description: 'What a material is called and used as, for a choice of materials.',
        properties: {
          name: line(120),
          role: { type: 'string', enum: ['metal', 'mould', 'pattern', 'crucible', 'fluid'] },
        },
        required: ['name', 'role'],
        additionalProperties: false,
      },
      100,
    ),
    models: record(hash, 20),
    hash,
  },
  required: [
    'format',
    'version',
    'id',
    'edition',
    'title',
    'asks',
    'library',
    'rules',
    'questions',
    'outcomes',
    'formulas',
    'materials',
    'models',
    'hash',
  ],
};

const given: Schema = {
  type: 'object',
  properties: {
    texts: record(text(5000), 40),
    chosen: { type: 'array', maxItems: 40, items: { type: 'integer', minimum: 0, maximum: 39 } },
    working: text(5000),
    seconds: { type: 'integer', minimum: 0, maximum: 1_000_000 },
    hints: { type: 'integer', minimum: 0, maximum: 40 },
    photo: {
      type: 'object',
      properties: {
        type: { type: 'string', enum: ['image/jpeg', 'image/png', 'image/webp'] },
        bytes: bytes(700_000),
      },
      required: ['type', 'bytes'],
      additionalProperties: false,
    },
  },
  additionalProperties: false,
};

export const handInSchema: Schema = {
  ...head(
    'hand-in',
    'A hand-in',
    'What one learner answered. It holds no marks: those are worked out from the set.',
  ),
  properties: {
    ...format('hand-in'),
    set: of,
    learner: line(120, 1),
    library: line(40),
    handedIn: moment,
    answers: record(given, 60),
    sum: hash,
  },
  required: ['format', 'version', 'set', 'learner', 'library', 'handedIn', 'answers', 'sum'],
};

export const sealedSchema: Schema = {
  ...head(
    'sealed',
    'A sealed hand-in',
    'Only the holder of the private key can open it: ECDH on P-256, HKDF with SHA-256, AES-GCM.',
  ),
  properties: {
    ...format('sealed'),
    set: of,
    key: { type: 'string', pattern: '^[0-9a-f]{16}$' },
    from: point,
    iv: { type: 'string', minLength: 16, maxLength: 16, pattern: '^[A-Za-z0-9_-]*$' },
    data: bytes(12_000_000),
  },
  required: ['format', 'version', 'set', 'key', 'from', 'iv', 'data'],
};

export const keySchema: Schema = {
  ...head(
    'key',
    'The key pair of an instructor',
    'Whoever has this file can open what was sealed to it. Keep it as you would keep the mark book.',
  ),
  properties: {
    ...format('key'),
    public: point,
    private: bytes(400),
    made: day,
  },
  required: ['format', 'version', 'public', 'private', 'made'],
};

const remark: Schema = {
  type: 'object',
  properties: {
    set: hash,
    learner: line(120, 1),
    question: id,
    marks: { type: 'number', minimum: 0, maximum: 100 },
    reason: text(1000),
    comment: text(2000),
  },
  required: ['set', 'learner', 'question'],
  additionalProperties: false,
};

export const markBookSchema: Schema = {
  ...head(
    'mark-book',
    'A mark book',
    'What the instructor decided by hand: marks changed with a reason, marks for free text, comments, the roster.',
  ),
  properties: {
    ...format('mark-book'),
    remarks: { type: 'array', maxItems: 20_000, items: remark },
    roster: { type: 'array', maxItems: 2000, items: line(120, 1) },
  },
  required: ['format', 'version', 'remarks', 'roster'],
};

export const formatSchemas = {
  set: setSchema,
  'hand-in': handInSchema,
  sealed: sealedSchema,
  key: keySchema,
  'mark-book': markBookSchema,
} as const;
