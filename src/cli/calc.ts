import { readFile, writeFile } from 'node:fs/promises';
import { command } from './command.ts';

/** The command line over the calculators: answers on standard output, errors on standard error, exit code 2 for a wrong call. */
const answer = await command(process.argv.slice(2), {
  read: (path) => readFile(path, 'utf8'),
  write: (path, text) => writeFile(path, text, 'utf8'),
});
if (answer.out) process.stdout.write(`${answer.out}\n`);
if (answer.error) process.stderr.write(`calc: ${answer.error}\n`);
process.exitCode = answer.code;
