import { addLost, tooMany } from './read-stl.ts';
import { Refusal, type ReadMesh } from './mesh-file.ts';
import { isSpace, skipBlanks, skipLine, takeNumber, takeWord, type Scan } from './scan.ts';
import { mostFaces, nowhere, startMesh } from './triangles.ts';

const mostPoints = 3 * mostFaces;

/** Reads the points and faces of an OBJ; faces with more corners become fans. Everything else in it is passed by. */
export function readObj(bytes: Uint8Array): ReadMesh {
  const notes: string[] = [];
  const builder = startMesh(Math.min(mostFaces, Math.ceil(bytes.length / 80)));
  let welded = new Uint32Array(1024);
  let points = 0;
  let missing = 0;
  const scan: Scan = { bytes, at: 0 };

  function takePoint(): void {
    const at = [0, 0, 0];
    for (let d = 0; d < 3; d += 1) {
      skipBlanks(scan, false);
      at[d] = takeNumber(scan);
    }
    if (points >= mostPoints) throw new Refusal('it has more points than can be held');
    if (points === welded.length) {
      const more = new Uint32Array(points * 2);
      more.set(welded);
      welded = more;
    }
    welded[points] = builder.point(at[0]!, at[1]!, at[2]!);
    points += 1;
  }

  function takeFace(): void {
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

  while (scan.at < bytes.length) {
    skipBlanks(scan);
    if (takeWord(scan, 'v')) takePoint();
    else if (takeWord(scan, 'f')) takeFace();
    skipLine(scan);
  }
  if (missing > 0)
    notes.push(`${missing.toLocaleString('en-GB')} corners of faces name a point that is not in the file.`);
  addLost(builder, notes);
  return { ok: true, format: 'OBJ', mesh: builder.done(), notes };
}
