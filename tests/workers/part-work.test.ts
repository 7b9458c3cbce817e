import { describe, expect, it } from 'vitest';
import { fittings } from '../../calculators/meshes/fittings.ts';
import { ball, box } from '../../calculators/meshes/forms.ts';
import { guessUnit } from '../../calculators/meshes/unit-guess.ts';
import { writeStl, writeThreeMf } from '../../calculators/meshes/write.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { planOf, sectionNames } from '../../src/islands/part/into-plan.ts';
import { cubesBy } from '../../src/workers/conduction-cubes.ts';
import { bandEnds, bandOf, bands } from '../../src/workers/part-tones.ts';
import { drawPart } from '../../src/workers/part-view.ts';
import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { solvePart, type Means, type Part } from '../../src/workers/conduction-work.ts';
import { bronze, sand } from '../models/conduction/ways.ts';
import { startPart, type Gated, type Reply, type Settled } from '../../src/workers/part-work.ts';

function worked(bytes: Uint8Array, name: string, shrink = 1) {
  const replies: Reply[] = [];
  const ask = startPart((reply) => replies.push(reply));
  ask({ kind: 'open', bytes: bytes.slice().buffer, name });
  ask({ kind: 'settle', unit: 'millimetre', shrink, fineness: 'quick' });
  ask({ kind: 'gate', at: 'heaviest', radius: 0.002, metal: undefined });
  const of = <Kind extends Reply['kind']>(kind: Kind) =>
    replies.filter((one): one is Extract<Reply, { kind: Kind }> => one.kind === kind).at(-1);
  return { ask, of };
}

describe('a part off the main thread', () => {
  it('goes from bytes to numbers in SI', () => {
    const { of } = worked(writeStl(box(40, 20, 5)), 'block.stl');
    expect(of('opened')).toMatchObject({ format: 'STL', faces: 12, faults: [], unit: 'millimetre' });
    const settled = of('settled')!;
    expect(settled.volume).toBeCloseTo(4e-6, 12);
    expect(settled.area).toBeCloseTo(2 * (800 + 200 + 100) * 1e-6, 10);
    expect(settled.balance.map((x) => Math.round(x * 1e4))).toEqual([200, 100, 25]);
    expect(settled.seen[2]!.area).toBeCloseTo(8e-4, 5);
    expect(of('gated')!.thin[0]!.thick).toBeCloseTo(0.005, 4);
  });

  it('takes the contraction out of a file as large as the pattern', () => {
    const { of } = worked(writeStl(box(102, 51, 10.2)), 'pattern.stl', 1 / 1.02);
    expect(of('settled')!.extent[0]).toBeCloseTo(0.1, 9);
    expect(of('settled')!.volume).toBeCloseTo(50e-6, 10);
  });

  it('believes the unit a 3MF states', () => {
    const { of } = worked(writeThreeMf(box(2, 1, 0.25), 'inch'), 'plate.3mf');
    expect(of('opened')).toMatchObject({ unit: 'inch', unitSure: true });
  });

  it('answers with a sentence and goes on', () => {
    const { ask, of } = worked(new Uint8Array([1, 2, 3]), 'a.stl');
    expect(of('refused')!.why).toMatch(/\.$/);
    expect(of('settled')).toBeUndefined();
    ask({ kind: 'open', bytes: writeStl(ball(10, 12)).slice().buffer as ArrayBuffer, name: 'ball.stl' });
    expect(of('opened')?.name).toBe('ball.stl');
  });

  it('picks the place on the surface under the pointer, and draws nothing beside the part', () => {
    const { ask, of } = worked(writeStl(box(40, 20, 5)), 'block.stl');
    const look = { yaw: 0, pitch: 90, width: 200, height: 150, dark: false };
    ask({ kind: 'view', look, shown: 'thick', name: 'main' });
    ask({ kind: 'pick', x: 100, y: 75 });
    const at = of('picked')!.at!;
    expect(Math.abs(at[0] - 20)).toBeLessThan(0.3);
    expect(Math.abs(at[1] - 10)).toBeLessThan(0.3);
    expect(at[2]).toBeCloseTo(5, 4);
    ask({ kind: 'pick', x: 2, y: 2 });
    expect(of('picked')!.at).toBeUndefined();
    const view = of('view')!;
    expect(view.pixels[3]).toBe(0);
    expect(view.pixels[4 * (75 * 200 + 90) + 3]).toBe(255);
  });

  it('cuts through the middle: metal inside, its outline in ink', () => {
    const { ask, of } = worked(writeStl(box(40, 20, 5)), 'block.stl');
    ask({ kind: 'cut', axis: 2, share: 0.5, shown: 'thick', dark: false, widest: 300 });
    const { pixels, width, height, at } = of('cut')!;
    expect(Math.abs(at - 0.0025)).toBeLessThan(of('settled')!.cell);
    const filled = pixels.filter((_, n) => n % 4 === 3 && pixels[n] === 255).length;
    expect(filled / (width * height)).toBeGreaterThan(0.7);
  });
});

