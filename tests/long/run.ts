/**
 * `npm run -s fuzz [-- count [part of a name]]`: a million generated inputs to every reader of text, beside
 * `tests/fuzz.test.ts`, which puts ten thousand to each. Prints the rate, and any input that was read wrongly.
 */
import { fuzz } from './fuzz.ts';
import { readers } from './parsers.ts';

const [count = '1000000', wanted = ''] = process.argv.slice(2);
const inputs = Number(count);
let wrong = 0;

for (const reader of readers.filter(({ name }) => name.includes(wanted))) {
  const start = performance.now();
  const faults = await fuzz(reader, inputs);
  const seconds = (performance.now() - start) / 1000;
  wrong += faults.length;
  console.log(
    `${reader.name}: ${faults.length > 0 ? `${faults.length} wrong` : `${inputs.toLocaleString('en-GB')} inputs, none wrong`}, ${seconds.toFixed(0)} s`,
  );
  for (const { at, input, what } of faults)
    console.log(`  input ${at} ${JSON.stringify(input)}\n    ${what}`);
}
process.exitCode = wrong > 0 ? 1 : 0;
