import { readdirSync, readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import type { Formula } from '../../calculators/core/formula.ts';
import type { Input, Model } from '../../calculators/core/model.ts';
import { unitLabel } from '../../calculators/core/print.ts';
import { unitChoices } from '../../calculators/core/quantity.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { models } from '../../calculators/models/index.ts';
import type { Document, Kind } from './document.ts';

/** The course as the search knows it, read from the sources under `root`: formulas, models, content and pages. */
export function gather(root: string): Document[] {
  const pointers = countPointers(root);
  return [
    ...Object.values(formulas).map(ofFormula),
    ...Object.values(models)
      .filter(({ id }) => id !== 'pour-plan')
      .map(ofModel),
    ...lessons(root),
    ...Object.values(materials).map(
      ({ id, name, description, words = [], composition = '', cautions = [] }): Document => ({
        ...nothing,
        kind: 'material',
        title: name,
        path: `materials/${id}/`,
        says: description,
        also: [...words, id.replaceAll('-', ' ')],
        text: [composition, ...cautions].join(' '),
      }),
    ),
    ...matters(root, 'glossary').map(({ id, data, body }) =>
      ofPart('term', `glossary/#${id}`, data, firstSentence(body), body),
    ),
    ...matters(root, 'defects').map(({ id, data, body }) =>
      ofPart(
        'defect',
        `defects/#${id}`,
        data,
        firstSentence(text(data['looks'])),
        [...texts(data['causes']), ...texts(data['remedies']), body].join(' '),
      ),
    ),
    ...exercises(root),
    ...pages,
  ].map((document) => ({ ...document, pointed: pointers.get(document.path) ?? 0 }));
}

const nothing = { also: [], defines: [], signs: [], names: [], text: '', pointed: 0 } as const;

/** How often the frontmatter of the content points to each page. */
function countPointers(root: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const folder of ['lessons', 'glossary', 'defects'])
    for (const { data } of matters(root, folder))
      for (const path of [
        ...texts(data['formulas']).map((id) => `formulas/${id}/`),
        ...texts(data['lessons']).map((id) => `lessons/${id}/`),
        ...texts(data['needs']).map((id) => `lessons/${id}/`),
        ...texts(data['see']).map((id) => `glossary/#${id}`),
      ])
        counts.set(path, (counts.get(path) ?? 0) + 1);
  return counts;
}

function ofFormula(formula: Formula): Document {
  const symbols = Object.entries(formula.symbols);
  const signs = symbols.flatMap(([symbol, { sign }]) => (sign === undefined ? [symbol] : [symbol, sign]));
  const [sought] = symbols[0]!;
  const right = formula.equation.split('=')[1] ?? '';
  const units = [...new Set(symbols.flatMap(([, spec]) => [spec.unit, spec.show ?? spec.unit]))];
  const offered = new Set<UnitSymbol>([
    ...units,
    ...units.slice(0, 2).flatMap((one) => unitChoices(one).map(({ symbol }) => symbol)),
  ]);
  return {
    ...nothing,
    kind: 'formula',
    title: formula.title,
    path: `formulas/${formula.id}/`,
    says: formula.answers,
    also: formula.words ?? [],
    defines: [
      ...(right.replace(/\s/g, '').length < 9 ? [right] : []),
      formula.symbols[sought]!.sign ?? sought,
    ],
    signs: [...signs, ...[...offered].flatMap((one) => [one, unitLabel(one)])],
    names: symbols.map(([, { name }]) => name),
    text: [...formula.assumes, ...(formula.caution ?? []), formula.id.replace(/[/-]/g, ' ')].join(' '),
  };
}

function ofModel(model: Model): Document {
  const inputs: Input[] = Object.values(model.inputs);
  const outputs = Object.values(model.outputs);
  return {
    ...nothing,
    kind: 'model',
    title: model.title,
    path: `formulas/${model.id}/`,
    says: model.answers,
    also: model.words ?? [],
    signs: [...inputs, ...outputs].flatMap((one) =>
      'sign' in one && one.sign !== undefined ? [one.sign] : [],
    ),
    names: [...inputs, ...outputs].map(({ name }) => name),
    text: [...model.assumes, ...(model.caution ?? []), model.id.replace(/[/-]/g, ' ')].join(' '),
  };
}

function lessons(root: string): Document[] {
  const course = load(readFileSync(`${root}/content/course.yaml`, 'utf8')) as {
    readonly units: readonly { readonly title: string; readonly lessons: readonly string[] | null }[];
  };
  const listed = new Set(course.units.flatMap((unit) => unit.lessons ?? []));
  return matters(root, 'lessons').flatMap(({ id, data, body }) =>
    listed.has(id)
      ? [
          {
            ...nothing,
            kind: 'lesson',
            title: text(data['title']),
            path: `lessons/${id}/`,
            says: text(data['summary']),
            names: (data['outcomes'] as readonly { readonly text: string }[]).map((one) => one.text),
            text: plain(body),
          },
        ]
      : [],
  );
}

function ofPart(kind: Kind, path: string, data: Data, says: string, body: string): Document {
  const sign = text(data['sign']);
  const unit = text(data['unit']);
  return {
    ...nothing,
    kind,
    title: text(data['title']),
    path,
    says,
    also: texts(data['also']),
    defines: sign === '' ? [] : [sign],
    signs: unit === '' || unit === '1' ? [] : [unit],
    text: plain(body),
  };
}

function exercises(root: string): Document[] {
  return readdirSync(`${root}/content/exercises`)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => {
      const data = load(readFileSync(`${root}/content/exercises/${file}`, 'utf8')) as Data;
      return {
        ...nothing,
        kind: 'exercise',
        title: text(data['title']),
        path: `exercises/${file.replace('.yaml', '')}/`,
        says: firstSentence(text(data['question']).replace(/\{\w+\}/g, '…')),
        text: texts(data['evidence']).join(' '),
      };
    });
}

