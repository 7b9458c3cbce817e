import { addLost, tooMany, type Taking } from './read-stl.ts';
import { Refusal, type ReadMesh } from './mesh-file.ts';
import { isSpace, skipBlanks, skipLine, takeNumber, takeWord, type Scan } from './scan.ts';
import { mostFaces, nowhere, startMesh } from './triangles.ts';

const mostPoints = 3 * mostFaces;

/** Reads the points and faces of an OBJ; faces with more corners become fans. Everything else in it is passed by. */
export function readObj(bytes: Uint8Array): ReadMesh {
  const taking = startObj(bytes.length);
  taking.take(bytes);
  return taking.done();
}

/** Lines of an OBJ. */
export function startObj(size: number): Taking {
  const notes: string[] = [];
  const builder = startMesh(Math.min(mostFaces, Math.ceil(size / 80)));
  let welded = new Uint32Array(1024);
  let points = 0;
  let missing = 0;

  function takePoint(scan: Scan): void {
    skipBlanks(scan, false);
    const x = takeNumber(scan);
    skipBlanks(scan, false);
    const y = takeNumber(scan);
    skipBlanks(scan, false);
    const z = takeNumber(scan);
    if (points >= mostPoints) throw new Refusal('it has more points than can be held');
    if (points === welded.length) {
      const more = new Uint32Array(points * 2);
      more.set(welded);
      welded = more;
    }
    welded[points] = builder.point(x, y, z);
    points += 1;
  }

  function takeFace(scan: Scan): void {
    const { bytes } = scan;
    let first = nowhere;
    let before = nowhere;
    let corners = 0;
    for (;;) {
      skipBlanks(scan, false);
      const byte = bytes[scan.at];
      if (byte === undefined || byte === 10 || byte === 13 || byte === 35) break;
      // A backslash at the end carries the face on to the next line.
      if (byte === 92) {
        skipLine(scan);
        continue;
      }
      const number = takeNumber(scan);
      while (scan.at < bytes.length && !isSpace(bytes[scan.at]!)) scan.at += 1;
      const index = number < 0 ? points + number : number - 1;
      const corner = Number.isInteger(index) && index >= 0 && index < points ? welded[index]! : -1;
      if (corner === -1) missing += 1;
      const place = corner === -1 ? nowhere : corner;
      if (corners === 0) first = place;
      else if (corners > 1) builder.face(first, before, place);
      before = place;
      corners += 1;
      if (builder.faces() > mostFaces) throw tooMany(0);
    }
  }

  return {
    take: (bytes) => {
      const scan: Scan = { bytes, at: 0 };
      while (scan.at < bytes.length) {
        skipBlanks(scan);
        if (takeWord(scan, 'v')) takePoint(scan);
        else if (takeWord(scan, 'f')) takeFace(scan);
        skipLine(scan);
      }
    },
    done: () => {
      if (missing > 0)
        notes.push(
          `${missing.toLocaleString('en-GB')} corners of faces name a point that is not in the file.`,
        );
      addLost(builder, notes);
      return { ok: true, format: 'OBJ', mesh: builder.done(), notes };
    },
  };
}
