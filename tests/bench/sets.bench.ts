import { classRows, createPile } from '../../calculators/exercises/sets/class-table.ts';
import { classCsv } from '../../calculators/exercises/sets/csv.ts';
import { receive, writeHandIn } from '../../calculators/exercises/sets/hand-in.ts';
import { itemAnalysis } from '../../calculators/exercises/sets/item-analysis.ts';
import { libraryOf, markerFor } from '../../calculators/exercises/sets/marking-hand-ins.ts';
import { inflate } from '../../src/platform/deflate.ts';
import { makeKey, openerWith, seal } from '../../src/platform/seal.ts';
import { classDraft, handInOf, pupils } from '../exercises/sets/class-of-thirty.ts';
import { modelOf, setOf } from '../exercises/sets/course-bank.ts';

/** Five hundred hand-ins of a set of nine questions, each learner with numbers of their own. */
const set = setOf(classDraft());
const key = await makeKey('2026-03-01');
const handIns = Array.from({ length: 500 }, (_, at) => {
  const pupil = pupils[at % pupils.length]!;
  return handInOf(set, { ...pupil, name: `${pupil.name} ${at}` }, at % 60);
});
const open = handIns.map(writeHandIn);
const sealed = await Promise.all(
  handIns.map(async (one) => JSON.stringify(await seal(writeHandIn(one), one.set, key.public))),
);

async function timed(name: string, work: () => unknown): Promise<void> {
  const start = performance.now();
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  const wall = (performance.now() - start).toFixed(0).padStart(6);
  console.log(
    `${name.padEnd(40)} ${wall} ms, of the processor ${((user + system) / 1000).toFixed(0).padStart(6)} ms`,
  );
}

const pileOf = async (texts: readonly string[]) => {
  const pile = createPile();
  const marker = markerFor(set, libraryOf(set, modelOf));
  const opener = { inflate, open: openerWith([key]) };
  for (const [at, text] of texts.entries())
    pile.add(String(at), await receive(text, [set], opener), () => marker);
  if (pile.attempts.length !== 500) throw new Error('not all were marked');
  return pile.attempts;
};

console.log('\nGraded sets, 500 hand-ins of nine questions');
await timed('read and marked, open', () => pileOf(open));
await timed('read and marked, sealed', () => pileOf(sealed));
const attempts = await pileOf(open);
await timed('class table', () => classRows(attempts, 'best'));
const rows = classRows(attempts, 'last');
await timed('item analysis', () => itemAnalysis(set, rows));
await timed('CSV', () => classCsv(set, rows));
