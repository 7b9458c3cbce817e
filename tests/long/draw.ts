import type { Random } from '../../calculators/core/random.ts';

/** What generated inputs are made of. Every draw comes from a seeded generator, so an input can be made again. */
export const oneOf = <T>(random: Random, list: readonly T[]): T => list[random.uniformInt(list.length)]!;

export const chance = (random: Random, share: number): boolean => random.uniform() < share;

/** Characters that have broken readers of text before: signs, brackets, other scripts, half a surrogate pair. */
const awkward = [
  ...'0123456789.,+-−–±/*^()[]{}<>=;:~&#%?!|\\"\'` \t\n\r\0',
  ...'eEkmgsKMPa°ΔµΩ²³½¼×·′″ﬀé٣',
  '\u00a0',
  '\u200b',
  '\u202e',
  '\ufeff',
  '\ud83d\ude00',
  '\ud800',
  '\udc00',
  '__proto__',
  'constructor',
  'NaN',
  'Infinity',
  '1e999',
  '%zz',
  '%E0%A4%A',
];

/** The text with up to six small injuries: pieces taken out, doubled, moved, or put in. */
export function injured(random: Random, text: string): string {
  let hurt = text;
  for (let left = random.uniformInt(7); left > 0; left -= 1) {
    const at = random.uniformInt(hurt.length + 1);
    const to = Math.min(hurt.length, at + 1 + random.uniformInt(4));
    const [before, piece, after] = [hurt.slice(0, at), hurt.slice(at, to), hurt.slice(to)];
    const how = random.uniformInt(5);
    if (how === 0) hurt = before + after;
    else if (how === 1) hurt = before + piece + piece + after;
    else if (how === 2) hurt = after + piece + before;
    else if (how === 3) hurt = before + oneOf(random, awkward) + after;
    else hurt = before + oneOf(random, awkward) + piece + after;
  }
  return hurt.slice(0, 20_000);
}

export function noise(random: Random, most = 24): string {
  return Array.from({ length: random.uniformInt(most + 1) }, () => oneOf(random, awkward)).join('');
}

type Data = unknown;
const strange: readonly Data[] = [
  null,
  true,
  false,
  0,
  -1,
  1e308,
  '',
  ' ',
  'yes',
  '10 mm',
  '1,234',
  [],
  {},
  [[]],
  { constructor: {} },
];

/** Every place in a tree of data, as the holder and its key. */
function placesIn(data: Data, found: { holder: Record<string, Data>; key: string }[] = []) {
  if (typeof data !== 'object' || data === null) return found;
  for (const key of Object.keys(data)) {
    const holder = data as Record<string, Data>;
    found.push({ holder, key });
    placesIn(holder[key], found);
  }
  return found;
}

/** A copy of the data with up to four of its places injured: taken away, replaced, renamed or made into noise. */
export function injuredData(random: Random, data: Data): Data {
  const copy: Data = structuredClone(data);
  for (let left = random.uniformInt(5); left > 0; left -= 1) {
    const places = placesIn(copy);
    if (places.length === 0) return oneOf(random, strange);
    const { holder, key } = oneOf(random, places);
    const how = random.uniformInt(6);
    const value = holder[key];
    if (how === 0) Reflect.deleteProperty(holder, key);
    else if (how === 1) holder[key] = structuredClone(oneOf(random, strange));
    else if (how === 2) holder[key] = structuredClone(oneOf(random, places).holder);
    else if (how === 3) holder[noise(random, 4)] = value;
    else if (typeof value === 'string') holder[key] = injured(random, value);
    else holder[key] = noise(random, 8);
  }
  // As a file would give it: a list has no names of its own there.
  return JSON.parse(JSON.stringify(copy)) as Data;
}
