import { fromBase64, base64, textOf, utf8 } from './bytes.ts';
import { handInSchema, sealedSchema } from './formats.ts';
import { faultOf } from './schema.ts';
import { laterVersion, type GradedSet } from './set-file.ts';
import { hashOf, sha256 } from './sha256.ts';
import { parseUntrusted, type Read } from './untrusted.ts';

export interface SetName {
  readonly id: string;
  readonly edition: number;
  readonly hash: string;
}

/** What was answered to one question. */
export interface Given {
  /** By part, by input of a design, or under `answer`. */
  readonly texts?: Readonly<Record<string, string>>;
  /** Positions in the exercise's own order: options chosen, or items as placed. */
  readonly chosen?: readonly number[];
  readonly working?: string;
  readonly seconds?: number;
  readonly hints?: number;
  readonly photo?: { readonly type: 'image/jpeg' | 'image/png' | 'image/webp'; readonly bytes: string };
}

/** What a learner sends. There are no marks in it, and none would be read. */
export interface HandIn {
  readonly format: 'warm-mould-hand-in';
  readonly version: 1;
  readonly set: SetName;
  readonly learner: string;
  readonly library: string;
  /** By the clock of the learner's device. */
  readonly handedIn: string;
  readonly answers: Readonly<Record<string, Given>>;
  /** Over everything else: shows damage and careless changes, not a careful forger. */
  readonly sum: string;
}

/** A hand-in closed to everybody but the holder of the key. */
export interface Sealed {
  readonly format: 'warm-mould-sealed';
  readonly version: 1;
  readonly set: SetName;
  /** The first half of the public key's hash, to say which key is needed. */
  readonly key: string;
  readonly from: string;
  readonly iv: string;
  readonly data: string;
}

export const handInLimits = { characters: 16_000_000, depth: 8 } as const;

export function withSum(handIn: Omit<HandIn, 'sum'>): HandIn {
  const { sum: _, ...rest } = handIn as HandIn;
  return { ...rest, sum: hashOf(rest) };
}

export const writeHandIn = (handIn: HandIn): string => `${JSON.stringify(handIn)}\n`;

export type Refusal = 'damaged' | 'edited' | 'foreign' | 'stale' | 'duplicate' | 'sealed';
export type Received =
  | { readonly ok: true; readonly handIn: HandIn; readonly set: GradedSet; readonly sealed: boolean }
  | { readonly ok: false; readonly why: Refusal; readonly reason: string };

/** What reading needs from where it runs. */
export interface Opener {
  /** Inflates raw deflate; rejects when more than `most` bytes come out. */
  readonly inflate: (bytes: Uint8Array<ArrayBuffer>, most: number) => Promise<Uint8Array>;
  /** The text within a seal, or undefined when no key fits. */
  readonly open?: (sealed: Sealed) => Promise<string | undefined>;
}

const no = (why: Refusal, reason: string): Received => ({ ok: false, why, reason });

/** Reads a hand-in from a file or a code against the sets at hand. Never throws and never rejects. */
export async function receive(text: string, sets: readonly GradedSet[], opener: Opener): Promise<Received> {
  try {
    return await received(text.trim(), sets, opener);
  } catch {
    return no('damaged', 'It cannot be read: it was damaged on its way.');
  }
}

async function received(text: string, sets: readonly GradedSet[], opener: Opener): Promise<Received> {
  if (text === '') return no('damaged', 'It is empty.');
  let json = text;
  if (text.startsWith(codeMark)) {
    const unpacked = await unpack(text, opener);
    if (!unpacked.ok) return no('damaged', unpacked.reason);
    json = unpacked.value;
  }
  const parsed = parseUntrusted(json, handInLimits);
  if (!parsed.ok) return no('damaged', parsed.reason);
  if (Array.isArray(parsed.value)) return fromCode(parsed.value as unknown[], sets);
  const data = parsed.value as Partial<Sealed> | null;
  return data?.format === 'warm-mould-sealed' ? unsealed(data, sets, opener) : handInFrom(data, sets, false);
}

