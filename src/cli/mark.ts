import type { Model } from '../../calculators/core/model.ts';
import {
  classRows,
  createPile,
  totalOf,
  waitingOf,
  type Row,
} from '../../calculators/exercises/sets/class-table.ts';
import { classCsv, separators, type Separator } from '../../calculators/exercises/sets/csv.ts';
import { codeMark, receive } from '../../calculators/exercises/sets/hand-in.ts';
import { itemAnalysis, outcomesReached } from '../../calculators/exercises/sets/item-analysis.ts';
import { emptyBook, readMarkBook, rosterFrom } from '../../calculators/exercises/sets/mark-book.ts';
import { libraryOf, markerFor } from '../../calculators/exercises/sets/marking-hand-ins.ts';
import { resultsJson, xapiStatements } from '../../calculators/exercises/sets/records.ts';
import { fingerprint, readSet, type GradedSet } from '../../calculators/exercises/sets/set-file.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { inflate } from '../platform/deflate.ts';
import { openerWith, readKey, type KeyFile } from '../platform/seal.ts';
import { UsageError, type Answer, type Call, type Files } from './command.ts';

const modelOf = (id: string): Model | undefined =>
  Object.hasOwn(models, id) ? (models as Record<string, Model>)[id] : undefined;

/** Marks hand-ins by a set: every mark worked out from the set, those that cannot be read named one by one. */
export async function markCommand(call: Call, files: Files): Promise<Answer> {
  const { options } = call;
  const [setPath, ...paths] = call.words;
  if (setPath === undefined || paths.length === 0)
    throw new UsageError('which set, and which hand-ins? Give the file of the set, then the hand-ins');
  const sets = [setFrom(setPath, await readFileOf(setPath, files))];
  const key = await optional(options.get('key'), files, readKeyFile);
  const book = (await optional(options.get('book'), files, readBook)) ?? emptyBook;
  const roster = (await optional(options.get('roster'), files, (_, text) => rosterFrom(text))) ?? book.roster;
  const separator = (options.get('separator') ?? 'comma') as Separator;
  if (!Object.hasOwn(separators, separator))
    throw new UsageError(`--separator is one of ${Object.keys(separators).join(', ')}`);

  const sources: (readonly [string, string])[] = [];
  for (const path of paths) {
    const text = await files.read(path).catch(() => undefined);
    if (text === undefined) throw new UsageError(`cannot read ${path}`);
    // Other editions of the set may stand among the hand-ins.
    const other = text.includes('"warm-mould-set"') ? readSet(text) : undefined;
    if (other?.ok) sets.push(other.value);
    else sources.push(...piecesOf(path, text));
  }
  const pile = createPile();
  const opener = { inflate, ...(key && { open: openerWith([key]) }) };
  const markers = new Map(sets.map((set) => [set.hash, markerFor(set, libraryOf(set, modelOf))]));
  for (const [source, text] of sources)
    pile.add(source, await receive(text, sets, opener), (set) => markers.get(set.hash)!);

  const [set] = sets as [GradedSet];
  const rows = classRows(
    pile.attempts.filter((attempt) => attempt.set.id === set.id),
    keepOf(options.get('keep'), set),
    book.remarks,
    roster,
  );
  const whole = options.has('csv')
    ? classCsv(set, rows, book.remarks, separator)
    : options.has('json')
      ? resultsJson(set, rows, pile.refused, book.remarks)
      : options.has('xapi')
        ? xapiStatements(rows, book.remarks, options.get('xapi')!)
        : `${report(set, rows, book.remarks)}\n`;
  const notes = [
    ...changedModels(set),
    ...pile.refused.map(({ source, why, reason }) => `${source}: ${why}. ${reason}`),
  ];
  const error = notes.length > 0 ? { error: notes.join('\ncalc: ') } : {};
  const code = rows.some(({ counted }) => counted) ? 0 : 1;
  const target = options.get('out');
  if (target === undefined) return { code, out: whole.trimEnd(), ...error };
  // To the byte what the page saves.
  await files.write(target, whole).catch(() => {
    throw new UsageError(`cannot write ${target}`);
  });
  return { code, out: `written to ${target}`, ...error };
}

