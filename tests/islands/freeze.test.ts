import { describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { timeBoth } from '../../calculators/formulas/freezing/time-both.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { metalCells, volumeOf } from '../../calculators/models/conduction/mesh.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { transient } from '../../calculators/models/transient.ts';
import { whyApart } from '../../src/islands/beside-rule.ts';
import { ranksOf, ruleOf } from '../../src/islands/freeze/answer.ts';
import { askedOf } from '../../src/islands/freeze/asked.ts';
import { shapes, shown, type ShapeName } from '../../src/islands/freeze/shapes.ts';
import { heatStep } from '../../src/islands/freeze/colours.ts';
import { partOf } from '../../src/islands/freeze/part.ts';
import { cellAt, centreOf, viewOf } from '../../src/islands/freeze/picture.ts';
import { csvOf } from '../../src/islands/freeze/saving.ts';
import type { Frozen, Meshed, Solved } from '../../src/islands/freeze/solver.ts';
import {
  emptyTee,
  readSquares,
  sheetSize,
  thinnestOf,
  writeSquares,
} from '../../src/islands/freeze/squares.ts';
import { cubesBy } from '../../src/workers/conduction-cubes.ts';
import { layCubes } from '../../src/workers/conduction-lay-cubes.ts';
import { isInCubes, layOut, type Shape } from '../../src/workers/conduction-shape.ts';
import { solvePart, type Part } from '../../src/workers/conduction-work.ts';

const inputs = askedOf(transient.inputs);
const books = resolvedMaterials(materials);
type Texts = Readonly<Record<string, unknown>>;
const valuesOf = (texts: Texts) => completeInputs({ id: 'freeze', inputs }, texts, books).values;
const asked = (texts: Texts) => partOf(valuesOf(texts), 8, timeBoth);
const partFor = (texts: Texts): Part => {
  const found = asked(texts);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.part;
};
const problems = (texts: Texts): Readonly<Record<string, readonly string[]>> => {
  const found = asked(texts);
  return found.ok ? {} : found.problems;
};

const laidOut = (shape: Shape, most: number) =>
  isInCubes(shape) ? layCubes(shape, 'fine', most) : layOut(shape, 'fine', most);

describe('squared paper', () => {
  it('comes back from its text as it was, whatever is drawn', () => {
    const random = createRandom('squares');
    const count = sheetSize.width * sheetSize.height;
    for (let n = 0; n < 100; n += 1) {
      const squares = Uint8Array.from({ length: count }, () => Math.floor(3 * random.uniform()));
      expect(readSquares(writeSquares({ ...sheetSize, squares }))?.squares).toEqual(squares);
    }
  });

  it.each(['', 'a', 'd384', 'a383', 'a385', 'a384b1', 'a99999', '384', 'a200 b184', 'b200b184a1'])(
    'is none in %o',
    (text) => expect(readSquares(text)).toBeUndefined(),
  );

  it('knows its thinnest place, along or up', () => {
    // The sample is a web four squares thick under one four squares wide.
    expect(thinnestOf(emptyTee())).toBe(4);
    const drawn = emptyTee();
    drawn.squares[0] = 0;
    expect(thinnestOf(drawn)).toBe(1);
    expect(thinnestOf({ ...drawn, squares: drawn.squares.map(() => 1) })).toBe(Infinity);
    // Metal to the edge of the paper ends there.
    const full = { ...sheetSize, squares: new Uint8Array(sheetSize.width * sheetSize.height) };
    expect(thinnestOf(full)).toBe(sheetSize.height);
  });
});

describe('a section put together', () => {
  // Sizes of the page, in mm, half or a quarter where a plane of symmetry leaves the rest out: by hand.
  const round = (area: number): number => 2 * Math.PI * area;
  it.each([
    ['plate', 12 * 2, 1e-6],
    ['bar', round((4 * 4) / 2) * 8, 1e-9],
    ['corner', (4 + 14) * 4 + 14 * 4, 1e-6],
    ['tee', (2 + 14) * 4 + 2 * 14, 1e-6],
    ['boss', round((12 * 12) / 2) * 4 + round((4 * 4) / 2) * 6, 1e-9],
    ['block', 12 * 8 * 2, 1e-9],
    ['square-boss', 12 * 12 * 4 + 4 * 4 * 6, 1e-9],
    ['drawn', 4 * 18 + 8 * 4, 1e-6],
  ] as const)('holds the metal it should: %s', async (shape, metal, unit) => {
    const part = partFor({ shape, fine: '4' });
    const laid = await laidOut(part.shape, part.most);
    if (typeof laid === 'string') throw new Error(laid);
    const whole = metalCells(laid.mesh).reduce((sum, cell) => sum + volumeOf(laid.mesh, cell), 0);
    expect(whole / (metal * unit)).toBeCloseTo(1, 6);
  });

  it('has as many cells across its thinnest place as asked', () => {
    const part = partFor({ shape: 'corner', second: '2 mm', fine: '8' });
    expect(part.shape.kind === 'section' && part.shape.section.spacing).toBeCloseTo(0.00025, 12);
  });

  it('puts a chill under the heavy place only when asked', () => {
    const regions = (texts: Texts) => {
      const { shape } = partFor(texts);
      return shape.kind === 'section' ? shape.section.rectangles.map(({ region }) => region) : [];
    };
    expect(regions({ shape: 'tee' })).toEqual([0, 0]);
    expect(regions({ shape: 'tee', chill: 'under' })).toEqual([0, 0, 2]);
  });

  it('asks for what its shape needs and for no more', () => {
    for (const shape of Object.keys(shapes) as ShapeName[]) {
      const names = Object.keys(shown(inputs, shape, false));
      for (const name of shapes[shape]) if (name !== 'squares') expect(names, shape).toContain(name);
      expect(names.some((name) => name.startsWith('chill.'))).toBe(false);
    }
    expect(Object.keys(shown(inputs, 'tee', true))).toContain('chill.depth');
    expect(Object.keys(shown(inputs, 'plate', true))).not.toContain('chill.k');
  });

  it('holds more cells where the device has more memory', () => {
    const most = (memory: number): number => {
      const found = partOf(valuesOf({ shape: 'block' }), 8, timeBoth, memory);
      return found.ok ? found.part.most : 0;
    };
    expect(most(1)).toBeLessThan(most(4));
    expect(most(8)).toBeGreaterThan(most(4));
    expect(most(1024)).toBe(most(8));
  });
});

describe('what cannot be', () => {
  it.each([
    [{ thickness: '0 mm' }, 'thickness', /above nought/],
    [{ thickness: '-3 mm' }, 'thickness', /above nought/],
    [{ shape: 'drawn', side: '0 mm' }, 'side', /above nought/],
    [{ chill: 'under', 'chill.depth': '0 mm' }, 'chill.depth', /above nought/],
    [{ 'metal.solidus': '1000 °C', 'metal.liquidus': '900 °C' }, 'metal.solidus', /above the liquidus/],
    [{ 'mould.initial': -5 }, 'mould.initial', /absolute zero/],
    [{ 'metal.initial': 0 }, 'metal.initial', /absolute zero/],
    [{ shape: 'boss', 'boss.width': '24 mm' }, 'boss.width', /make it narrower/],
    [{ shape: 'drawn', squares: 'b384' }, 'squares', /no square is metal/],
    [{ shape: 'drawn', squares: 'zebra' }, 'squares', /could not be read/],
  ])('is told beside its field: %o', (texts, field, sentence) => {
    expect(problems(texts)[field]?.join(' ')).toMatch(sentence);
  });

  it('does not ask about sizes the shape does not have', () => {
    expect(problems({ shape: 'bar', thickness: '0 mm' })).toEqual({});
  });

  it('is a billion cells: the spacing that would fit is told', async () => {
    const part = partFor({ shape: 'block', thickness: '0.01 mm' });
    const laid = await laidOut(part.shape, part.most);
    expect(laid).toMatch(/cells, more than this device should hold\. A spacing of .* mm would fit/);
  });
});

describe('the quick rule beside the solver', () => {
  it('is that of the library', () => {
    // The web of the lamp shield worked by hand: M 0.428 mm, ρ 7700, L 200 kJ/kg, c 480, poured at 1100 °C with the
    // liquidus at 970 and 915 °C in the middle, b 1000, h 1000, mould at 20 °C: 2.10 s.
    const values = valuesOf({
      'metal.rho': '7700 kg/m³',
      'metal.L': '200 kJ/kg',
      'metal.c': '480 J/(kg·K)',
      'metal.liquidus': '970 °C',
      'metal.solidus': '860 °C',
      'metal.initial': '1100 °C',
      'mould.k': '1 W/(m·K)',
      'mould.rho': '1000 kg/m³',
      'mould.c': '1000 J/(kg·K)',
      'mould.initial': '20 °C',
      h_interface: '1000 W/(m²·K)',
    });
    expect(ruleOf(values, 0.428e-3, timeBoth)).toBeCloseTo(2.1, 2);
    expect(ruleOf(values, Number.NaN, timeBoth)).toBeUndefined();
  });

  it('says why they differ by the sign of the difference', () => {
    const wide = { range: 110, error: 0.03 };
    for (const of of ['whole', 'place'] as const) {
      expect(whyApart(of, 10, 10.5, wide)).toMatch(/agree/);
      // What the cells may put off is no difference.
      expect(whyApart(of, 10, 11.5, { ...wide, error: 0.2 })).toMatch(/agree/);
      expect(whyApart(of, 10, 14, wide)).toMatch(/all 110 degrees/);
      expect(whyApart(of, 10, 14, { ...wide, range: 0.5 })).not.toMatch(/degrees/);
      expect(whyApart(of, 10, 7, wide)).toMatch(/more mould to give heat to/);
    }
    expect(whyApart('whole', 10, 14, wide)).toMatch(/heavy place outlasts the mean/);
    expect(whyApart('place', 10, 14, wide)).not.toMatch(/mean/);
  });
});

describe('the pictures', () => {
  it('rank the worst fed first and leave out what has no number', () => {
    expect([...ranksOf(Float32Array.from([3, Number.NaN, 1, 2]))]).toEqual([1, Number.NaN, 0, 0.5]);
  });

  it('keep the heat scale inside its ends, 20 to 1200 °C', () => {
    expect(heatStep(0)).toBe(0);
    expect(heatStep(293.15)).toBe(0);
    expect(heatStep(1473.15)).toBe(255);
    expect(heatStep(5000)).toBe(255);
  });
});

describe('a section frozen', () => {
  async function solved(texts: Texts): Promise<Solved> {
    const means = {
      cubes: () => Promise.resolve(cubesBy('plain', plainKernel)),
      now: () => 0,
      turn: () => Promise.resolve(),
      stopped: () => false,
    };
    let mesh: Meshed | undefined;
    let frozen: Frozen | undefined;
    for await (const reply of solvePart(1, partFor(texts), means)) {
      if (reply.kind === 'mesh') mesh = reply;
      if (reply.kind === 'frozen') frozen = reply;
    }
    return { mesh: mesh!, frozen: frozen! };
  }

  it('is written as a line a cell of metal, with the time that is shown', async () => {
    const found = await solved({ shape: 'tee', fine: '4' });
    const lines = csvOf(found, 'https://example.org/freeze/#freeze:shape=tee').trim().split('\r\n');
    const rows = lines.filter((line) => !line.startsWith('#')).slice(1);
    expect(rows).toHaveLength(found.frozen.result.metal.length);
    const cells = rows.map((row) => row.split(',').map(Number));
    for (const [x, y, , begins, solid] of cells) {
      // Inside the part, mm: the lying web 16 by 4, the standing one 2 by 18.
      expect(x! < 16 && y! > 0 && (y! < 4 || (x! < 2 && y! < 18))).toBe(true);
      expect(begins!).toBeLessThan(solid!);
    }
    const last = Math.max(...cells.map((row) => row[4]!));
    expect(last / found.frozen.result.last!.time).toBeCloseTo(1, 4);
    // Last where the webs meet, near the middle plane.
    const [x, y] = centreOf(viewOf(found.mesh, 0, 0), found.frozen.result.last!.cell);
    expect(x).toBeLessThan(0.001);
    expect(y).toBeGreaterThan(0.001);
    expect(y).toBeLessThan(0.006);
  });

  it('is found under the pointer on both sides of its plane of symmetry', async () => {
    const { mesh } = await solved({ shape: 'plate', fine: '4' });
    const view = viewOf(mesh, 0, 0.3);
    expect(view.left).toBeCloseTo(-view.right, 9);
    const cell = cellAt(view, 0.005, 0.0005);
    expect(cellAt(view, -0.005, 0.0005)).toBe(cell);
    expect(cellAt(view, -0.005, -0.0005)).toBe(cell);
    const [x, y] = centreOf(view, cell);
    expect(Math.abs(x - 0.005)).toBeLessThan(0.001);
    expect(Math.abs(y - 0.0005)).toBeLessThan(0.001);
  });
});
