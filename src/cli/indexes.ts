/**
 * The indexes of formulas, materials and models are derived from the files found, so that adding one is
 * adding one file. A file belongs to an index when it calls the index's `define…` function.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const calculators = fileURLToPath(new URL('../../calculators', import.meta.url));

export interface Index {
  readonly name: 'formulas' | 'materials' | 'models';
  readonly type: 'Formula' | 'Material' | 'Model';
  readonly from: string;
  readonly file: string;
}

export const indexes: readonly Index[] = [
  index('formulas', 'Formula', 'formula'),
  index('materials', 'Material', 'material'),
  index('models', 'Model', 'model'),
];

function index(name: Index['name'], type: Index['type'], core: string): Index {
  return { name, type, from: `../core/${core}.ts`, file: join(calculators, name, 'index.ts') };
}

interface Member {
  readonly id: string;
  readonly constant: string;
  readonly path: string;
}

/** The text the index should have now. Throws a sentence when a file does not have the shape expected. */
export function indexText({ name, type, from }: Index): { content: string; count: number } {
  const folder = join(calculators, name);
  const members = filesUnder(folder)
    .flatMap((file) => member(file, folder, name, type))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const [at, one] of members.entries()) {
    const next = members[at + 1];
    if (next?.id === one.id) throw new Error(`the id "${one.id}" is used by ${one.path} and by ${next.path}`);
  }
  const lines = [
    '// Written by `npm run index` from the files beside it; change those and run it again.',
    `import type { ${type} } from '${from}';`,
    ...members.map(({ constant, id, path }) => `import { ${imported(constant, id)} } from './${path}';`),
    '',
    `export const ${name}: Readonly<Record<string, ${type}>> = {`,
    ...members.map(({ constant, id }) => entry(id, local(constant, id))),
    '};',
    '',
  ];
  const content = members.length === 0 ? lines.join('\n').replace('{\n};', '{};') : lines.join('\n');
  return { content, count: members.length };
}

function filesUnder(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && file !== 'index.ts')
    .map((file) => join(folder, file));
}

function member(file: string, folder: string, name: Index['name'], type: Index['type']): Member[] {
  const text = readFileSync(file, 'utf8');
  const path = relative(folder, file).split(sep).join('/');
  const defined = [...text.matchAll(/export const (\w+)(?:: \w+)? = define(Formula|Material|Model)\b/g)];
  const [first] = defined;
  const constant = first?.[1];
  if (first === undefined || constant === undefined) {
    // What several members share lives beside them; every file of a chapter is a formula.
    if (name !== 'formulas' || !path.includes('/')) return [];
    throw new Error(`formulas/${path} exports no formula; write "export const … = defineFormula({ … })"`);
  }
  if (defined.length > 1)
    throw new Error(`${name}/${path} exports ${defined.length} definitions; one file, one`);
  if (first[2] !== type) throw new Error(`${name}/${path} defines a ${first[2]}, not a ${type}`);
  const id = /\bid: '([^']+)'/.exec(text.slice(first.index))?.[1];
  if (id === undefined) throw new Error(`${name}/${path} has no id`);
  return [{ id, constant, path }];
}

/** Two chapters may both have a `time`: the local name is the id in camel case, which is unique. */
function local(constant: string, id: string): string {
  const camel = id.replace(/[-/](\w)/g, (_, letter: string) => letter.toUpperCase()).replace(/^\d/, '_$&');
  return camel === constant || !/^\w+$/.test(camel) ? constant : camel;
}

function imported(constant: string, id: string): string {
  const name = local(constant, id);
  return name === constant ? constant : `${constant} as ${name}`;
}

function entry(id: string, name: string): string {
  return id === name ? `  ${name},` : /^[A-Za-z_]\w*$/.test(id) ? `  ${id}: ${name},` : `  '${id}': ${name},`;
}
