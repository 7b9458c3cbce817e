import { addLost, tooMany } from './read-stl.ts';
import { lengthUnits, Refusal, type LengthUnit, type ReadMesh } from './mesh-file.ts';
import { isSpace, takeNumber, type Scan } from './scan.ts';
import { mostFaces, nowhere, startMesh, type Builder } from './triangles.ts';
import { directoryOf, mostUnpacked, unpack } from './unzip.ts';

/** Rows of a 3MF transform: nine of the turning, three of the shift; a point is a row before them. */
type Transform = readonly number[];
const still: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

interface Placed {
  readonly object: string;
  readonly transform: Transform;
}

interface Body {
  readonly points: Growing<Float64Array<ArrayBuffer>>;
  readonly faces: Growing<Uint32Array<ArrayBuffer>>;
  readonly components: Placed[];
}

/** Numbers in rows of three, without an object for each. */
interface Growing<Kind> {
  list: Kind;
  used: number;
}

const startBody = (): Body => ({
  points: { list: new Float64Array(96), used: 0 },
  faces: { list: new Uint32Array(96), used: 0 },
  components: [],
});

function put(
  to: Growing<Float64Array<ArrayBuffer>> | Growing<Uint32Array<ArrayBuffer>>,
  three: readonly number[],
): void {
  if (to.used + 3 > to.list.length) {
    const longer = 2 * to.list.length;
    if (to.list instanceof Float64Array) {
      const more = new Float64Array(longer);
      more.set(to.list);
      to.list = more;
    } else {
      const more = new Uint32Array(longer);
      more.set(to.list);
      (to as Growing<Uint32Array<ArrayBuffer>>).list = more;
    }
  }
  to.list[to.used] = three[0]!;
  to.list[to.used + 1] = three[1]!;
  to.list[to.used + 2] = three[2]!;
  to.used += 3;
}

interface Model {
  readonly bodies: Map<string, Body>;
  readonly items: Placed[];
  unit: LengthUnit | undefined;
}

const deepest = 16;

/** Reads the model parts of a 3MF and puts its objects where the build says. */
export function readThreeMf(bytes: Uint8Array): ReadMesh {
  const parts = directoryOf(bytes).filter(({ name }) => name.toLowerCase().endsWith('.model'));
  if (parts.length === 0) throw new Refusal('there is no model in the zip, so it is no 3MF');
  const model: Model = { bodies: new Map(), items: [], unit: undefined };
  let left = mostUnpacked;
  // The root model last, so that its unit and build stand.
  const rootLast = [...parts].sort((a, b) => Number(isRoot(a.name)) - Number(isRoot(b.name)));
  for (const part of rootLast) {
    const reading = startModel(`/${part.name.replace(/^\/+/, '')}`, model);
    left -= unpack(bytes, part, left, reading.take);
    reading.done();
  }
  const builder = startMesh();
  const notes: string[] = [];
  const items: Placed[] =
    model.items.length > 0
      ? model.items
      : [...model.bodies.keys()].map((object) => ({ object, transform: still }));
  if (model.items.length === 0) notes.push('The file builds nothing; every object in it is taken.');
  const sizes = new Map<string, number>();
  const whole = items.reduce((sum, { object }) => sum + sizeOf(model, object, sizes, []), 0);
  if (whole > mostFaces) throw tooMany(whole < 1e12 ? Math.round(whole) : 0);
  for (const item of items) place(model, item, builder);
  addLost(builder, notes);
  return {
    ok: true,
    format: '3MF',
    mesh: builder.done(),
    unit: model.unit ?? 'millimetre',
    notes,
  };
}

const isRoot = (name: string): boolean => /^\/?3d\/3dmodel\.model$/i.test(name);

/** Faces an object comes to with all it contains, and one for each placing, known before any is made. */
function sizeOf(model: Model, object: string, sizes: Map<string, number>, above: readonly string[]): number {
  const known = sizes.get(object);
  if (known !== undefined) return known;
  const body = model.bodies.get(object);
  if (!body) return 1;
  if (above.length > deepest || above.includes(object))
    throw new Refusal('its objects contain one another without end');
  const size = body.components.reduce(
    (sum, component) => sum + sizeOf(model, component.object, sizes, [...above, object]),
    1 + body.faces.used / 3,
  );
  sizes.set(object, size);
  return size;
}

