import { fc, test } from '@fast-check/vitest';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { ball, box, tube } from '../../calculators/meshes/forms.ts';
import { measure } from '../../calculators/meshes/measure.ts';
import { readMesh, readMeshInPieces } from '../../calculators/meshes/read.ts';
import type { Read } from '../../calculators/meshes/mesh-file.ts';
import { mostBytes, type Triangles } from '../../calculators/meshes/triangles.ts';
import { writeObj, writeStl, writeTextStl, writeThreeMf } from '../../calculators/meshes/write.ts';

const writers = { stl: writeStl, 'text stl': writeTextStl, obj: writeObj, '3mf': writeThreeMf };

function read(bytes: Uint8Array, name = ''): Read {
  const found = readMesh(bytes, name);
  if (!found.ok) throw new Error(found.why);
  return found;
}

function why(bytes: Uint8Array | string, name = ''): string {
  const found = readMesh(typeof bytes === 'string' ? strToU8(bytes) : bytes, name);
  expect(found.ok).toBe(false);
  const said = found.ok ? '' : found.why;
  expect(said).toMatch(/^[A-Z].*\.$/s);
  return said;
}

const model = (inside: string, unit = 'millimeter'): Uint8Array =>
  zipSync({ '3D/3dmodel.model': strToU8(`<model unit="${unit}">${inside}</model>`) });
const tetra =
  '<vertices><vertex x="0" y="0" z="0"/><vertex x="6" y="0" z="0"/><vertex x="0" y="6" z="0"/><vertex x="0" y="0" z="6"/></vertices>' +
  '<triangles><triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/><triangle v1="1" v2="2" v3="3"/><triangle v1="0" v2="3" v3="2"/></triangles>';

describe('a part goes to a file and comes back', () => {
  for (const [format, write] of Object.entries(writers))
    it.each([
      ['box', box(30, 20, 4)],
      ['ball', ball(9.5, 24)],
      ['tube', tube(10, 7.25, 33, 40)],
    ] as [string, Triangles][])(`as ${format}: %s`, (_, mesh) => {
      const there = measure(mesh);
      const back = read(write(mesh));
      expect(back.notes).toEqual([]);
      expect(back.mesh.points.length).toBe(mesh.points.length);
      expect(back.mesh.corners.length).toBe(mesh.corners.length);
      const here = measure(back.mesh);
      expect(here.volume / there.volume).toBeCloseTo(1, 6);
      expect(here.area / there.area).toBeCloseTo(1, 6);
    });

  it('knows a binary file that begins with the word of a text one', () => {
    const bytes = writeStl(box(1, 2, 3));
    bytes.set(strToU8('solid part exported facet'));
    expect(read(bytes, 'a.stl').format).toBe('STL');
  });

  test.prop([fc.double({ noNaN: true, min: -1e8, max: 1e8 })])(
    'reads a number as the language does, to its last place or two',
    (x) => {
      const text = `v ${x} 1 2\nv 0 1 1\nv 1 1 3\nf 1 2 3\n`;
      const { points } = read(strToU8(text), 'a.obj').mesh;
      const found = points[0]!;
      expect(Math.abs(found - x)).toBeLessThanOrEqual(Math.abs(x) * 5e-16 + 1e-300);
    },
  );
});