describe('gate and button beside the part, and the solver', () => {
  const button = { button: true, width: 0.005, length: 0.004, diameter: 0.016, height: 0.012 };

  it('change where it freezes last, and go into the plan', () => {
    const { ask, of } = worked(writeStl(box(30, 20, 5)), 'block.stl');
    expect(of('gated')!.spots[0]!.body).toBe('part');
    const before = of('settled')!.volume;
    ask({ kind: 'gate', at: 'heaviest', radius: 0.0025, metal: button });
    const gated = of('gated')!;
    expect(gated.spots[0]!.body).toBe('button');
    const added = gated.added!;
    // 5 · 5 · 4 = 100 and π/4 · 16² · 12 = 2412.7 mm³
    expect(added.stub + added.button).toBeCloseTo(2512.7e-9, 10);
    expect(added.volume / (before + 2512.7e-9)).toBeCloseTo(1, 1.7);
    // The rows stay those of the part.
    expect(gated.sections).toHaveLength(1);
    const plan = planOf('block.stl', of('settled')!, gated, 'silicon-bronze', 25e-6);
    expect(plan.texts['sprue.volume']).toBe('2.51 cm³');
    // A shop that measures in inches is shown them, of the same numbers.
    const abroad = planOf('block.stl', of('settled')!, gated, 'silicon-bronze', 25e-6, 'us').texts;
    expect(abroad).toMatchObject({ 'sprue.volume': '2.51 cm³ ~ in³', 'gate.area': '25 mm² ~ in²' });
    // Pressing the button itself moves no gate.
    const look = { yaw: 0, pitch: 90, width: 200, height: 150, dark: false };
    ask({ kind: 'view', look, shown: 'modulus', name: 'main' });
    ask({ kind: 'pick', x: 100, y: 75 });
    expect(of('picked')!.at).toBeUndefined();
  });

  it('hand their cells to the solver, and its times come back by place', async () => {
    const { ask, of } = worked(writeStl(box(30, 20, 5)), 'block.stl');
    ask({ kind: 'gate', at: 'heaviest', radius: 0.0025, metal: button });
    ask({ kind: 'cells', wall: 0.008, most: 60_000 });
    const cells = of('cells')!;
    expect(cells.fine.region.length).toBeLessThan(70_000);
    expect(Math.abs(cells.weigh - 1)).toBeLessThan(0.08);
    const means: Means = {
      cubes: () => Promise.resolve(cubesBy('plain', plainKernel)),
      now: () => 0,
      turn: () => Promise.resolve(),
      stopped: () => false,
    };
    const part: Part = {
      shape: { kind: 'cells', coarse: cells.coarse, fine: cells.fine },
      metal: bronze,
      others: [sand],
      start: [1373.15, 293.15],
      most: 1e6,
    };
    const passes: string[] = [];
    for await (const reply of solvePart(1, part, means)) {
      if (reply.kind === 'refused') throw new Error(reply.why);
      if (reply.kind !== 'frozen') continue;
      passes.push(reply.pass);
      const { metal, solidus } = reply.result;
      ask({ kind: 'times', pass: reply.pass, cells: metal, solid: solidus });
    }
    expect(passes).toEqual(['coarse', 'fine']);
    const timed = of('timed')!;
    expect(timed.last.body).toBe('button');
    const plate = timed.places.find(({ name }) => name === '5 mm thick')!;
    expect(plate.solid).toBeLessThan(timed.last.solid);
    // A plate of 5 mm with edges by the rule, and by the solver: of one size.
    expect(plate.solid).toBeGreaterThan(5);
    ask({
      kind: 'view',
      look: { yaw: 0, pitch: 0, width: 200, height: 150, dark: false },
      shown: 'froze',
      name: 'main',
    });
    expect(of('view')!.marks.map(({ name }) => name)).toEqual(['Gate', 'Last']);
  });
});

