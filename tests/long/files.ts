import { readMarkBook, writeMarkBook } from '../../calculators/exercises/sets/mark-book.ts';
import { readSet, withHash, writeSet, type SetFile } from '../../calculators/exercises/sets/set-file.ts';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { readMesh } from '../../calculators/meshes/read.ts';
import { classDraft } from '../exercises/sets/class-of-thirty.ts';
import { fileOf } from '../exercises/sets/course-bank.ts';
import { chance, injured, injuredData, noise, oneOf } from './draw.ts';
import type { Reader } from './reader.ts';

/** Two questions are enough: a reader does the same with each. */
const whole = classDraft();
const set = fileOf({ ...whole, picks: whole.picks.slice(0, 2) });
const hasNoWords = (reason: string): string | undefined =>
  /\p{L}{3}/u.test(reason) ? undefined : `says "${reason}"`;

/** Half of the injured sets carry a new hash, so that what is inside is looked at too. */
const sets: Reader = {
  name: 'a graded set',
  make: (random) => {
    if (chance(random, 0.3)) return injured(random, writeSet(set));
    const data = injuredData(random, set) as SetFile;
    if (typeof data !== 'object' || data === null || Array.isArray(data) || chance(random, 0.3))
      return JSON.stringify(data);
    return writeSet(withHash(data));
  },
  wrong: (text) => {
    const read = readSet(text);
    return read.ok ? undefined : hasNoWords(read.reason);
  },
};

const hash = 'a'.repeat(64);
const remarks = [
  {
    set: hash,
    learner: 'A. Learner',
    question: 'what-is-left',
    marks: 2,
    reason: 'Reads well',
    comment: 'Good.',
  },
];

const markBooks: Reader = {
  name: 'a mark book',
  make: (random) => {
    const written: unknown = JSON.parse(writeMarkBook({ remarks, roster: ['A. Learner', 'B. Learner'] }));
    const text = JSON.stringify(chance(random, 0.7) ? injuredData(random, written) : written);
    return chance(random, 0.6) ? text : injured(random, text);
  },
  wrong: (text) => {
    const read = readMarkBook(text);
    if (!read.ok) return hasNoWords(read.reason);
    const again = readMarkBook(writeMarkBook(read.value));
    return again.ok && JSON.stringify(again.value) === JSON.stringify(read.value)
      ? undefined
      : 'is written and read again as something else';
  },
};

const corners = ['0 0 0', '10 0 0', '0 10 0', '0 0 10'] as const;
const faces = [
  [0, 2, 1],
  [0, 1, 3],
  [0, 3, 2],
  [1, 2, 3],
] as const;

const stlText = `solid wedge\n${faces
  .map(
    (face) =>
      `facet normal 0 0 0\nouter loop\n${face.map((at) => `vertex ${corners[at]}`).join('\n')}\nendloop\nendfacet`,
  )
  .join('\n')}\nendsolid wedge\n`;
const objText = `${corners.map((corner) => `v ${corner}`).join('\n')}\n${faces.map((face) => `f ${face.map((at) => at + 1).join(' ')}`).join('\n')}\n`;

const stlBytes = (() => {
  const bytes = new Uint8Array(84 + 50 * faces.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, faces.length, true);
  faces.forEach((face, row) =>
    face.forEach((at, corner) =>
      corners[at].split(' ').forEach((x, axis) => {
        view.setFloat32(84 + 50 * row + 12 * (corner + 1) + 4 * axis, Number(x), true);
      }),
    ),
  );
  return String.fromCharCode(...bytes);
})();

/** A file of bytes is carried as a text with a character for each. */
const meshes: Reader = {
  name: 'a part’s file',
  make: (random) => {
    const text = oneOf(random, [stlText, objText, stlBytes, `PK\u0003\u0004${noise(random)}`]);
    return chance(random, 0.1) ? text : injured(random, text);
  },
  wrong: (text) => {
    const read = readMesh(
      Uint8Array.from(text, (character) => character.charCodeAt(0) & 255),
      'part',
    );
    if (!read.ok) return hasNoWords(JSON.stringify(read));
    const { points } = read.mesh;
    if (!points.every(Number.isFinite)) return 'has a corner that is nowhere';
    checkMesh(read.mesh);
    return undefined;
  },
};

export const readersOfFiles: readonly Reader[] = [sets, markBooks, meshes];
