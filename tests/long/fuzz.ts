import { createRandom } from '../../calculators/core/random.ts';
import type { Reader } from './reader.ts';

export interface Fault {
  /** The number of the input, from which it is made again. */
  readonly at: number;
  readonly input: string;
  readonly what: string;
}

/** Milliseconds of the processor no single input may take: a reader that can be stalled by a text is broken too. */
const longest = 500;

const inputAt = ({ name, make }: Reader, at: number): string => make(createRandom(`${name} ${at}`));

async function wrongWith({ wrong }: Reader, input: string): Promise<string | undefined> {
  try {
    return await wrong(input);
  } catch (error) {
    return `throws ${String(error)}`;
  }
}

/** The shortest input found, by taking pieces out, that is wrong as well. */
async function shortened(reader: Reader, input: string): Promise<string> {
  let short = input;
  for (let size = Math.ceil(short.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let at = 0; at + size <= short.length; at += 1) {
      const without = short.slice(0, at) + short.slice(at + size);
      if (short.length < 2000 && (await wrongWith(reader, without)) !== undefined) {
        short = without;
        at -= 1;
      }
    }
  }
  return short;
}

/** Puts `count` inputs to a reader, from number `from` on; the faults found, at most five. */
export async function fuzz(reader: Reader, count: number, from = 0): Promise<Fault[]> {
  const faults: Fault[] = [];
  for (let at = from; at < from + count && faults.length < 5; at += 1) {
    const input = inputAt(reader, at);
    const start = process.cpuUsage();
    const what = await wrongWith(reader, input);
    const took = millisecondsSince(start);
    if (what !== undefined) {
      const short = await shortened(reader, input);
      faults.push({ at, input: short, what: (await wrongWith(reader, short)) ?? what });
    } else if (took > longest && (await tookAgain(reader, input)) > longest) {
      faults.push({ at, input, what: `takes ${took.toFixed(0)} ms` });
    }
  }
  return faults;
}

/** Timed a second time, since making room in memory may have been what took the time. */
async function tookAgain(reader: Reader, input: string): Promise<number> {
  const start = process.cpuUsage();
  await wrongWith(reader, input);
  return millisecondsSince(start);
}

/** Of this program alone: on a busy machine a clock counts the others too. */
function millisecondsSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}