describe('what the formats allow', () => {
  it('OBJ: fans, corners counted from the end, corners with more after a stroke, carried lines', () => {
    const text =
      'v 0 0 0\nv 4 0 0\nv 4 3 0\nv 0 3 0\nvt 0 0\nvn 0 0 1\nf 1/1/1 2//1 3/1 \\\n 4\nf -4 -3 -2\n';
    const { mesh, notes } = read(strToU8(text), 'a.obj');
    expect(mesh.corners.length / 3).toBe(3);
    expect(measure(mesh).area).toBeCloseTo(18, 12);
    expect(notes).toEqual([]);
  });

  it('OBJ: a corner that names no point is said and its face left out', () => {
    const { mesh, notes } = read(strToU8('v 0 0 0\nv 4 0 0\nv 4 3 0\nf 1 2 3\nf 1 2 9\n'), 'a.obj');
    expect(mesh.corners.length / 3).toBe(1);
    expect(notes.join(' ')).toMatch(/not in the file/);
  });

  it('3MF: unit, build, transforms, components, mirrored faces', () => {
    const inside = `<resources><object id="1"><mesh>${tetra}</mesh></object>
      <object id="2"><components><component objectid="1" transform="-1 0 0 0 1 0 0 0 1 10 0 0"/>
      <component objectid="1" transform="2 0 0 0 2 0 0 0 2 50 0 0"/></components></object></resources>
      <build><item objectid="2" transform="1 0 0 0 1 0 0 0 1 0 0 7"/></build>`;
    const found = read(model(inside, 'inch'));
    expect(found.unit).toBe('inch');
    const { volume, low, high } = measure(found.mesh);
    // 6³ / 6 = 36, and eight times that; a mirrored body still has a positive volume
    expect(volume).toBeCloseTo(36 * 9, 9);
    expect(low).toEqual([4, 0, 7]);
    expect(high).toEqual([62, 12, 19]);
  });

  it('3MF: with a prefix, comments and single quotes', () => {
    const text = `<m:model unit='millimeter'><!-- <triangle v1="9"/> --><m:object id='1'><m:mesh>${tetra.replace(/<(\/?)/g, '<$1m:').replaceAll('"', "'")}</m:mesh></m:object><m:build><m:item objectid='1'/></m:build></m:model>`;
    const found = read(zipSync({ '3D/3dmodel.model': strToU8(text) }));
    expect(measure(found.mesh).volume).toBeCloseTo(36, 12);
  });
});

describe('hostile and broken files are answered with a sentence', () => {
  it('empty, other, cut short', () => {
    expect(why(new Uint8Array())).toMatch(/empty/);
    expect(why('PNG and so on', 'a.png')).toMatch(/neither STL, OBJ nor 3MF/);
    expect(why(new Uint8Array(50), 'a.stl')).toMatch(/ends before/);
    expect(why(writeThreeMf(box(1, 1, 1)).slice(0, -40))).toMatch(/cut short/);
    expect(why('hello', 'part.3mf')).toMatch(/zip/);
  });

  it('a header that lies about a thousand million triangles', () => {
    const bytes = writeStl(box(10, 10, 10));
    new DataView(bytes.buffer).setUint32(80, 4_000_000_000, true);
    const found = read(bytes, 'a.stl');
    expect(found.mesh.corners.length / 3).toBe(12);
    expect(found.notes.join(' ')).toMatch(/holds 12/);
  });

  it('a header that says fewer, and a file cut in the middle of a face', () => {
    const bytes = writeStl(box(10, 10, 10));
    expect(read(bytes.slice(0, -20), 'a.stl').mesh.corners.length / 3).toBe(11);
  });

  it('corners that are no number, endless or absurdly far', () => {
    const bytes = writeStl(box(10, 10, 10));
    const view = new DataView(bytes.buffer);
    view.setFloat32(96, Number.NaN, true);
    view.setFloat32(96 + 50, Number.POSITIVE_INFINITY, true);
    view.setFloat32(96 + 100, 1e30, true);
    const { mesh, notes } = read(bytes, 'a.stl');
    expect(mesh.corners.length / 3).toBe(9);
    expect(notes.join(' ')).toMatch(/3 triangles have a corner that is no place/);
  });

  it('a zip that unpacks to a thousand times its size', () => {
    const bomb = zipSync({ '3D/3dmodel.model': new Uint8Array(60_000_000) }, { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    expect(why(bomb)).toMatch(/which no part does/);
  });

  it('a zip whose directory lies', () => {
    const bytes = writeThreeMf(box(1, 1, 1));
    const text = String.fromCharCode(...bytes);
    const at = text.indexOf('PK\u0001\u0002');
    new DataView(bytes.buffer, bytes.byteOffset).setUint32(at + 42, 0xfffffff0, true);
    expect(why(bytes)).toMatch(/not where its directory says/);
  });

  it('objects that contain one another', () => {
    const inside =
      '<object id="1"><components><component objectid="2"/></components></object><object id="2"><components><component objectid="1"/></components></object><item objectid="1"/>';
    expect(why(model(inside))).toMatch(/without end/);
  });

  it('objects that multiply at every level', () => {
    const levels = Array.from({ length: 14 }, (_, n) => {
      const ten = `<component objectid="${n}"/>`.repeat(10);
      return `<object id="${n + 1}"><components>${ten}</components></object>`;
    });
    const inside = `<object id="0"><mesh>${tetra}</mesh></object>${levels.join('')}<item objectid="14"/>`;
    expect(why(model(inside))).toMatch(/triangles, and 6,000,000 is the most/);
  });

  it('text of nothing but line ends, at the largest size read', { timeout: 60_000 }, () => {
    const bytes = new Uint8Array(100_000_000).fill(10);
    bytes.set(strToU8('solid x\nfacet\n'));
    expect(why(bytes, 'a.stl')).toMatch(/no triangles/);
    expect(why(new Uint8Array(100_000_000).fill(10), 'a.obj')).toMatch(/no triangles/);
  });

  it('a file larger than is read, before it is looked at', () => {
    const large = { length: mostBytes + 1 } as unknown as Uint8Array;
    expect(why(large, 'a.stl')).toMatch(/is not read here/);
  });
});

describe('whatever the bytes, there is an answer', () => {
  const starts = fc.constantFrom('', 'solid ', 'solid a\nfacet\n', 'v 1 2 3\n', 'PK\u0003\u0004', '<model>');
  test.prop([starts, fc.uint8Array({ maxLength: 400 }), fc.constantFrom('', 'a.stl', 'a.obj', 'a.3mf')], {
    numRuns: 2000,
  })('of any bytes', (start, rest, name) => {
    const found = readMesh(new Uint8Array([...strToU8(start, true), ...rest]), name);
    if (!found.ok) expect(found.why).toMatch(/\.$/);
    else for (const x of found.mesh.points) expect(Math.abs(x)).toBeLessThan(1e9);
  });

  const files = Object.values(writers).map((write) => write(ball(5, 6)));
  test.prop(
    [fc.integer({ min: 0, max: 3 }), fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 12 }), fc.nat()],
    {
      numRuns: 600,
    },
  )('of a real file with bytes changed and its end cut off', (which, changes, cut) => {
    const file = files[which]!;
    const bytes = file.slice(0, file.length - (cut % 3 === 0 ? cut % file.length : 0));
    for (const [at, to] of changes) if (bytes.length > 0) bytes[at % bytes.length] = to;
    const found = readMesh(bytes);
    if (found.ok)
      for (const corner of found.mesh.corners) expect(3 * corner).toBeLessThan(found.mesh.points.length);
    else expect(found.why).toMatch(/\.$/);
  });
});

