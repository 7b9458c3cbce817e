/** `npm run -s by-hand`: every example worked by hand, worked again to fifty digits from its text alone. */
import { reworked } from './examples.ts';

const all = reworked();
const sums = all.reduce((count, { claims }) => count + claims.length, 0);
const wrong = all.filter((one) => one.wrong.length > 0);
const unread = all.filter(({ claims }) => claims.length === 0);
const open = all.filter(({ claims, concluded }) => claims.length > 0 && !concluded);
console.log(
  `${all.length} examples, ${sums} sums; ${all.filter(({ concluded }) => concluded).length} come to the stated answer`,
);
for (const { of, title, wrong: claims } of wrong)
  for (const { text, worked, written } of claims)
    console.log(
      `  does not hold, ${of}, ${title}: ${text} (${worked.low.toPrecision(8)} to ${worked.high.toPrecision(8)}, not ${written.low.toPrecision(8)})`,
    );
for (const { of, title } of open) console.log(`  read, but not as far as its answer: ${of}, ${title}`);
for (const { of, title } of unread) console.log(`  no sum that can be read: ${of}, ${title}`);
process.exitCode = wrong.length > 0 ? 1 : 0;