async function unsealed(data: unknown, sets: readonly GradedSet[], opener: Opener): Promise<Received> {
  const later = laterVersion(data, 'warm-mould-sealed', 'a sealed hand-in');
  const fault = later ?? faultOf(data, sealedSchema, 'The sealed hand-in');
  if (fault !== undefined) return no('damaged', fault);
  const sealed = data as Sealed;
  const known = setNamed(sealed.set, sets);
  if (!known.ok) return known.refusal;
  if (!opener.open) return no('sealed', 'It is sealed. Give the key file it was sealed to.');
  const text = await opener.open(sealed).catch(() => '');
  if (text === undefined)
    return no('sealed', 'It is sealed to another key. Give the key file it was sealed to.');
  if (text === '') return no('damaged', 'The seal does not open: it was changed or damaged on its way.');
  const parsed = parseUntrusted(text, handInLimits);
  if (!parsed.ok) return no('damaged', parsed.reason);
  if (Array.isArray(parsed.value)) return fromCode(parsed.value as unknown[], sets, true);
  return handInFrom(parsed.value, sets, true);
}

function handInFrom(data: unknown, sets: readonly GradedSet[], sealed: boolean): Received {
  const later = laterVersion(data, 'warm-mould-hand-in', 'a hand-in');
  if (later !== undefined)
    return no((data as { format?: unknown } | null)?.format === undefined ? 'damaged' : 'foreign', later);
  const fault = faultOf(data, handInSchema, 'The hand-in');
  if (fault !== undefined) return no('edited', `It is not as the page writes it. ${fault}`);
  const handIn = data as HandIn;
  const known = setNamed(handIn.set, sets);
  if (!known.ok) return known.refusal;
  const { sum, ...rest } = handIn;
  if (hashOf(rest) !== sum) return no('edited', 'It was changed after the page saved it. Ask for it again.');
  return checked(handIn, known.set, sealed);
}

function checked(handIn: HandIn, set: GradedSet, sealed: boolean): Received {
  const stray = Object.keys(handIn.answers).find(
    (id) => !set.questions.some((question) => question.id === id),
  );
  if (stray !== undefined) return no('edited', `It answers “${stray}”, which the set does not ask.`);
  if (handIn.learner.trim() === '') return no('edited', 'It bears no name.');
  return { ok: true, handIn, set, sealed };
}

/** The set a hand-in names, by its hash; else why not. */
function setNamed(
  { id, edition, hash }: SetName,
  sets: readonly GradedSet[],
): { ok: true; set: GradedSet } | { ok: false; refusal: Received } {
  const set = sets.find((candidate) => candidate.hash.startsWith(hash) && candidate.id === id);
  if (set && set.edition === edition) return { ok: true, set };
  const same = sets.filter((candidate) => candidate.id === id);
  if (same.length === 0) return { ok: false, refusal: no('foreign', 'It belongs to another set.') };
  const reason = same.some((candidate) => candidate.edition === edition)
    ? `It belongs to a set that calls itself edition ${edition} too, but is not the same.`
    : `It was made for edition ${edition} of this set, not ${same.map((one) => one.edition).join(' or ')}. Add the file of edition ${edition} to mark it by.`;
  return { ok: false, refusal: no('stale', reason) };
}

/** A hand-in short enough to copy: `wm1-`, the packed bytes, a dash and the first eight digits of their hash. */
export const codeMark = 'wm1-';
const mostUnpacked = 4_000_000;

export async function pack(
  json: string,
  deflate: (bytes: Uint8Array<ArrayBuffer>) => Promise<Uint8Array>,
): Promise<string> {
  const bytes = await deflate(utf8(json));
  return `${codeMark}${base64(bytes)}-${sha256(bytes).slice(0, 8)}`;
}

