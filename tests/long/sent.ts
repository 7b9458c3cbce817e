import { inflateRawSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { classCsv } from '../../calculators/exercises/sets/csv.ts';
import { createPile, classRows } from '../../calculators/exercises/sets/class-table.ts';
import {
  pack,
  receive,
  shortHandIn,
  withSum,
  writeHandIn,
  type HandIn,
} from '../../calculators/exercises/sets/hand-in.ts';
import { libraryOf, markerFor } from '../../calculators/exercises/sets/marking-hand-ins.ts';
import { gradedSet } from '../../calculators/exercises/sets/set-file.ts';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { readMesh } from '../../calculators/meshes/read.ts';
import { writeCsv } from '../../calculators/pour-log/csv.ts';
import { demoLog } from '../../calculators/pour-log/demo.ts';
import { mergePours } from '../../calculators/pour-log/merge.ts';
import { readLog, writeLog } from '../../calculators/pour-log/record.ts';
import { keptFrom } from '../../src/islands/exercise-store.ts';
import { emptyTee, readSquares, writeSquares } from '../../src/islands/freeze/squares.ts';
import { classDraft, handInOf, pupils } from '../exercises/sets/class-of-thirty.ts';
import { fileOf, modelOf } from '../exercises/sets/course-bank.ts';
import { chance, injured, injuredData, noise, oneOf } from './draw.ts';
import type { Reader } from './reader.ts';

const hasNoWords = (reason: string): string | undefined =>
  /\p{L}{3}/u.test(reason) ? undefined : `says "${reason}"`;

/** Cells of a table in text, as a spreadsheet takes them (RFC 4180). */
export function cellsOf(text: string): { readonly cell: string; readonly quoted: boolean }[][] {
  const rows: { cell: string; quoted: boolean }[][] = [[]];
  for (const [all, bare, quoted, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    if (all === '') break;
    rows.at(-1)!.push({ cell: bare?.replaceAll('""', '"') ?? quoted ?? '', quoted: bare !== undefined });
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

/** What a spreadsheet would work out instead of showing it. */
const runs = (text: string): string | undefined => {
  const bad = cellsOf(text)
    .flat()
    .find(({ cell }) => /^[=+\-@\t\r]/.test(cell) && !/^-?\d+(?:\.\d+)?(?:e[-+]?\d+)?$/.test(cell));
  return bad && `a spreadsheet would run ${JSON.stringify(bad.cell)}`;
};

// The pour log

const pours = demoLog().slice(0, 3);

const logs: Reader = {
  name: 'a pour log',
  make: (random) => {
    const written: unknown = JSON.parse(writeLog(pours));
    const text = JSON.stringify(chance(random, 0.8) ? injuredData(random, written) : written);
    return chance(random, 0.7) ? text : injured(random, text);
  },
  wrong: (text) => {
    const read = readLog(text);
    const unsaid = read.problems.find((problem) => hasNoWords(problem) !== undefined);
    if (unsaid !== undefined) return `says "${unsaid}"`;
    const again = readLog(writeLog(read.pours));
    if (again.problems.length > 0 || JSON.stringify(again.pours) !== JSON.stringify(read.pours))
      return 'is written and read again as something else';
    const once = mergePours(pours, read.pours);
    const twice = mergePours(once.pours, read.pours);
    if (twice.added > 0 || twice.renewed > 0) return 'brings something new when it is brought in again';
    if (!pours.every(({ id }) => once.pours.some((pour) => pour.id === id)))
      return 'loses a pour that was kept';
    const table = writeCsv(read.pours);
    const rows = cellsOf(table);
    const lines = read.pours.reduce((sum, { found }) => sum + Math.max(1, found.sections.length), 1);
    if (rows.length !== lines || rows.some((row) => row.length !== rows[0]!.length))
      return `is a table of ${rows.length} lines for ${lines}`;
    return runs(table);
  },
};

// Hand-ins

const whole = classDraft();
const set = gradedSet(fileOf({ ...whole, picks: whole.picks.slice(0, 3) }));
const sent = pupils.slice(0, 4).map((pupil) => handInOf(set, pupil));
const marker = markerFor(set, libraryOf(set, modelOf));
const opener = {
  inflate: (bytes: Uint8Array<ArrayBuffer>, most: number) =>
    Promise.resolve().then(() => new Uint8Array(inflateRawSync(bytes, { maxOutputLength: most }))),
};
const codes = await Promise.all(
  sent.map((handIn) => pack(shortHandIn(handIn, set), (bytes) => Promise.resolve(stored(bytes)))),
);

/** Deflate that packs nothing, so that an injury of the code is one of the text. */
function stored(bytes: Uint8Array): Uint8Array {
  const { length } = bytes;
  return new Uint8Array([1, length & 255, length >> 8, ~length & 255, (~length >> 8) & 255, ...bytes]);
}

/** Half of the injured ones carry a new sum, so that what is inside is looked at too. */
const handIns: Reader = {
  name: 'a hand-in',
  make: (random) => {
    const handIn = oneOf(random, sent);
    const roll = random.uniform();
    if (roll < 0.15) return injured(random, oneOf(random, codes));
    if (roll < 0.3) return injured(random, writeHandIn(handIn));
    if (roll < 0.45) return JSON.stringify(injuredData(random, JSON.parse(shortHandIn(handIn, set))));
    const data = injuredData(random, handIn);
    if (typeof data !== 'object' || data === null || Array.isArray(data) || roll < 0.6)
      return JSON.stringify(data);
    return writeHandIn(withSum(data as HandIn));
  },
  wrong: async (text) => {
    const received = await receive(text, [set], opener);
    if (!received.ok) return hasNoWords(received.reason);
    const { handIn } = received;
    if (!Object.keys(handIn.answers).every((id) => set.questions.some((question) => question.id === id)))
      return 'answers what the set does not ask';
    const { marks, of, questions } = marker(handIn);
    const odd = questions.find((one) => !Number.isInteger(one.marks) || one.marks < 0 || one.marks > one.of);
    if (odd) return `is given ${odd.marks} of ${odd.of} for ${odd.id}`;
    if (marks !== questions.reduce((sum, one) => sum + one.marks, 0) || of !== set.marks)
      return `is given ${marks} of ${of}`;
    const pile = createPile();
    pile.add('it', received, () => marker);
    const table = classCsv(set, classRows(pile.attempts, set.rules.keep));
    return runs(table.slice(1));
  },
};

// A part in a zip

const solid = `<model unit="millimeter"><resources><object id="1"><mesh><vertices>
<vertex x="0" y="0" z="0"/><vertex x="10" y="0" z="0"/><vertex x="0" y="10" z="0"/><vertex x="0" y="0" z="10"/>
</vertices><triangles><triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/>
<triangle v1="0" v2="3" v3="2"/><triangle v1="1" v2="2" v3="3"/></triangles></mesh></object>
<object id="2"><components><component objectid="1" transform="1 0 0 0 1 0 0 0 -1 5 5 5"/></components></object>
</resources><build><item objectid="2"/><item objectid="1"/></build></model>`;

const zipped = (text: string, level: 0 | 6): string =>
  String.fromCharCode(...zipSync({ '3D/3dmodel.model': strToU8(text) }, { level, mtime: '2026-01-01' }));

const parts: Reader = {
  name: 'a part in a zip',
  make: (random) => {
    const level = oneOf(random, [0, 6] as const);
    return chance(random, 0.6)
      ? zipped(injured(random, solid), level)
      : injured(random, zipped(solid, level));
  },
  wrong: (text) => {
    const read = readMesh(
      Uint8Array.from(text, (character) => character.charCodeAt(0) & 255),
      'part.3mf',
    );
    if (!read.ok) return hasNoWords(JSON.stringify(read));
    if (!read.mesh.points.every(Number.isFinite)) return 'has a corner that is nowhere';
    checkMesh(read.mesh);
    return undefined;
  },
};

// What a device keeps

const mark = { verdict: 'wrong', unit: 'right', marks: 0, of: 2, says: ['Not yet.'] };

const keptExercises: Reader = {
  name: 'an exercise kept on the device',
  make: (random) => {
    const kept = { seed: '7', answers: { answer: '4 s' }, chosen: [1, 0], hints: 1, tried: true };
    const text = JSON.stringify(injuredData(random, { ...kept, marked: { answer: mark } }));
    return chance(random, 0.6) ? text : injured(random, text);
  },
  wrong: (text) => {
    const kept = keptFrom(text);
    if (!kept) return undefined;
    if (!Object.values(kept.answers).every((answer) => typeof answer === 'string'))
      return 'has an answer that is no text';
    if (!kept.chosen.every(Number.isInteger)) return 'chooses what has no place';
    if (!(Number.isInteger(kept.hints) && kept.hints >= 0)) return `has seen ${kept.hints} hints`;
    const again = keptFrom(JSON.stringify(kept));
    return JSON.stringify(again) === JSON.stringify(kept) ? undefined : 'is kept again as something else';
  },
};

const tee = writeSquares(emptyTee());

const drawings: Reader = {
  name: 'a drawing of squares',
  make: (random) => (chance(random, 0.05) ? noise(random) : injured(random, tee)),
  wrong: (text) => {
    const sheet = readSquares(text);
    if (!sheet) return undefined;
    if (sheet.squares.length !== sheet.width * sheet.height) return `has ${sheet.squares.length} squares`;
    const again = readSquares(writeSquares(sheet));
    return again && String(again.squares) === String(sheet.squares) ? undefined : 'is drawn again otherwise';
  },
};

export const readersOfWhatIsSent: readonly Reader[] = [logs, handIns, parts, keptExercises, drawings];