describe('a part seen from above', () => {
  it('shows as much of the picture as its outline has', () => {
    const size = 300;
    const { faces } = drawPart(ball(10, 60), undefined, undefined, {
      yaw: 20,
      pitch: 50,
      width: size,
      height: size,
      dark: false,
    });
    const seen = faces.filter((face) => face >= 0).length;
    // The drawing's scale puts the diagonal of the box, 20 √3, on 92 % of the picture
    const radius = (0.92 * size * 10) / (20 * Math.sqrt(3));
    expect(seen / (Math.PI * radius ** 2)).toBeCloseTo(1, 1.7);
  });
});

describe('the tones of a map', () => {
  it('part the scale evenly by ratio, the ends in the end tones', () => {
    const ends = { low: 1, high: 64 };
    expect(bandEnds(ends).map((x) => Math.round(x))).toEqual([1, 2, 4, 8, 16, 32, 64]);
    expect([0.5, 1.5, 5, 40, 100].map((x) => bandOf(x, ends))).toEqual([0, 0, 2, 5, 5]);
    expect(bandOf(3, { low: 3, high: 3 })).toBeLessThan(bands);
  });
});

describe('the unit a file leaves out', () => {
  it.each([
    [76.9, 'millimetre', true],
    [3, 'inch', false],
    [0.08, 'metre', true],
    [0.5, 'inch', true],
    [900, 'millimetre', false],
  ] as const)('longest side %d: %s', (longest, unit, sure) => {
    const guess = guessUnit(longest);
    expect(guess).toMatchObject({ unit, sure });
    expect(guess.says).toMatch(/^The file has no unit\. .*\.$/);
  });
});

describe('into the plan', () => {
  it.each(fittings.map((fitting) => [fitting.file, fitting] as const))(
    '%s: every number is one the plan reads',
    (file, fitting) => {
      const { of } = worked(writeStl(fitting.mesh()), file);
      const [settled, gated] = [of('settled') as Settled, of('gated') as Gated];
      const plan = planOf(file, settled, gated, fitting.metal, 25e-6);
      const { problems, values } = completeInputs(pourPlan, plan.texts, {});
      // Without the materials' books only their own numbers are missing
      expect(problems.filter((text) => /section|part|thickness|run/i.test(text))).toEqual([]);
      expect((values['part.volume'] as number) / settled.volume).toBeCloseTo(1, 3);
      const rows = values['sections'] as readonly Record<string, unknown>[];
      expect(values['gate.area'] as number).toBeCloseTo(25e-6, 12);
      expect(rows.length).toBe(gated.sections.length);
      for (const row of rows) {
        expect(row['run'] as number).toBeGreaterThan(row['before'] as number);
        if (row['through'] !== '') expect(rows.map(({ name }) => name)).toContain(row['through']);
      }
    },
  );

  it('rows of one thickness are told apart', () => {
    expect(sectionNames([{ thickness: 0.004 }, { thickness: 0.0070001 }, { thickness: 0.004 }])).toEqual([
      '4 mm thick A',
      '7 mm thick',
      '4 mm thick B',
    ]);
  });
});
