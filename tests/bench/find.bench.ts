import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { buildIndex } from '../../src/find/build.ts';
import { gather } from '../../src/find/gather.ts';
import { searchOf } from '../../src/find/search.ts';
import { findQueries } from '../site/find-queries.ts';

/** What a key costs while each of the sixty queries is typed, letter by letter, in milliseconds of the processor. */
const text = JSON.stringify(buildIndex(gather(fileURLToPath(new URL('../..', import.meta.url)))));
const begun = process.cpuUsage();
const search = searchOf(JSON.parse(text) as Parameters<typeof searchOf>[0]);
const woken = process.cpuUsage(begun);

const keys = findQueries.flatMap(({ typed }) =>
  Array.from({ length: typed.length }, (_, at) => typed.slice(0, at + 1)),
);
/** The least of five: what else the machine does only adds. */
const costs = keys
  .map((typed) => {
    const runs = Array.from({ length: 5 }, () => {
      const before = process.cpuUsage();
      search(typed, 12);
      const { user, system } = process.cpuUsage(before);
      return (user + system) / 1000;
    });
    return { typed, cost: Math.min(...runs) };
  })
  .sort((a, b) => a.cost - b.cost);
const at = (share: number): string => {
  const { typed, cost } = costs[Math.min(costs.length - 1, Math.floor(share * costs.length))]!;
  return `${cost.toFixed(2)} ms (“${typed}”)`;
};

console.log('\nA key of the search, of the processor');
console.log(
  `  index ${(text.length / 1000).toFixed(0)} kB, packed ${(gzipSync(text, { level: 9 }).length / 1000).toFixed(0)} kB; read in ${((woken.user + woken.system) / 1000).toFixed(0)} ms`,
);
console.log(
  `  ${costs.length} keys: half below ${at(0.5)}, 95 of 100 below ${at(0.95)}, the dearest ${at(1)}`,
);
