import { base64, fromBase64, textOf, utf8 } from '../../calculators/exercises/sets/bytes.ts';
import { keySchema } from '../../calculators/exercises/sets/formats.ts';
import type { Sealed, SetName } from '../../calculators/exercises/sets/hand-in.ts';
import { faultOf } from '../../calculators/exercises/sets/schema.ts';
import { laterVersion } from '../../calculators/exercises/sets/set-file.ts';
import { canonical, sha256 } from '../../calculators/exercises/sets/sha256.ts';
import { parseUntrusted, type Read } from '../../calculators/exercises/sets/untrusted.ts';
import { deflate, inflate } from './deflate.ts';

/** The two halves of a key: hand-ins are sealed to the public one and opened with the private one. */
export interface KeyFile {
  readonly format: 'warm-mould-key';
  readonly version: 1;
  readonly public: string;
  readonly private: string;
  readonly made: string;
}

const curve = { name: 'ECDH', namedCurve: 'P-256' } as const;
const most = 14_000_000;

export async function makeKey(day: string): Promise<KeyFile> {
  const pair = await crypto.subtle.generateKey(curve, true, ['deriveBits']);
  const [open, closed] = await Promise.all([
    crypto.subtle.exportKey('raw', pair.publicKey),
    crypto.subtle.exportKey('pkcs8', pair.privateKey),
  ]);
  return {
    format: 'warm-mould-key',
    version: 1,
    public: base64(new Uint8Array(open)),
    private: base64(new Uint8Array(closed)),
    made: day,
  };
}

export const writeKey = (key: KeyFile): string => `${JSON.stringify(key, null, 2)}\n`;

/** Never throws; the reason is a sentence. */
export function readKey(text: string): Read<KeyFile> {
  const parsed = parseUntrusted(text, { characters: 10_000, depth: 3 });
  if (!parsed.ok) return parsed;
  const fault =
    laterVersion(parsed.value, 'warm-mould-key', 'a key file') ??
    faultOf(parsed.value, keySchema, 'The key file');
  return fault === undefined ? { ok: true, value: parsed.value as KeyFile } : { ok: false, reason: fault };
}

/** How a key is named in what is sealed to it. */
export const keyName = (publicKey: string): string => sha256(publicKey).slice(0, 16);

/**
 * Seals a text to a public key: a pair made for this text alone, ECDH on P-256, HKDF with SHA-256, AES-256-GCM.
 * The names of set and key stand outside the seal and are bound to it.
 */
export async function seal(text: string, set: SetName, publicKey: string): Promise<Sealed> {
  const to = await importPublic(publicKey);
  const own = await crypto.subtle.generateKey(curve, true, ['deriveBits']);
  const from = base64(new Uint8Array(await crypto.subtle.exportKey('raw', own.publicKey)));
  const head = { format: 'warm-mould-sealed', version: 1, set, key: keyName(publicKey), from } as const;
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const secret = await secretOf(own.privateKey, to, from, publicKey);
  const packed = await deflate(utf8(text));
  const data = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv, additionalData: utf8(canonical(head)) },
    secret,
    packed,
  );
  return { ...head, iv: base64(iv), data: base64(new Uint8Array(data)) };
}

/** What opens seals with these keys: undefined when none is the one needed; rejects when the seal was broken. */
export function openerWith(keys: readonly KeyFile[]): (sealed: Sealed) => Promise<string | undefined> {
  const imported = new Map<string, Promise<CryptoKey>>();
  const privateOf = (key: KeyFile): Promise<CryptoKey> => {
    const known = imported.get(key.public) ?? importPrivate(key.private);
    imported.set(key.public, known);
    return known;
  };
  return async ({ iv, data, ...head }) => {
    const key = keys.find((candidate) => keyName(candidate.public) === head.key);
    if (!key) return undefined;
    const secret = await secretOf(await privateOf(key), await importPublic(head.from), head.from, key.public);
    const packed = await crypto.subtle.decrypt(
      { name: 'AES-GCM', iv: bytesOf(iv), additionalData: utf8(canonical(head)) },
      secret,
      bytesOf(data),
    );
    return textOf(await inflate(new Uint8Array(packed), most)) ?? '';
  };
}

async function secretOf(own: CryptoKey, other: CryptoKey, from: string, to: string): Promise<CryptoKey> {
  const shared = await crypto.subtle.deriveBits({ name: 'ECDH', public: other }, own, 256);
  const material = await crypto.subtle.importKey('raw', shared, 'HKDF', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'HKDF', hash: 'SHA-256', salt: utf8(`${from}.${to}`), info: utf8('warm-mould hand-in 1') },
    material,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const bytes = fromBase64(text);
  if (!bytes) throw new Error('not base 64');
  return bytes;
}

const importPublic = (text: string): Promise<CryptoKey> =>
  crypto.subtle.importKey('raw', bytesOf(text), curve, false, []);
const importPrivate = (text: string): Promise<CryptoKey> =>
  crypto.subtle.importKey('pkcs8', bytesOf(text), curve, false, ['deriveBits']);