/** The text a code stands for. White space from a mail does not matter. Never rejects. */
export async function unpack(
  code: string,
  { inflate }: Pick<Opener, 'inflate'>,
  most = mostUnpacked,
): Promise<Read<string>> {
  const damaged: Read<string> = {
    ok: false,
    reason: 'The code is not whole: copy it again, from its first sign to its last.',
  };
  if (code.length > handInLimits.characters)
    return { ok: false, reason: 'It is far larger than a code can be.' };
  // The base 64 alphabet has a dash too, so the check is found from the end.
  const [, packed = '', check = ''] =
    /^wm1-([A-Za-z0-9_-]+)-([0-9a-f]{8})$/.exec(code.replace(/\s+/g, '')) ?? [];
  const bytes = fromBase64(packed);
  if (packed === '' || !bytes || sha256(bytes).slice(0, 8) !== check) return damaged;
  const inflated = await inflate(bytes, most).catch(() => undefined);
  if (!inflated)
    return { ok: false, reason: 'The code unpacks to far more than a hand-in can be, or to nothing.' };
  const text = textOf(inflated);
  return text === undefined ? damaged : { ok: true, value: text };
}

/** A hand-in as a list, without names that the set knows already, and without photographs. */
export function shortHandIn(
  { set, learner, library, handedIn, answers }: HandIn,
  { questions }: GradedSet,
): string {
  const rows = questions.map(({ id }) => {
    const { texts = {}, chosen = [], working = '', seconds = 0, hints = 0 } = answers[id] ?? {};
    return [Object.entries(texts).flat(), chosen, working, seconds, hints];
  });
  return JSON.stringify([1, set.id, set.edition, set.hash.slice(0, 16), learner, library, handedIn, rows]);
}

function fromCode(list: readonly unknown[], sets: readonly GradedSet[], sealed = false): Received {
  const [version, id, edition, start, learner, library, handedIn, rows] = list;
  if (typeof version === 'number' && version > 1)
    return no('damaged', 'This code is of a later version of these pages. Open it with the newest ones.');
  if (version !== 1 || typeof start !== 'string' || !/^[0-9a-f]{16}$/.test(start) || !Array.isArray(rows))
    return no('damaged', 'The code is none of a hand-in.');
  const known = setNamed({ id: String(id), edition: Number(edition), hash: start }, sets);
  if (!known.ok) return known.refusal;
  const { set } = known;
  if (rows.length !== set.questions.length)
    return no('edited', 'The code does not answer the questions of its set.');
  const answers: Record<string, Given> = {};
  for (const [i, row] of (rows as unknown[]).entries()) {
    if (!Array.isArray(row) || row.length !== 5 || !Array.isArray(row[0]))
      return no('edited', 'The code is none of a hand-in.');
    const [flat, chosen, working, seconds, hints] = row as [unknown[], ...unknown[]];
    const texts = Object.fromEntries(
      Array.from({ length: Math.floor(flat.length / 2) }, (_, at) => [
        String(flat[2 * at]),
        flat[2 * at + 1],
      ]),
    );
    answers[set.questions[i]!.id] = {
      ...(flat.length > 0 && { texts: texts as Record<string, string> }),
      ...((chosen as unknown[]).length > 0 && { chosen: chosen as number[] }),
      ...(working !== '' && { working: working as string }),
      ...(seconds !== 0 && { seconds: seconds as number }),
      ...(hints !== 0 && { hints: hints as number }),
    };
  }
  const handIn = withSum({
    format: 'warm-mould-hand-in',
    version: 1,
    set: { id: set.id, edition: set.edition, hash: set.hash },
    learner: learner as string,
    library: library as string,
    handedIn: handedIn as string,
    answers,
  });
  const fault = faultOf(handIn, handInSchema, 'The code');
  if (fault !== undefined) return no('edited', `It is not as the page writes it. ${fault}`);
  return checked(handIn, set, sealed);
}
