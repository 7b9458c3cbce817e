import type { Formula } from '../../../calculators/core/formula.ts';
import type { Values } from '../../../calculators/core/model.ts';
import type { Rectangle } from '../../../calculators/models/conduction/section.ts';
import type { Solid } from '../../../calculators/models/conduction/solids.ts';
import { numberAt, textAt } from '../../../calculators/models/given.ts';
import { metalOf, othersOf } from '../../../calculators/models/transient/substances.ts';
import type { Shape } from '../../workers/conduction-shape.ts';
import type { Part } from '../../workers/conduction-work.ts';
import { soaked } from '../beside-rule.ts';
import { ruleOf } from './answer.ts';
import { shapes, type ShapeName } from './shapes.ts';
import { readSquares, thinnestOf } from './squares.ts';

/** A casting to send to the worker, or what is wrong, beside the field it is wrong in. */
export type Asked =
  | { readonly ok: true; readonly part: Part }
  | { readonly ok: false; readonly problems: Readonly<Record<string, readonly string[]>> };

/** Most cells that are asked of a device: the exact engine takes 200 bytes for each, the other 32. */
const mostOf = { flat: 60_000, solid: 2_000_000 } as const;

/** Cells of mould grow outwards by this ratio. */
const ratio = 1.2;

export function partOf(values: Values, frames: number, rule: Formula, memory = 4): Asked {
  const shape = (textAt(values, 'shape') || 'tee') as ShapeName;
  const problems = wrong(values, shape);
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const chilled = textAt(values, 'chill') === 'under';
  const metal = metalOf(values);
  const others = othersOf(values).slice(0, 2);
  const start = ['metal.initial', 'mould.initial', 'chill.initial'].map((name) => numberAt(values, name));
  // How far heat soaks into the mould while it freezes by the rule: beyond a few times that it is as it was.
  const depth = soaked(others[0]!, ruleOf(values, modulus(values, shape), rule) ?? 60);
  const solid = shape === 'block' || shape === 'square-boss';
  const most = solid ? mostOf.solid * Math.min(2, Math.max(0.25, memory / 4)) : mostOf.flat;
  const wall = Math.min(0.08, Math.max(0.002, (solid ? 3 : 4) * depth));
  return {
    ok: true,
    part: { shape: shapeOf(values, shape, chilled, wall), metal, others, start, most, frames },
  };
}

const lengthsOf = ['thickness', 'second', 'arm', 'diameter', 'length', 'width', 'depth', 'boss.width'];

function wrong(values: Values, shape: ShapeName): Record<string, readonly string[]> {
  const asks: readonly string[] = shapes[shape];
  const found: Record<string, readonly string[]> = {};
  const at = (name: string): number => numberAt(values, name);
  for (const name of [...lengthsOf, 'boss.height', 'side'])
    if (asks.includes(name) && !(at(name) > 0)) found[name] = ['a size must be above nought'];
  if (asks.includes('chill') && textAt(values, 'chill') === 'under' && !(at('chill.depth') > 0))
    found['chill.depth'] = ['a size must be above nought'];
  if (asks.includes('boss.width') && at('boss.width') >= at('width'))
    found['boss.width'] = ['the boss is as wide as its plate or wider: make it narrower'];
  if (at('metal.solidus') > at('metal.liquidus'))
    found['metal.solidus'] = ['the solidus is above the liquidus: exchange them, or make them equal'];
  for (const name of ['metal.initial', 'mould.initial', 'chill.initial'])
    if (!(at(name) > 0)) found[name] = ['nothing is colder than absolute zero, −273.15 °C'];
  if (shape !== 'drawn') return found;
  const sheet = readSquares(textAt(values, 'squares'));
  if (!sheet) found['squares'] = ['the drawing could not be read'];
  else if (!sheet.squares.includes(0)) found['squares'] = ['no square is metal: draw some'];
  return found;
}