type Data = Readonly<Record<string, unknown>>;

interface Matter {
  readonly id: string;
  readonly data: Data;
  readonly body: string;
}

function matters(root: string, folder: string): Matter[] {
  return readdirSync(`${root}/content/${folder}`)
    .filter((file) => /\.mdx?$/.test(file))
    .map((file) => {
      const [, head = '', body = ''] = readFileSync(`${root}/content/${folder}/${file}`, 'utf8').split(
        /^---$/m,
      );
      return { id: file.replace(/\.mdx?$/, ''), data: load(head) as Data, body };
    });
}

const text = (value: unknown): string => (typeof value === 'string' ? value : '');
const texts = (value: unknown): string[] => (Array.isArray(value) ? value.map(text) : []);

/** The prose of a lesson: tags go, the words between them stay. */
const plain = (body: string): string =>
  body
    .replace(/<[^>]*>/g, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[`*_#|{}]/g, ' ');

function firstSentence(body: string): string {
  const whole = plain(body).replace(/\s+/g, ' ').trim();
  return /^.*?[.?](?=\s|$)/.exec(whole)?.[0] ?? whole;
}

const page = (path: string, title: string, says: string, also: readonly string[] = []): Document => ({
  ...nothing,
  kind: 'page',
  title,
  path,
  says,
  also,
});

const pages: readonly Document[] = [
  page(
    'plan/',
    'Pour plan',
    'One part, one pour: will it fill, be sharp, stay out of the sand and come out sound?',
    ['plan a pour', 'pour day plan'],
  ),
  page('freeze/', 'Freeze a section', 'When is it solid, where last, and where is it thinly fed?', [
    'freeze',
    'solidification',
    'draw a section',
  ]),
  page('part/', 'From a part file', 'A mesh of the part: where it is thin, where it freezes last.', [
    'STL',
    '3MF',
    'OBJ',
    'mesh',
    'part file',
  ]),
  page('log/', 'Pour log', 'Your pours, what came out, and your own mould’s numbers.', [
    'record',
    'diary',
    'past pours',
  ]),
  page('sets/', 'Graded sets', 'Exercises chosen for a class, handed in and marked.', [
    'sets',
    'worksheet',
    'assessment',
    'marking',
    'class',
  ]),
  page('sets/build/', 'Build a set', 'Choose exercises and give them out.', ['worksheet', 'quiz']),
  page('sets/paper/', 'A set on paper', 'A worksheet for each learner, and the key.', ['worksheet', 'key']),
  page('sets/mark/', 'Mark a set', 'Every mark worked out again from the set.', ['hand-ins', 'grades']),
  page('sets/do/', 'Do a set', 'Open a set that was given out.'),
  page('hosting/', 'On a server of your own', 'It is a folder of files: how to serve, back up, hand on.', [
    'hosting',
    'server',
    'school',
  ]),
  page('about/', 'About', 'Cautions, sources, licence, and what is stored.', ['licence', 'version']),
  page('connect/', 'I know, I want', 'The formulas that lead from what you know to what you want.', [
    'which formula',
    'connect formulas',
  ]),
  page('offline/', 'Offline', 'Keep the whole course on this device.', [
    'install',
    'app',
    'no signal',
    'download',
  ]),
  page('pour-day/', 'Pour day', 'The open plan at the bench, one decision a screen, with clocks.', [
    'timer',
    'stopwatch',
    'checklist',
    'log',
  ]),
  page('charts/', 'Charts', 'The relations asked most, drawn from their formulas.', [
    'graphs',
    'nomogram',
    'plots',
  ]),
  page('print/', 'On paper', 'Wall sheets, cards, pocket book: what prints.', ['print', 'pdf']),
  page('print/wall/', 'Wall sheets', 'Units, gauge by altitude, flask, moduli, safety, one sheet each.', [
    'poster',
    'unit table',
    'conversion table',
  ]),
  page('print/cards/', 'Cards on paper', 'Formula cards of A6, four to a sheet.', ['print cards', 'A6']),
  page('print/pocket-book/', 'Pocket book', 'Every formula card by chapter, on A5.', [
    'handbook',
    'all formulas',
  ]),
  page('contents/', 'Contents', 'The whole course in order.', ['course', 'lessons']),
  page('paths/', 'Ways through the course', 'Shorter ways for who already knows some of it.'),
  page('exercises/', 'Exercises', 'Every exercise, and those that are due again.', ['practice', 'questions']),
  page('formulas/', 'Formulas', 'One card for each formula.', ['cards', 'calculators', 'equations']),
  page('materials/', 'Materials', 'Metals, moulds, patterns and crucibles with their properties.', [
    'alloys',
    'properties',
    'densities',
  ]),
  page('evidence/', 'Evidence', 'Published examples worked again, and the difference.', ['tests', 'checks']),
  page('glossary/', 'Glossary', 'The words of the trade.', ['dictionary', 'terms']),
  page('defects/', 'Defects', 'What is seen on the casting, and what it is told apart from.', ['faults']),
  page('bibliography/', 'Bibliography', 'The works that the numbers come from.', ['books', 'references']),
  page('about/#cautions', 'Cautions', 'What these pages cannot know, and who decides.', [
    'safety',
    'disclaimer',
  ]),
  page('about/#stored', 'What is stored on this device', 'Nothing leaves it.', ['privacy', 'cookies']),
  page('teaching/', 'For who teaches', 'What to bring, what to show, what is asked.', [
    'instructor',
    'teacher',
  ]),
];