/** A file of one hand-in, or of several codes, each beginning a line. */
function piecesOf(path: string, text: string): (readonly [string, string])[] {
  const codes = text.split(/^(?=wm1-)/m).filter((piece) => piece.trim() !== '');
  if (!text.trimStart().startsWith(codeMark) || codes.length < 2) return [[path, text]];
  return codes.map((code, at) => [`${path}, code ${at + 1}`, code] as const);
}

function setFrom(path: string, text: string): GradedSet {
  const read = readSet(text);
  if (!read.ok) throw new UsageError(`${path}: ${read.reason}`);
  return read.value;
}

function readKeyFile(path: string, text: string): KeyFile {
  const read = readKey(text);
  if (!read.ok) throw new UsageError(`${path}: ${read.reason}`);
  return read.value;
}

function readBook(path: string, text: string) {
  const read = readMarkBook(text);
  if (!read.ok) throw new UsageError(`${path}: ${read.reason}`);
  return read.value;
}

async function readFileOf(path: string, files: Files): Promise<string> {
  return files.read(path).catch(() => {
    throw new UsageError(`cannot read ${path}`);
  });
}

async function optional<T>(path: string | undefined, files: Files, use: (path: string, text: string) => T) {
  return path === undefined ? undefined : use(path, await readFileOf(path, files));
}

function keepOf(word: string | undefined, set: GradedSet): GradedSet['rules']['keep'] {
  if (word === undefined) return set.rules.keep;
  if (word === 'first' || word === 'last' || word === 'best') return word;
  throw new UsageError('--keep is one of first, last, best');
}

/** Models are code, so a later library can compute otherwise than the one the set was made with. */
function changedModels(set: GradedSet): string[] {
  const stock = resolvedMaterials(materials);
  return Object.entries(set.models).flatMap(([id, before]) => {
    const model = modelOf(id);
    if (!model)
      return [`the model ${id} of this set is not in this library: its questions wait for a person`];
    return fingerprint(model, Object.keys(set.materials).length > 0 ? set.materials : stock) === before
      ? []
      : [`the model ${id} computes otherwise than when the set was made: look at its questions`];
  });
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function report(set: GradedSet, rows: readonly Row[], remarks: Parameters<typeof totalOf>[1]): string {
  const wide = Math.max(8, ...rows.map(({ learner }) => [...learner].length));
  const table = rows.map(({ learner, counted }) => {
    const name = learner + ' '.repeat(wide - [...learner].length);
    if (!counted) return `${name}  not handed in`;
    const waiting = waitingOf(counted, remarks);
    return `${name}  ${String(totalOf(counted, remarks)).padStart(4)} of ${counted.set.marks}${waiting > 0 ? `, ${waiting} to be marked by hand` : ''}`;
  });
  const items = itemAnalysis(set, rows, remarks).flatMap((item, at) => [
    `${at + 1} ${item.title}: ${item.facility === undefined ? (item.waiting > 0 ? `${item.waiting} to be marked by hand` : 'nobody yet') : `${percent(item.facility)} of its marks`}` +
      (item.discrimination === undefined ? '' : `, discrimination ${item.discrimination.toFixed(2)}`),
    ...item.ways
      .filter(({ recognised }) => recognised)
      .map(({ count, says }) => `    ${count} of ${item.count}: ${says}`),
  ]);
  const missing = outcomesReached(set, rows, remarks).filter(({ reached }) => !reached);
  return [
    `${set.title}, edition ${set.edition}`,
    ...table,
    '',
    ...items,
    '',
    ...missing.map(({ text, share }) => `not reached (${percent(share)}): ${text}`),
  ].join('\n');
}
