import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import type { Library } from '../calculators/exercises/answer.ts';
import { checkVariant } from '../calculators/exercises/check.ts';
import type { Exercise } from '../calculators/exercises/definition.ts';
import { markDesign } from '../calculators/exercises/design.ts';
import { readExercise } from '../calculators/exercises/reading.ts';
import { drawVariant, valuesOf } from '../calculators/exercises/variants.ts';
import type { Formula } from '../calculators/core/formula.ts';
import type { Model } from '../calculators/core/model.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { materials } from '../calculators/materials/index.ts';
import { resolvedMaterials } from '../calculators/materials/resolve.ts';
import { models } from '../calculators/models/index.ts';
import { sources } from '../calculators/sources.ts';
import { questionsOf, readingOf } from '../src/lesson/reading.ts';

const seeds = 200;
const content = new URL('../content/', import.meta.url);

const library: Library = {
  formula: (id) => (formulas as Record<string, Formula>)[id],
  model: (id) => (models as Record<string, Model>)[id],
  materials: resolvedMaterials(materials),
};

interface File {
  readonly slug: string;
  readonly text: string;
}

function filesOf(folder: string, ending: RegExp): File[] {
  const path = fileURLToPath(new URL(`${folder}/`, content));
  if (!existsSync(path)) return [];
  return readdirSync(path, { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .map((name) => ({ slug: name.replace(ending, ''), text: readFileSync(path + name, 'utf8') }));
}

interface Lesson {
  readonly slug: string;
  readonly body: string;
  readonly front: {
    readonly title?: string;
    readonly outcomes?: readonly {
      readonly id: string;
      readonly text: string;
      readonly serves?: readonly string[];
    }[];
    readonly bring?: readonly string[];
    readonly show?: string;
    readonly needs?: readonly string[];
    readonly formulas?: readonly string[];
    readonly exercises?: readonly string[];
    readonly sources?: readonly string[];
  };
}

const exerciseFiles = filesOf('exercises', /\.ya?ml$/);
const lessons: Lesson[] = filesOf('lessons', /\.mdx$/).map(({ slug, text }) => {
  const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  return { slug, front: (load(front) ?? {}) as Lesson['front'], body };
});
interface Named {
  readonly id: string;
}
const dataOf = <T>(name: string): T => load(readFileSync(new URL(name, content), 'utf8')) as T;
const misconceptions = dataOf<Named[]>('misconceptions.yaml').map(({ id }) => id);
const expected = Object.values(dataOf<Record<string, Named[]>>('trainee-outcomes.yaml'))
  .flat()
  .map(({ id }) => id);
const glossary = filesOf('glossary', /\.(?:mdx?|ya?ml)$/).map(({ slug }) => slug);
const figures = readdirSync(new URL('../src/figures/', import.meta.url)).map((name) =>
  name.replace(/\.tsx?$/, ''),
);

const readFile = ({ slug, text }: File): Exercise => readExercise(slug, load(text));

describe.each(exerciseFiles.map((file) => [file.slug, file] as const))('exercise %s', (_, file) => {
  it('reads', () => {
    expect(() => readFile(file)).not.toThrow();
  });

  it('names as {given} only what it gives', () => {
    const exercise = readFile(file);
    const known = 'given' in exercise ? { ...exercise.given, ...exercise.vary } : {};
    const unknown = (texts: readonly string[], names: object): string[] =>
      texts
        .flatMap((text) => [...text.matchAll(/\{([\w.]+)\}/g)].flatMap(([, name]) => name ?? []))
        .filter((name) => !Object.hasOwn(names, name));
    expect(unknown([exercise.question, ...exercise.hints], known)).toEqual([]);
    for (const part of 'parts' in exercise ? exercise.parts : []) {
      expect(unknown([part.question, ...part.hints], { ...known, ...part.given }), part.id).toEqual([]);
    }
  });

  it(`is sound for ${seeds} seeds: solvable, in range, no mistake right, no answer given away`, () => {
    const exercise = readFile(file);
    const problems = new Set<string>();
    for (let seed = 0; seed < seeds; seed += 1) {
      const variant = drawVariant(exercise, String(seed));
      const about = Object.entries(variant.given).map(([name, text]) => `${name} = ${text}`);
      for (const problem of checkVariant(exercise, variant, library))
        problems.add(`${problem} (${about.join(', ')})`);
    }
    expect([...problems].slice(0, 5)).toEqual([]);
  });

  it('varies something when it is computed', () => {
    const exercise = readFile(file);
    if (!('vary' in exercise)) return;
    const ways = Object.values(exercise.vary).map((variation) => valuesOf(variation).length);
    expect(
      ways.reduce((product, count) => product * count, 1),
      'different sets of numbers that vary draws',
    ).toBeGreaterThanOrEqual(4);
  });

  it('has parts that add up to its marks', () => {
    const exercise = readFile(file);
    if (exercise.kind !== 'steps') return;
    expect(
      exercise.parts.reduce((sum, part) => sum + part.marks, 0),
      'marks of the parts',
    ).toBe(exercise.marks);
  });

  it('cites a source of the bibliography', () => {
    const { source } = readFile(file);
    if (source) expect(Object.keys(sources)).toContain(source.key);
  });

  it('does not start solved, and can be solved, when it is a design', () => {
    const exercise = readFile(file);
    if (exercise.kind !== 'design') return;
    const model = library.model(exercise.model);
    if (!model) throw new Error(`there is no model "${exercise.model}"`);
    expect(markDesign(exercise, {}, model, library.materials).verdict).toBe('wrong');
    expect(markDesign(exercise, exercise.passing, model, library.materials)).toMatchObject({
      verdict: 'right',
    });
  });

  it('serves an outcome of the lesson that sets it', () => {
    const { id, outcome } = readFile(file);
    const setting = lessons.filter(({ front }) => front.exercises?.includes(id));
    expect(
      setting.map(({ slug }) => slug),
      'lessons that set it',
    ).not.toEqual([]);
    expect(
      setting.flatMap(({ front }) => front.outcomes?.map((o) => o.id) ?? []),
      'outcomes of that lesson',
    ).toContain(outcome);
  });
});

describe.each(lessons.map((lesson) => [lesson.slug, lesson] as const))('lesson %s', (_, { front, body }) => {
  const absent = (names: readonly string[] | undefined, known: readonly string[]): string[] =>
    (names ?? []).filter((name) => !known.includes(name));
  const attribute = (tag: string, name: string): string[] =>
    [...body.matchAll(new RegExp(`<${tag}\\s[^>]*?\\b${name}="([^"]+)"`, 'g'))].flatMap(
      ([, value]) => value ?? [],
    );
  const slugs = exerciseFiles.map(({ slug }) => slug);

  it('refers only to what there is', () => {
    expect(
      absent(
        front.needs,
        lessons.map(({ slug }) => slug),
      ),
      'lessons',
    ).toEqual([]);
    expect(absent(front.formulas, Object.keys(formulas)), 'formulas').toEqual([]);
    expect(absent(front.exercises, slugs), 'exercises').toEqual([]);
    expect(absent(front.sources, Object.keys(sources)), 'sources').toEqual([]);
    expect(absent(attribute('Exercise', 'id'), slugs), 'exercises in the text').toEqual([]);
    expect(absent(attribute('Formula', 'id'), Object.keys(formulas)), 'formulas in the text').toEqual([]);
    expect(absent(attribute('Calculator', 'formula'), Object.keys(formulas)), 'calculators').toEqual([]);
    expect(absent(attribute('Cite', 'key'), Object.keys(sources)), 'sources in the text').toEqual([]);
    expect(absent(attribute('Term', 'id'), glossary), 'glossary').toEqual([]);
    expect(absent(attribute('Figure', 'name'), figures), 'figures').toEqual([]);
  });

  it('sets in its text the exercises it lists, and no other', () => {
    expect(attribute('Exercise', 'id').sort(), '<Exercise id> in the text, against the front matter').toEqual(
      [...(front.exercises ?? [])].sort(),
    );
  });

  it('has what a bench lesson needs, something to show, and a question to ask', () => {
    expect(front.bring ?? [], 'bring').not.toEqual([]);
    expect(front.show ?? '', 'show').toMatch(/\w{3}/);
    expect(questionsOf(body), 'a <Predict question="…">').not.toEqual([]);
  });

  it('has at least three exercises and no more than three outcomes', () => {
    expect((front.exercises ?? []).length, 'exercises in its front matter').toBeGreaterThanOrEqual(3);
    expect((front.outcomes ?? []).length, 'outcomes').toBeLessThanOrEqual(3);
  });

  it('reads at about fourteen years, and no longer than a sitting', () => {
    const { words, age } = readingOf(body);
    expect(words, 'words of prose').toBeGreaterThan(250);
    expect(words, 'words of prose').toBeLessThan(1500);
    expect(age, 'years of age it reads at').toBeLessThan(14.5);
  });

  it('has an exercise for every outcome', () => {
    const served = exerciseFiles
      .filter(({ slug }) => front.exercises?.includes(slug))
      .map((file) => readFile(file).outcome);
    expect(
      (front.outcomes ?? []).map(({ id }) => id).filter((id) => !served.includes(id)),
      'outcomes without one',
    ).toEqual([]);
  });
});

describe('the course', () => {
  it('lists every lesson once, and only lessons there are', () => {
    const path = new URL('course.yaml', content);
    if (!existsSync(path)) {
      expect(lessons).toEqual([]);
      return;
    }
    const course = load(readFileSync(path, 'utf8')) as { units: { lessons: string[] }[] };
    const listed = course.units.flatMap((unit) => unit.lessons);
    expect([...listed].sort(), 'content/course.yaml against content/lessons').toEqual(
      lessons.map(({ slug }) => slug).sort(),
    );
  });

  it('needs of a lesson come before it', () => {
    const path = new URL('course.yaml', content);
    if (!existsSync(path)) return;
    const course = load(readFileSync(path, 'utf8')) as { units: { lessons: string[] }[] };
    const order = course.units.flatMap((unit) => unit.lessons);
    const late = lessons.flatMap(({ slug, front }) =>
      (front.needs ?? [])
        .filter((need) => order.indexOf(need) >= order.indexOf(slug))
        .map((need) => `${slug} needs ${need}`),
    );
    expect(late).toEqual([]);
  });

  it('sets a design where a plan is to be judged: sand, filling, suction, feeding, and after the pour', () => {
    const course = dataOf<{ units: { id: string; lessons: string[] }[] }>('course.yaml');
    const designs = exerciseFiles.map((file) => readFile(file)).filter(({ kind }) => kind === 'design');
    const without = ['pattern-and-sand', 'filling', 'vacuum-assist', 'feeding', 'after-the-pour'].filter(
      (id) =>
        !course.units
          .find((unit) => unit.id === id)
          ?.lessons.some((slug) =>
            lessons
              .find((lesson) => lesson.slug === slug)
              ?.front.exercises?.some((name) => designs.some((design) => design.id === name)),
          ),
    );
    expect(without).toEqual([]);
  });

  it('catches every misconception in an exercise, and names only those listed', () => {
    const caught = exerciseFiles.flatMap((file) => readFile(file).misconceptions);
    expect(
      caught.filter((id) => !misconceptions.includes(id)),
      'unknown',
    ).toEqual([]);
    expect(
      misconceptions.filter((id) => !caught.includes(id)),
      'not caught',
    ).toEqual([]);
  });

  it('serves every trainee outcome, by outcomes that each serve one', () => {
    const outcomes = lessons.flatMap(({ front }) => front.outcomes ?? []);
    const served = outcomes.flatMap(({ serves }) => serves ?? []);
    expect(
      outcomes.filter(({ serves }) => !serves?.length).map(({ id }) => id),
      'serving none',
    ).toEqual([]);
    expect(
      served.filter((id) => !expected.includes(id)),
      'unknown',
    ).toEqual([]);
    expect(
      expected.filter((id) => !served.includes(id)),
      'not served',
    ).toEqual([]);
  });

  it('logs every change of an outcome', () => {
    const logged = new Map(
      dataOf<{ id: string; text: string }[]>('outcome-log.yaml').map(({ id, text }) => [id, text] as const),
    );
    const stands = lessons.flatMap(({ front }) => front.outcomes ?? []);
    const missing = stands.filter(({ id, text }) => logged.get(id) !== text).map(({ id }) => id);
    expect(missing, 'add a line to content/outcome-log.yaml').toEqual([]);
    const gone = [...logged].filter(([id, text]) => text !== '' && !stands.some((o) => o.id === id));
    expect(
      gone.map(([id]) => id),
      "dropped: add a line with text ''",
    ).toEqual([]);
  });

  it('has no outcome id twice', () => {
    const ids = lessons.flatMap(({ front }) => front.outcomes?.map(({ id }) => id) ?? []);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });
});

describe('the words of exercises', () => {
  it('have printed apostrophes, which nothing puts in for them', () => {
    const straight = filesOf('exercises', /\.yaml$/).flatMap(({ slug, text }) =>
      (text.match(/^(?!.*(?:equation|given|vary):).*[a-z]'s\b.*$/gm) ?? []).map((line) => `${slug}: ${line}`),
    );
    expect(straight).toEqual([]);
  });
});