describe('a file read in helpings, never held whole', () => {
  const inPieces = (bytes: Uint8Array, name: string) =>
    readMeshInPieces(bytes.length, name, (from, to) => Promise.resolve(bytes.slice(from, to)));
  // A text STL of this ball has some ten million bytes: three helpings.
  const large = ball(20, 110);

  it.each([
    ['a.stl', writeStl],
    ['b.stl', writeTextStl],
    ['c.obj', writeObj],
    ['d.3mf', writeThreeMf],
  ] as const)('%s: the same as at once', async (name, write) => {
    const bytes = write(large);
    expect(await inPieces(bytes, name)).toEqual(readMesh(bytes, name));
  });

  it('a text STL on one line is cut between facets', async () => {
    const text = new TextDecoder().decode(writeTextStl(large)).replaceAll('\n', ' ');
    const found = await inPieces(strToU8(text), 'a.stl');
    expect(found.ok && found.mesh.corners.length).toBe(large.corners.length);
  });

  it('a line without end is refused, and a header that lies asks for no memory', async () => {
    const endless = { length: 400_000_000 };
    const found = await readMeshInPieces(endless.length, 'a.obj', (from, to) =>
      Promise.resolve(new Uint8Array(to - from).fill(from === 0 ? 118 : 49)),
    );
    expect(found.ok ? '' : found.why).toMatch(/longer than any/);
    const bytes = writeStl(box(10, 10, 10));
    new DataView(bytes.buffer).setUint32(80, 4_000_000_000, true);
    const lying = await inPieces(bytes, 'a.stl');
    expect(lying.ok && lying.mesh.corners.length / 3).toBe(12);
  });

  it('tags and comments of a 3MF may be cut anywhere', () => {
    const inside = `<object id="1"><mesh><!-- <vertex x="9" y="9" z="9"/> ${'-'.repeat(3)}> -->${tetra}</mesh></object><build><item objectid="1"/></build>`;
    const text = `<model unit="millimeter">${' '.repeat(999_900)}${inside.replaceAll('><', `>${' '.repeat(37)}<`)}</model>`;
    for (const level of [0, 9] as const) {
      const found = read(zipSync({ '3D/3dmodel.model': strToU8(text) }, { level }));
      expect(measure(found.mesh).volume).toBeCloseTo(36, 12);
    }
  });
});