function place(model: Model, { object, transform }: Placed, to: Builder): void {
  const body = model.bodies.get(object);
  if (!body) return;
  const { list: points, used } = body.points;
  const t = transform;
  const corner = (n: number): number => {
    if (!(3 * n + 2 < used)) return nowhere;
    const x = points[3 * n]!;
    const y = points[3 * n + 1]!;
    const z = points[3 * n + 2]!;
    return to.point(
      x * t[0]! + y * t[3]! + z * t[6]! + t[9]!,
      x * t[1]! + y * t[4]! + z * t[7]! + t[10]!,
      x * t[2]! + y * t[5]! + z * t[8]! + t[11]!,
    );
  };
  // A transform that mirrors turns the faces inside out.
  const [b, c] = mirrors(transform) ? [2, 1] : [1, 2];
  const { list: faces } = body.faces;
  for (let f = 0; f + 2 < body.faces.used; f += 3)
    to.face(corner(faces[f]!), corner(faces[f + b]!), corner(faces[f + c]!));
  for (const component of body.components)
    place(model, { object: component.object, transform: after(component.transform, transform) }, to);
}

function moved([x = 0, y = 0, z = 0]: readonly number[], t: Transform): number[] {
  return [0, 1, 2].map((d) => x * t[d]! + y * t[3 + d]! + z * t[6 + d]! + t[9 + d]!);
}

function after(first: Transform, then: Transform): Transform {
  const turned = (row: number, shift: boolean): number[] => {
    const from = [first[row]!, first[row + 1]!, first[row + 2]!];
    const at = moved(from, then);
    return shift ? at : at.map((value, d) => value - then[9 + d]!);
  };
  return [...turned(0, false), ...turned(3, false), ...turned(6, false), ...turned(9, true)];
}

function mirrors(t: Transform): boolean {
  const [a, b, c, d, e, f, g, h, i] = t as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g) < 0;
}

/** Tags longer than this are none of a model. */
const longestTag = 4_000_000;

/** Walks the tags of a model as they come out of the zip. Entities and document types are never followed. */
function startModel(path: string, model: Model): { take: (bytes: Uint8Array) => void; done: () => void } {
  let body: Body | undefined;
  let total = 0;
  let left = new Uint8Array(0);
  let commented = false;

  /** All tags that end in these bytes. */
  function walk(bytes: Uint8Array): void {
    const scan: Scan = { bytes, at: 0 };
    for (;;) {
      if (commented) {
        const end = endOfComment(bytes, scan.at);
        if (end < 0) return;
        commented = false;
        scan.at = end;
      }
      const open = bytes.indexOf(60, scan.at);
      if (open < 0) return;
      scan.at = open + 1;
      if (startsWith(bytes, scan.at, '!--')) {
        commented = true;
        continue;
      }
      const name = takeName(scan);
      if (name === 'vertex' && body) put(body.points, takeNumbers(scan, xyz));
      else if (name === 'triangle' && body) {
        put(body.faces, takeNumbers(scan, corners).map(asCorner));
        total += 1;
        if (total > mostFaces) throw tooMany(0);
      } else if (name === 'object') {
        const { id = '' } = takeTexts(scan);
        body = startBody();
        model.bodies.set(`${path}#${id}`, body);
      } else if (name === 'component' && body) {
        body.components.push(placedBy(takeTexts(scan), path));
      } else if (name === 'item') {
        model.items.push(placedBy(takeTexts(scan), path));
      } else if (name === 'model') {
        const { unit = 'millimeter' } = takeTexts(scan);
        const ours = unit === 'meter' ? 'metre' : unit.replace('meter', 'metre');
        if (ours in lengthUnits) model.unit = ours as LengthUnit;
      }
      if (model.items.length > 100_000 || (body?.components.length ?? 0) > 100_000)
        throw new Refusal('it places far more objects than a part has');
    }
  }

  return {
    take: (piece) => {
      const bytes = new Uint8Array(left.length + piece.length);
      bytes.set(left);
      bytes.set(piece, left.length);
      const cut = bytes.lastIndexOf(62) + 1;
      if (bytes.length - cut > longestTag) throw new Refusal('a tag in it is longer than any of a model');
      walk(bytes.subarray(0, cut));
      left = bytes.slice(cut);
    },
    done: () => walk(left),
  };
}

