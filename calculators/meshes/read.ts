import { readObj } from './read-obj.ts';
import { readStl, looksLikeStl } from './read-stl.ts';
import { readThreeMf } from './read-3mf.ts';
import { bytesText, Refusal, refused, type ReadMesh } from './mesh-file.ts';
import { holds } from './scan.ts';
import { mostBytes } from './triangles.ts';

/**
 * A part from the bytes of its file: STL in either form, OBJ or 3MF, told apart by what is in them before what
 * they are called. Never throws: what cannot be read is answered with a sentence.
 */
export function readMesh(bytes: Uint8Array, name = ''): ReadMesh {
  if (bytes.length === 0) return refused('The file is empty.');
  if (bytes.length > mostBytes)
    return refused(
      `The file has ${bytesText(bytes.length)}; more than ${bytesText(mostBytes)} is not read here. Save it with fewer triangles.`,
    );
  try {
    const read = readByKind(bytes, name.toLowerCase());
    if (!read.ok) return read;
    if (read.mesh.corners.length === 0) return refused('There are no triangles in the file.');
    return read;
  } catch (error) {
    const said = error instanceof Refusal ? error.message : 'its inside does not follow the format';
    return refused(`The file could not be read: ${said}.`);
  }
}

function readByKind(bytes: Uint8Array, name: string): ReadMesh {
  const [a, b, c, d] = bytes;
  if (a === 0x50 && b === 0x4b && (c === 3 || c === 5) && (d === 4 || d === 6)) return readThreeMf(bytes);
  const stl = looksLikeStl(bytes);
  if (stl !== undefined) return readStl(bytes, stl);
  if (name.endsWith('.3mf'))
    return refused('A 3MF file is a zip, and this one is not: it was cut short or renamed.');
  if (name.endsWith('.stl')) return readStl(bytes, 'binary');
  if (name.endsWith('.obj') || holds(bytes, '\nv ', 100_000) || (a === 0x76 && b === 0x20))
    return readObj(bytes);
  return refused('This is no part: neither STL, OBJ nor 3MF. Save it as one of these.');
}
