import { startObj } from './read-obj.ts';
import { binaryStl, looksLikeStl, startBinaryStl, startTextStl, type Taking } from './read-stl.ts';
import { readThreeMf } from './read-3mf.ts';
import { bytesText, Refusal, refused, type ReadMesh } from './mesh-file.ts';
import { holds } from './scan.ts';
import { mostBytes } from './triangles.ts';

/** Bytes of a file from one place to another; fewer where it ends sooner. */
export type Slice = (from: number, to: number) => Promise<Uint8Array>;

/** What tells the formats apart stands here. */
const beginning = 131_072;
/** A file is read in helpings of about this: all of it is never held. A multiple of a record of a binary STL. */
const helping = 4_000_000;

/**
 * A part from the bytes of its file: STL in either form, OBJ or 3MF, told apart by what is in them before what
 * they are called. Never throws: what cannot be read is answered with a sentence.
 */
export function readMesh(bytes: Uint8Array, name = ''): ReadMesh {
  const why = sizeWrong(bytes.length);
  if (why !== undefined) return refused(why);
  try {
    const kind = kindOf(bytes, bytes.length, name.toLowerCase());
    if (typeof kind !== 'string') return kind;
    if (kind === '3mf') return whole(readThreeMf(bytes));
    const taking = start(kind, bytes, bytes.length);
    taking.take(kind === 'binary' ? bytes.subarray(binaryStl.head) : bytes);
    return whole(taking.done());
  } catch (error) {
    return broken(error);
  }
}

/** The same from a file that is fetched in helpings and never held whole, but for a 3MF, whose zip is. */
export async function readMeshInPieces(size: number, name: string, slice: Slice): Promise<ReadMesh> {
  const why = sizeWrong(size);
  if (why !== undefined) return refused(why);
  const first = await slice(0, Math.min(size, beginning));
  try {
    const kind = kindOf(first, size, name.toLowerCase());
    if (typeof kind !== 'string') return kind;
    if (kind === '3mf') return whole(readThreeMf(await slice(0, size)));
    const taking = start(kind, first, size);
    if (kind === 'binary') {
      for (let at: number = binaryStl.head; at < size; at += helping)
        taking.take(await slice(at, Math.min(size, at + helping)));
      return whole(taking.done());
    }
    let left = new Uint8Array(0);
    for (let at = 0; at < size; at += helping) {
      const next = await slice(at, Math.min(size, at + helping));
      const bytes = left.length === 0 ? next : joined(left, next);
      const cut = at + helping >= size ? bytes.length : lineEnd(bytes);
      if (cut === 0 && bytes.length > 2 * helping)
        throw new Refusal('a line in it is longer than any of a part');
      taking.take(bytes.subarray(0, cut));
      left = bytes.slice(cut);
    }
    return whole(taking.done());
  } catch (error) {
    return broken(error);
  }
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

/** Past the last line end that no backslash carries on; without any, before the last facet of an STL on one line. */
function lineEnd(bytes: Uint8Array): number {
  for (let at = bytes.lastIndexOf(10); at >= 0; at = at === 0 ? -1 : bytes.lastIndexOf(10, at - 1)) {
    const before = bytes[at - 1] === 13 ? at - 2 : at - 1;
    if (bytes[before] !== 92) return at + 1;
  }
  const word = [32, 102, 97, 99, 101, 116, 32];
  for (let at = bytes.lastIndexOf(102); at > 0; at = bytes.lastIndexOf(102, at - 1))
    if (word.every((byte, i) => bytes[at - 1 + i] === byte)) return at;
  return 0;
}

const sizeWrong = (size: number): string | undefined =>
  size === 0
    ? 'The file is empty.'
    : size > mostBytes
      ? `The file has ${bytesText(size)}; more than ${bytesText(mostBytes)} is not read here. Save it with fewer triangles.`
      : undefined;

function whole(read: ReadMesh): ReadMesh {
  return read.ok && read.mesh.corners.length === 0 ? refused('There are no triangles in the file.') : read;
}

function broken(error: unknown): ReadMesh {
  // Too little memory is for the caller to say.
  if (error instanceof RangeError && /alloc/i.test(error.message)) throw error;
  const said = error instanceof Refusal ? error.message : 'its inside does not follow the format';
  return refused(`The file could not be read: ${said}.`);
}

function start(kind: 'binary' | 'text' | 'obj', first: Uint8Array, size: number): Taking {
  return kind === 'binary'
    ? startBinaryStl(first, size)
    : kind === 'text'
      ? startTextStl(size)
      : startObj(size);
}

function kindOf(bytes: Uint8Array, size: number, name: string): '3mf' | 'binary' | 'text' | 'obj' | ReadMesh {
  const [a, b, c, d] = bytes;
  if (a === 0x50 && b === 0x4b && (c === 3 || c === 5) && (d === 4 || d === 6)) return '3mf';
  const stl = looksLikeStl(bytes, size);
  if (stl !== undefined) return stl;
  if (name.endsWith('.3mf'))
    return refused('A 3MF file is a zip, and this one is not: it was cut short or renamed.');
  if (name.endsWith('.stl')) return 'binary';
  if (name.endsWith('.obj') || holds(bytes, '\nv ', 100_000) || (a === 0x76 && b === 0x20)) return 'obj';
  return refused('This is no part: neither STL, OBJ nor 3MF. Save it as one of these.');
}
