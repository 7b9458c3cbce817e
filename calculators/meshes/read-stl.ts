import { Refusal, type ReadMesh } from './mesh-file.ts';
import { holds, skipBlanks, skipWord, takeNumber, takeWord, type Scan } from './scan.ts';
import { mostFaces, nowhere, startMesh, type Builder } from './triangles.ts';

const head = 84;
const record = 50;

/** Which STL the bytes are; undefined when they do not look like either. */
export function looksLikeStl(bytes: Uint8Array): 'text' | 'binary' | undefined {
  const scan = { bytes, at: 0 };
  skipBlanks(scan);
  const solid = takeWord(scan, 'solid');
  // Some binary files begin with "solid" too; then the length gives them away.
  if (bytes.length >= head && head + record * countOf(bytes) === bytes.length) return 'binary';
  if (solid && (holds(bytes, 'facet', 4096) || holds(bytes, 'endsolid', 4096))) return 'text';
  return undefined;
}

const countOf = (bytes: Uint8Array): number =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(80, true);

/** Reads an STL; its stated normals are not used, the order of the corners is. */
export function readStl(bytes: Uint8Array, form: 'text' | 'binary'): ReadMesh {
  const notes: string[] = [];
  const builder = form === 'text' ? readText(bytes, notes) : readBinary(bytes, notes);
  addLost(builder, notes);
  return { ok: true, format: form === 'text' ? 'STL as text' : 'STL', mesh: builder.done(), notes };
}

/** Says how many faces were left out because they have no place. */
export function addLost(builder: Builder, notes: string[]): void {
  const lost = builder.lost();
  if (lost > 0)
    notes.push(
      `${lost.toLocaleString('en-GB')} ${lost === 1 ? 'triangle has' : 'triangles have'} a corner that is no place and ${lost === 1 ? 'is' : 'are'} left out.`,
    );
}

export function tooMany(count: number): Refusal {
  return new Refusal(
    `it has ${count > mostFaces ? count.toLocaleString('en-GB') : 'too many'} triangles, and ${mostFaces.toLocaleString('en-GB')} is the most read here; save it coarser`,
  );
}

function readBinary(bytes: Uint8Array, notes: string[]): Builder {
  if (bytes.length < head) throw new Refusal('it ends before its first triangle');
  const stated = countOf(bytes);
  const there = Math.floor((bytes.length - head) / record);
  const count = Math.min(stated, there);
  if (count > mostFaces) throw tooMany(count);
  if (stated > there)
    notes.push(
      `The file says it has ${stated.toLocaleString('en-GB')} triangles and holds ${there.toLocaleString('en-GB')}: it was cut short, and what is there is read.`,
    );
  const builder = startMesh(count);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const corner = (at: number): number =>
    builder.point(view.getFloat32(at, true), view.getFloat32(at + 4, true), view.getFloat32(at + 8, true));
  for (let face = 0, at = head + 12; face < count; face += 1, at += record)
    builder.face(corner(at), corner(at + 12), corner(at + 24));
  return builder;
}

function readText(bytes: Uint8Array, notes: string[]): Builder {
  const builder = startMesh(Math.min(mostFaces, Math.ceil(bytes.length / 250)));
  const scan: Scan = { bytes, at: 0 };
  const three = [nowhere, nowhere, nowhere];
  let have = 0;
  let odd = 0;
  let ended = false;
  for (;;) {
    skipBlanks(scan);
    if (scan.at >= bytes.length) break;
    if (takeWord(scan, 'vertex')) {
      const at = [0, 0, 0];
      for (let d = 0; d < 3; d += 1) {
        skipBlanks(scan, false);
        at[d] = takeNumber(scan);
      }
      if (have < 3) three[have] = builder.point(at[0]!, at[1]!, at[2]!);
      have += 1;
    } else if (takeWord(scan, 'facet') || takeWord(scan, 'endfacet')) {
      if (have === 3) builder.face(three[0]!, three[1]!, three[2]!);
      else if (have > 0) odd += 1;
      if (builder.faces() > mostFaces) throw tooMany(0);
      have = 0;
    } else {
      if (takeWord(scan, 'endsolid')) ended = true;
      else skipWord(scan);
    }
  }
  if (have > 0) odd += 1;
  if (odd > 0) notes.push(`${odd.toLocaleString('en-GB')} faces do not have three corners and are left out.`);
  if (!ended) notes.push('The file does not end as it should: it may have been cut short.');
  return builder;
}