const xyz = ['x', 'y', 'z'] as const;
const corners = ['v1', 'v2', 'v3'] as const;
/** What is no number of a point becomes one that no body has. */
const asCorner = (n: number): number => (Number.isInteger(n) && n >= 0 && n < nowhere ? n : nowhere);

function placedBy(given: Readonly<Record<string, string>>, path: string): Placed {
  const file = given['path'] ?? path;
  const numbers = (given['transform'] ?? '').trim().split(/\s+/).map(Number);
  const transform = numbers.length === 12 && numbers.every(Number.isFinite) ? numbers : still;
  return { object: `${file.startsWith('/') ? file : `/${file}`}#${given['objectid'] ?? ''}`, transform };
}

function startsWith(bytes: Uint8Array, at: number, text: string): boolean {
  for (let i = 0; i < text.length; i += 1) if (bytes[at + i] !== text.charCodeAt(i)) return false;
  return true;
}

function endOfComment(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(62, from); at >= 0; at = bytes.indexOf(62, at + 1))
    if (bytes[at - 1] === 45 && bytes[at - 2] === 45) return at + 1;
  return -1;
}

const isName = (byte: number): boolean =>
  (byte >= 48 && byte <= 57) || (byte >= 65 && byte <= 90) || (byte >= 97 && byte <= 122);

/** The name that stands here, without what comes before a colon; at most sixteen letters of it. */
function takeName(scan: Scan): string {
  const { bytes } = scan;
  let name = '';
  while (scan.at < bytes.length) {
    const byte = bytes[scan.at]!;
    if (byte === 58) name = '';
    else if (isName(byte) || byte === 95 || byte === 45) {
      if (name.length < 16) name += String.fromCharCode(byte);
    } else break;
    scan.at += 1;
  }
  return name;
}

/** To the next attribute of this tag: its name; undefined at the tag's end. Leaves the scan after the quote. */
function takeAttribute(scan: Scan): { readonly name: string; readonly quote: number } | undefined {
  const { bytes } = scan;
  for (;;) {
    while (scan.at < bytes.length && (isSpace(bytes[scan.at]!) || bytes[scan.at] === 47)) scan.at += 1;
    const byte = bytes[scan.at];
    if (byte === undefined || byte === 62 || byte === 60) return undefined;
    const name = takeName(scan);
    while (scan.at < bytes.length && (isSpace(bytes[scan.at]!) || bytes[scan.at] === 61)) scan.at += 1;
    const quote = bytes[scan.at];
    if (quote !== 34 && quote !== 39) {
      if (name === '') scan.at += 1;
      continue;
    }
    scan.at += 1;
    return { name, quote };
  }
}

function pastQuote(scan: Scan, quote: number): void {
  const end = scan.bytes.indexOf(quote, scan.at);
  scan.at = end < 0 ? scan.bytes.length : end + 1;
}

function takeNumbers(scan: Scan, names: readonly string[]): number[] {
  const found = [Number.NaN, Number.NaN, Number.NaN];
  for (let next = takeAttribute(scan); next; next = takeAttribute(scan)) {
    const at = names.indexOf(next.name);
    if (at >= 0) {
      while (scan.at < scan.bytes.length && isSpace(scan.bytes[scan.at]!)) scan.at += 1;
      found[at] = takeNumber(scan);
    }
    pastQuote(scan, next.quote);
  }
  return found;
}

function takeTexts(scan: Scan): Record<string, string> {
  const found: Record<string, string> = {};
  for (let next = takeAttribute(scan); next; next = takeAttribute(scan)) {
    const from = scan.at;
    pastQuote(scan, next.quote);
    const bytes = scan.bytes.subarray(from, Math.min(scan.at - 1, from + 600));
    found[next.name] = String.fromCharCode(...bytes);
  }
  return found;
}
