import { Refusal, type ReadMesh } from './mesh-file.ts';
import { holds, skipBlanks, skipWord, takeNumber, takeWord, type Scan } from './scan.ts';
import { mostFaces, nowhere, startMesh, type Builder } from './triangles.ts';

const head = 84;
const record = 50;

/** Which STL a file of this size begins as; undefined when it does not look like either. */
export function looksLikeStl(bytes: Uint8Array, size = bytes.length): 'text' | 'binary' | undefined {
  const scan = { bytes, at: 0 };
  skipBlanks(scan);
  const solid = takeWord(scan, 'solid');
  // Some binary files begin with "solid" too; then the length gives them away.
  if (bytes.length >= head && head + record * countOf(bytes) === size) return 'binary';
  if (solid && (holds(bytes, 'facet', 4096) || holds(bytes, 'endsolid', 4096))) return 'text';
  return undefined;
}

const countOf = (bytes: Uint8Array): number =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(80, true);

/** A file taken helping by helping, so that it need not be held whole. */
export interface Taking {
  /** The next bytes of the file, cut where `cutOf` says. */
  readonly take: (bytes: Uint8Array) => void;
  readonly done: () => ReadMesh;
}

/** Reads an STL; its stated normals are not used, the order of the corners is. */
export function readStl(bytes: Uint8Array, form: 'text' | 'binary'): ReadMesh {
  const taking = form === 'text' ? startTextStl(bytes.length) : startBinaryStl(bytes, bytes.length);
  taking.take(form === 'text' ? bytes : bytes.subarray(head));
  return taking.done();
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

/** Records of a binary STL, from its first bytes and its size; then records, always whole ones. */
export function startBinaryStl(first: Uint8Array, size: number): Taking {
  if (size < head) throw new Refusal('it ends before its first triangle');
  const stated = countOf(first);
  const there = Math.floor((size - head) / record);
  const count = Math.min(stated, there);
  if (count > mostFaces) throw tooMany(count);
  const notes: string[] = [];
  if (stated > there)
    notes.push(
      `The file says it has ${stated.toLocaleString('en-GB')} triangles and holds ${there.toLocaleString('en-GB')}: it was cut short, and what is there is read.`,
    );
  const builder = startMesh(count);
  let left = count;
  return {
    take: (bytes) => {
      const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
      const corner = (at: number): number =>
        builder.point(
          view.getFloat32(at, true),
          view.getFloat32(at + 4, true),
          view.getFloat32(at + 8, true),
        );
      const whole = Math.min(left, Math.floor(bytes.length / record));
      for (let face = 0, at = 12; face < whole; face += 1, at += record)
        builder.face(corner(at), corner(at + 12), corner(at + 24));
      left -= whole;
    },
    done: () => {
      addLost(builder, notes);
      return { ok: true, format: 'STL', mesh: builder.done(), notes };
    },
  };
}

/** Where the records of a binary STL begin, and how long each is. */
export const binaryStl = { head, record } as const;

/** Lines of a text STL. */
export function startTextStl(size: number): Taking {
  const notes: string[] = [];
  const builder = startMesh(Math.min(mostFaces, Math.ceil(size / 250)));
  const three = [nowhere, nowhere, nowhere];
  let have = 0;
  let odd = 0;
  let ended = false;
  return {
    take: (bytes) => {
      const scan: Scan = { bytes, at: 0 };
      for (;;) {
        skipBlanks(scan);
        if (scan.at >= bytes.length) break;
        if (takeWord(scan, 'vertex')) {
          skipBlanks(scan, false);
          const x = takeNumber(scan);
          skipBlanks(scan, false);
          const y = takeNumber(scan);
          skipBlanks(scan, false);
          const z = takeNumber(scan);
          if (have < 3) three[have] = builder.point(x, y, z);
          have += 1;
        } else if (takeWord(scan, 'facet') || takeWord(scan, 'endfacet')) {
          if (have === 3) builder.face(three[0]!, three[1]!, three[2]!);
          else if (have > 0) odd += 1;
          if (builder.faces() > mostFaces) throw tooMany(0);
          have = 0;
        } else if (takeWord(scan, 'endsolid')) ended = true;
        else skipWord(scan);
      }
    },
    done: () => {
      if (have > 0) odd += 1;
      if (odd > 0)
        notes.push(`${odd.toLocaleString('en-GB')} faces do not have three corners and are left out.`);
      if (!ended) notes.push('The file does not end as it should: it may have been cut short.');
      addLost(builder, notes);
      return { ok: true, format: 'STL as text', mesh: builder.done(), notes };
    },
  };
}