/** Of the heaviest place, m: what the depth of the mould is measured by. */
function modulus(values: Values, shape: ShapeName): number {
  const at = (name: string): number => numberAt(values, name);
  const flat = (a: number, b: number): number => 1 / (2 / a + 2 / b);
  if (shape === 'plate') return flat(at('thickness'), at('width'));
  if (shape === 'bar') return 1 / (4 / at('diameter') + 2 / at('length'));
  if (shape === 'block') return 1 / (2 / at('thickness') + 2 / at('width') + 2 / at('depth'));
  if (shape === 'corner' || shape === 'tee') return 0.65 * Math.max(at('thickness'), at('second'));
  if (shape === 'drawn') {
    const sheet = readSquares(textAt(values, 'squares'))!;
    const metal = sheet.squares.reduce((sum, region) => sum + (region === 0 ? 1 : 0), 0);
    // At most that of a round bar of the same section.
    return (Math.sqrt(metal / Math.PI) / 2) * at('side');
  }
  const high = at('thickness') + at('boss.height');
  return Math.max(at('thickness') / 2, 1 / (4 / at('boss.width') + 1 / high));
}

function shapeOf(values: Values, shape: ShapeName, chilled: boolean, wall: number): Shape {
  const at = (name: string): number => numberAt(values, name);
  const cells = Number(textAt(values, 'fine')) || 8;
  const t = at('thickness');
  const chill = at('chill.depth');
  if (shape === 'drawn') {
    const sheet = readSquares(textAt(values, 'squares'))!;
    const turned = values['turned'] === true;
    return {
      kind: 'drawing',
      cut: Math.max(1, Math.min(6, Math.round(cells / thinnestOf(sheet)))),
      drawing: {
        ...sheet,
        turned,
        side: at('side'),
        wall,
        ratio,
        mirror: { x: turned, y: false },
        smooth: values['smooth'] === true,
      },
    };
  }
  const section = (
    rectangles: readonly Rectangle[],
    thinnest: number,
    mirror: { x: boolean; y: boolean },
    turned = false,
  ): Shape => ({
    kind: 'section',
    section: { turned, rectangles, spacing: thinnest / cells, wall, ratio, mirror },
  });
  const box = (
    low: readonly [number, number, number],
    high: readonly [number, number, number],
    region = 0,
  ): Solid => ({ kind: 'box', region, low, high });
  const width = at('width');
  const boss = at('boss.width');
  const high = t + at('boss.height');
  const under = (x: number, w: number): Rectangle[] =>
    chilled ? [{ x, y: -chill, width: w, height: chill, region: 2 }] : [];
  const metal = (x: number, y: number, w: number, h: number): Rectangle => ({
    x,
    y,
    width: w,
    height: h,
    region: 0,
  });
  switch (shape) {
    case 'plate':
      return section([metal(0, 0, width / 2, t / 2)], Math.min(t, width), { x: true, y: true });
    case 'bar': {
      const [d, l] = [at('diameter'), at('length')];
      return section([metal(0, 0, d / 2, l / 2)], Math.min(d, l), { x: true, y: true }, true);
    }
    case 'corner': {
      const [s, arm] = [at('second'), at('arm')];
      const webs = [metal(0, 0, s + arm, t), metal(0, 0, s, t + arm)];
      return section([...webs, ...under(0, 2 * s)], Math.min(t, s), { x: false, y: false });
    }
    case 'tee': {
      const [s, arm] = [at('second'), at('arm')];
      const webs = [metal(0, 0, s / 2 + arm, t), metal(0, 0, s / 2, t + arm)];
      return section([...webs, ...under(0, s)], Math.min(t, s), { x: true, y: false });
    }
    case 'boss': {
      const bodies = [metal(0, 0, width / 2, t), metal(0, 0, boss / 2, high)];
      return section([...bodies, ...under(0, boss / 2)], Math.min(t, boss), { x: true, y: false }, true);
    }
    case 'block': {
      const [d, thinnest] = [at('depth'), Math.min(t, width, at('depth'))];
      return {
        kind: 'voxels',
        voxels: {
          solids: [box([-width / 2, -d / 2, -t / 2], [width / 2, d / 2, t / 2])],
          spacing: thinnest / cells,
          wall,
          mirror: [true, true, true],
        },
      };
    }
    case 'square-boss': {
      const [w, b] = [width / 2, boss / 2];
      const bodies = [box([-w, -w, 0], [w, w, t]), box([-b, -b, 0], [b, b, high])];
      const below = chilled ? [box([-b, -b, -chill], [b, b, 0], 2)] : [];
      return {
        kind: 'voxels',
        voxels: {
          solids: [...bodies, ...below],
          spacing: Math.min(t, boss) / cells,
          wall,
          mirror: [true, true, false],
        },
      };
    }
  }
}
