import type { Formula } from '../../calculators/core/formula.ts';
import type { Model } from '../../calculators/core/model.ts';
import { didYouMean } from '../../calculators/core/nearest.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { models } from '../../calculators/models/index.ts';
import { describeFormula, describeModel } from './describe.ts';
import { markCommand } from './mark.ts';
import { planCommand } from './plan.ts';
import { solveFormula, solveModel } from './solve.ts';

export interface Answer {
  readonly code: 0 | 1 | 2;
  readonly out?: string;
  readonly error?: string;
}

export interface Files {
  readonly read: (path: string) => Promise<string>;
  readonly write: (path: string, text: string) => Promise<void>;
}

/** A call that cannot be carried out as written: exit code 2. */
export class UsageError extends Error {
  override name = 'UsageError';
}

const usage = `Usage: npm run -s calc -- COMMAND

  list [WORD]                        every formula and model, or those that mention WORD
  show ID                            equation, symbols, ranges, assumptions, cautions, sources
  solve ID NAME=QUANTITY … [--for SYMBOL] [--json]
                                     e.g. solve filling/velocity h="40 mm" dp="15 kPa" --for v
                                     names left out take their usual value, and it says so
  solve ID --input FILE.json         the same with the quantities in a file: {"h": "40 mm"}
  plan FILE.json [--json] [--out FILE]
                                     every decision of a pour plan saved from the plan page
  mark SET HAND-INS… [--csv | --json | --xapi HOME] [--out FILE]
                                     marks hand-ins, files or codes, by a graded set; other editions
                                     of the set may stand among them
       --key FILE  --book FILE  --roster FILE  --keep first|last|best  --separator comma|semicolon|tab

A quantity is a number with its unit, and may carry its doubt: "150 mm ± 5 mm", "15 inHg", "1 3/8 in".
Exit code: 0 answered, 1 no answer with these numbers, 2 the call could not be read.`;

const everything: Readonly<Record<string, Formula | Model>> = { ...formulas, ...models };
const isModel = (thing: Formula | Model): thing is Model => 'run' in thing;

function find(id: string | undefined): Formula | Model {
  if (id === undefined)
    throw new UsageError('which one? Give an id, e.g. filling/velocity; "list" shows them all');
  const found = Object.hasOwn(everything, id) ? everything[id] : undefined;
  if (!found) {
    throw new UsageError(
      `no formula or model "${id}"${didYouMean(id, Object.keys(everything)) || '; "list" shows them all'}`,
    );
  }
  return found;
}

function list(word: string | undefined): Answer {
  const wanted = word?.toLowerCase();
  const rows = Object.values(everything).filter((thing) => {
    if (!wanted) return true;
    const text = [thing.id, thing.title, thing.answers, ...(thing.words ?? [])].join(' ').toLowerCase();
    return text.includes(wanted);
  });
  if (rows.length === 0) return { code: 1, error: `nothing mentions "${word}"` };
  const wide = Math.max(...rows.map(({ id }) => id.length));
  return { code: 0, out: rows.map(({ id, title }) => `${id.padEnd(wide)}  ${title}`).join('\n') };
}

/** What follows the command, with `--name value` and `--flag` taken out. */
export interface Call {
  readonly words: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}

const withValue = new Set(['for', 'input', 'out', 'key', 'book', 'roster', 'keep', 'separator', 'xapi']);
const flags = new Set(['json', 'csv', 'help']);

function readCall(args: readonly string[]): Call {
  const words: string[] = [];
  const options = new Map<string, string>();
  for (let i = 0; i < args.length; i += 1) {
    const arg = args[i]!;
    if (!arg.startsWith('--')) {
      words.push(arg);
      continue;
    }
    const [name = '', inline] = arg.slice(2).split(/=(.*)/s);
    if (withValue.has(name)) {
      const value = inline ?? args[(i += 1)];
      if (value === undefined) throw new UsageError(`--${name} needs a value after it`);
      options.set(name, value);
    } else if (flags.has(name)) options.set(name, 'yes');
    else throw new UsageError(`no option "--${name}"${didYouMean(name, [...withValue, ...flags])}`);
  }
  return { words, options };
}

async function carryOut(args: readonly string[], files: Files): Promise<Answer> {
  const [name, ...rest] = args;
  if (name === undefined || name === 'help' || name === '--help') return { code: name ? 0 : 2, out: usage };
  const call = readCall(rest);
  if (call.options.has('help')) return { code: 0, out: usage };
  switch (name) {
    case 'list':
      return list(call.words[0]);
    case 'show': {
      const thing = find(call.words[0]);
      return { code: 0, out: isModel(thing) ? describeModel(thing) : describeFormula(thing) };
    }
    case 'solve': {
      const thing = find(call.words[0]);
      return isModel(thing) ? solveModel(thing, call, files) : solveFormula(thing, call, files);
    }
    case 'plan':
      return planCommand(call, files);
    case 'mark':
      return markCommand(call, files);
    default:
      throw new UsageError(
        `no command "${name}"${didYouMean(name, ['list', 'show', 'solve', 'plan', 'mark', 'help'])}\n${usage}`,
      );
  }
}

/** Carries out one call; never throws for what a user typed. */
export async function command(args: readonly string[], files: Files): Promise<Answer> {
  try {
    return await carryOut(args, files);
  } catch (error) {
    if (error instanceof UsageError) return { code: 2, error: error.message };
    throw error;
  }
}
