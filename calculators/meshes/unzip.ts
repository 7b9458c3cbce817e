import { Inflate } from 'fflate';
import { bytesText, Refusal } from './mesh-file.ts';

/** One file inside a zip, still packed. */
export interface Packed {
  readonly name: string;
  readonly method: number;
  readonly from: number;
  readonly length: number;
}

/** A part has a handful of files in its zip. */
const mostEntries = 2000;
/** Unpacked, together; a model of six million triangles as text is about this. */
export const mostUnpacked = 1_000_000_000;
/** Packed more tightly than any real model: text of numbers packs four to twenty times. */
const tightest = 200;
const step = 16_384;
const helping = 1_000_000;

/** The files named in a zip's directory, with where their packed bytes begin. Checked against the real length. */
export function directoryOf(bytes: Uint8Array): Packed[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  const last = Math.max(0, bytes.length - 22 - 65_535);
  while (end >= last && view.getUint32(end, true) !== 0x06054b50) end -= 1;
  if (end < last) throw new Refusal('the directory at the end of the zip is missing; it was cut short');
  const count = view.getUint16(end + 10, true);
  if (count > mostEntries) throw new Refusal(`there are ${count} files in the zip, far more than a part has`);
  let at = view.getUint32(end + 16, true);
  const found: Packed[] = [];
  for (let entry = 0; entry < count; entry += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50)
      throw new Refusal('the directory of the zip is broken');
    const length = view.getUint32(at + 20, true);
    const nameLength = view.getUint16(at + 28, true);
    const local = view.getUint32(at + 42, true);
    const name = String.fromCharCode(...bytes.subarray(at + 46, at + 46 + Math.min(nameLength, 400)));
    if (local + 30 > bytes.length || view.getUint32(local, true) !== 0x04034b50)
      throw new Refusal(`“${name}” in the zip is not where its directory says`);
    const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (from + length > bytes.length) throw new Refusal(`“${name}” in the zip is cut short`);
    found.push({ name, method: view.getUint16(at + 10, true), from, length });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return found;
}

/**
 * The bytes of a packed file. What it claims to unpack to is not believed: it is unpacked in small helpings and
 * given up as soon as it grows past `most`, or past what text of numbers could ever pack to. Each helping is handed
 * on and let go. Answers with how much it was.
 */
export function unpack(
  bytes: Uint8Array,
  { name, method, from, length }: Packed,
  most: number,
  take: (piece: Uint8Array) => void,
): number {
  const packed = bytes.subarray(from, from + length);
  if (method === 0) {
    if (packed.length > most) throw new Refusal(`“${name}” is larger than is read here`);
    for (let at = 0; at < packed.length; at += helping) take(packed.subarray(at, at + helping));
    return packed.length;
  }
  if (method !== 8) throw new Refusal(`“${name}” is packed in a way that is not read here`);
  const limit = Math.min(most, 1_000_000 + tightest * length);
  let size = 0;
  const inflate = new Inflate((piece) => {
    size += piece.length;
    if (size > limit)
      throw new Refusal(
        `“${name}” unpacks from ${bytesText(length)} to more than ${bytesText(limit)}, which no part does`,
      );
    take(piece);
  });
  try {
    for (let at = 0; at < packed.length; at += step)
      inflate.push(packed.subarray(at, at + step), at + step >= packed.length);
  } catch (error) {
    if (error instanceof Refusal) throw error;
    throw new Refusal(`“${name}” in the zip does not unpack; it is damaged`);
  }
  return size;
}
