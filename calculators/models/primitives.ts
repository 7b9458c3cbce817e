import { defineModel, type Result, type Row, type Scalar, type Step, type Values } from '../core/model.ts';
import { findSolid, solids, type Solid } from './solids.ts';

export interface Body {
  /** m³ */
  readonly volume: number;
  /** Outer surface, m². */
  readonly surface: number;
  /** The part of it that gives heat to the mould, m². */
  readonly cooled: number;
}

const positive = (value: Scalar): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value > 0;

/** One row's share of the whole, or a sentence saying what is wrong with it. */
function bodyOf(row: Row): (Body & { readonly solid: Solid; readonly count: number }) | string {
  const solid = findSolid(String(row.shape));
  if (!solid) return `there is no solid "${String(row.shape)}"`;
  const count = row.count ?? 1;
  if (!positive(count)) return `${solid.name}: the number of them must be above nought`;
  const given = [row.a, row.b, row.c].slice(0, solid.sizes.length);
  const missing = solid.sizes.find((_, i) => !positive(given[i]));
  if (missing !== undefined) return `${solid.name}: ${missing} is missing or not above nought`;
  const [a = 0, b = 0, c = 0] = given.filter(positive);
  const refused = solid.refuse?.(a, b, c);
  if (refused !== undefined) return refused;
  const surface = count * solid.surface(a, b, c);
  const uncooled = count * (solid.uncooled?.(a, b) ?? 0);
  return { solid, count, volume: count * solid.volume(a, b, c), surface, cooled: surface - uncooled };
}

const nothing = (...notes: readonly string[]): Result => ({ values: {}, steps: [], checks: [], notes });

function run(inputs: Values): Result {
  const rows = Array.isArray(inputs.solids) ? (inputs.solids as readonly Row[]) : [];
  if (rows.length === 0) return nothing('name at least one solid');
  const sum = { volume: 0, surface: 0, cooled: 0 };
  const steps: Step[] = [];
  for (const [index, row] of rows.entries()) {
    const body = bodyOf(row);
    if (typeof body === 'string') return nothing(`row ${index + 1}, ${body}`);
    sum.volume += body.volume;
    sum.surface += body.surface;
    sum.cooled += body.cooled;
    const title = `${body.count} × ${body.solid.name}`;
    const id = `solid-${index + 1}`;
    steps.push({ id: `${id}-volume`, title: `${title}: volume`, value: body.volume, unit: 'm³' });
    steps.push({ id: `${id}-cooled`, title: `${title}: cooled surface`, value: body.cooled, unit: 'm²' });
  }
  if (sum.volume <= 0) return nothing('the openings take away more metal than the solids bring');
  if (sum.cooled <= 0) return nothing('the joints take away more surface than the solids bring');
  const modulus = sum.volume / sum.cooled;
  steps.push({
    id: 'modulus',
    title: 'Volume over cooled surface',
    formula: 'freezing/modulus',
    given: { V: sum.volume, A: sum.cooled },
    find: 'M',
    value: modulus,
    unit: 'm',
  });
  return { values: { ...sum, modulus }, steps, checks: [], notes: [] };
}

const mm = 1e-3;

/**
 * Volume, outer surface, cooled surface (m³, m², m²) and modulus (m) of a part put together from simple solids.
 * A face where two solids meet is cooled on neither; a block that two share is counted once; a face on the
 * gate or feeder belongs to the surface but does not cool. A row that makes no body gives no result and a
 * note that names it.
 */
export const primitives = defineModel({
  id: 'pattern/primitives',
  title: 'Volume, surface and modulus of a part built from simple solids',
  answers: 'How large is this part, how much of it cools, and how thick does it freeze?',
  inputs: {
    solids: {
      kind: 'list',
      name: 'solids and joints',
      note: 'Add a joint for each face where two solids meet, and a crossing where two bars run through each other.',
      most: 60,
      item: {
        shape: {
          kind: 'choice',
          name: 'solid',
          options: Object.fromEntries(Object.entries(solids).map(([shape, { name }]) => [shape, name])),
          usual: 'plate',
        },
        count: {
          kind: 'quantity',
          name: 'how many',
          unit: '1',
          range: [1, 500],
          why: 'a part of many pieces',
          usual: 1,
        },
        a: {
          kind: 'quantity',
          name: 'first size',
          unit: 'm',
          show: 'mm',
          range: [0.0002, 0.5],
          why: 'small castings',
          usual: 0.01,
        },
        b: {
          kind: 'quantity',
          name: 'second size',
          unit: 'm',
          show: 'mm',
          range: [0.0002, 0.5],
          why: 'small castings',
        },
        c: {
          kind: 'quantity',
          name: 'third size',
          unit: 'm',
          show: 'mm',
          range: [0.0002, 0.5],
          why: 'small castings',
        },
      },
      usual: [
        { shape: 'plate', count: 2, a: 60 * mm, b: 4.5 * mm, c: 4.5 * mm },
        { shape: 'plate', count: 2, a: 27 * mm, b: 4.5 * mm, c: 4.5 * mm },
        { shape: 'joint', count: 4, a: 4.5 * mm, b: 4.5 * mm },
        { shape: 'plate', count: 12, a: 20 * mm, b: 2.2 * mm, c: 1.4 * mm },
        { shape: 'joint', count: 24, a: 2.2 * mm, b: 1.4 * mm },
        { shape: 'plate', count: 2, a: 12 * mm, b: 8 * mm, c: 7 * mm },
        { shape: 'joint', count: 2, a: 12 * mm, b: 4.5 * mm },
        { shape: 'gate', count: 1, a: 6 * mm, b: 4.5 * mm },
      ],
    },
  },
  outputs: {
    volume: { name: 'volume', sign: 'V', unit: 'm³', show: 'cm³' },
    surface: { name: 'outer surface', sign: 'A', unit: 'm²', show: 'cm²' },
    cooled: { name: 'surface that cools', sign: 'A_c', unit: 'm²', show: 'cm²' },
    modulus: { name: 'modulus of the whole', sign: 'M', unit: 'm', show: 'mm' },
  },
  run,
  assumes: [
    'sharp solids: small radii and draft are left out unless a fillet is added',
    'every solid lies outside the others except where a joint or a crossing says so',
    'the modulus of the whole hides thin and thick places: take each section by itself for the race and the feeding',
  ],
  source: { key: 'shop-practice', at: 'mensuration of simple solids', how: 'read' },
  examples: [
    {
      title: 'the lamp shield: its volume',
      given: {},
      expect: { volume: '5606.7 mm³' },
      from: {
        byHand:
          'frame (2 × 60 + 2 × 27) × 20.25 = 3523.5; webs 240 × 3.08 = 739.2; lugs 2 × 672 = 1344; sum 5606.7 mm³',
      },
    },
    {
      title: 'the lamp shield: what cools',
      given: {},
      expect: { cooled: '5487.08 mm²' },
      from: {
        byHand:
          'frame 2 × 1120.5 + 2 × 526.5 = 3294; webs 12 × 150.16 = 1801.92; lugs 2 × 472 = 944; sum 6039.92. Joints: corners 4 × 2 × 20.25 = 162; web ends 24 × 2 × 3.08 = 147.84; lugs 2 × 2 × 54 = 216; gate 27. 6039.92 − 552.84 = 5487.08 mm²',
      },
    },
    {
      title: 'the lamp shield: its modulus',
      given: {},
      expect: { modulus: '1.022 mm' },
      from: { byHand: '5606.7 ÷ 5487.08 = 1.0218 mm' },
    },
  ],
  words: ['area', 'geometry', 'junction', 'plate', 'rod', 'tube', 'hole'],
});
