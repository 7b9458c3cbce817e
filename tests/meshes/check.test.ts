import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { gridRound } from '../../calculators/meshes/cells.ts';
import { analyse, fromGate, gridFor, heaviestPlace } from '../../calculators/meshes/analyse.ts';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { fittings } from '../../calculators/meshes/fittings.ts';
import { ball, box, boxes, moved, rod, tube } from '../../calculators/meshes/forms.ts';
import { measure } from '../../calculators/meshes/measure.ts';
import { startMesh, together, type Triangles } from '../../calculators/meshes/triangles.ts';

const ids = (mesh: Triangles): string[] => checkMesh(mesh).faults.map(({ id }) => id);
const reversed = ({ points, corners }: Triangles): Triangles => ({
  points,
  corners: corners.map((_, i) => corners[i % 3 === 0 ? i : i % 3 === 1 ? i + 1 : i - 1]!),
});
const without = ({ points, corners }: Triangles, face: number): Triangles => ({
  points,
  corners: corners.filter((_, i) => Math.floor(i / 3) !== face),
});

describe('volume and surface of solids with a closed form', () => {
  // Elementary mensuration; a faceted solid nears the round one with the square of the steps.
  const { PI } = Math;
  it.each([
    ['ball', (n: number) => ball(10, n), (4 / 3) * PI * 1000, 4 * PI * 100],
    ['rod', (n: number) => rod(5, 30, 2 * n), PI * 25 * 30, 2 * PI * 25 + 2 * PI * 5 * 30],
    ['tube', (n: number) => tube(10, 6, 20, 2 * n), PI * 64 * 20, 2 * PI * 64 + 2 * PI * 16 * 20],
  ] as const)('%s: the error falls fourfold when the steps double', (_, make, volume, area) => {
    const errors = [16, 32, 64, 128].map((n) => {
      const found = checkMesh(make(n));
      expect(found.faults).toEqual([]);
      return [1 - found.measures.volume / volume, Math.abs(1 - found.measures.area / area)] as const;
    });
    for (let i = 1; i < errors.length; i += 1) {
      expect(errors[i - 1]![0] / errors[i]![0]).toBeGreaterThan(3.8);
      expect(errors[i - 1]![0] / errors[i]![0]).toBeLessThan(4.2);
      expect(errors[i - 1]![1] / errors[i]![1]).toBeGreaterThan(3.5);
    }
    expect(errors[3]![0]).toBeLessThan(7e-4);
  });

  it('an L of two bars: 40 × 10 × 10 and 30 × 10 × 10 beside it', () => {
    const { measures, faults } = checkMesh(
      boxes([
        { low: [0, 0, 0], high: [40, 10, 10] },
        { low: [0, 10, 0], high: [10, 40, 10] },
      ]),
    );
    expect(faults).toEqual([]);
    expect(measures.volume).toBeCloseTo(7000, 9);
    // ends 100 each, the outline 40 + 40 + 10 + 30 + 30 + 10 = 160 high 10, and the L of 700 twice
    expect(measures.area).toBeCloseTo(1600 + 1400, 9);
    // x: (4000 · 20 + 3000 · 5) / 7000, y: (4000 · 5 + 3000 · 25) / 7000
    expect(measures.centre[0]).toBeCloseTo(95 / 7, 9);
    expect(measures.centre[1]).toBeCloseTo(95 / 7, 9);
    expect(measures.centre[2]).toBeCloseTo(5, 9);
  });
});

describe('what is wrong with a surface', () => {
  it('a closed one is said to be as exact as its triangles', () => {
    const { faults, sure, volumeSpread } = checkMesh(box(3, 4, 5));
    expect(faults).toEqual([]);
    expect(volumeSpread).toBe(0);
    expect(sure).toMatch(/as exact as the triangles/);
  });

  it('inside out, wholly and in one face', () => {
    const all = checkMesh(reversed(ball(5, 12)));
    expect(all.faults.map(({ id }) => id)).toEqual(['turned']);
    expect(all.faults[0]!.says).toMatch(/inside out/);
    expect(all.measures.volume).toBeCloseTo(measure(ball(5, 12)).volume, 9);
    const one = ball(5, 12);
    const [b, c] = [one.corners[31]!, one.corners[32]!];
    one.corners[31] = c;
    one.corners[32] = b;
    const found = checkMesh(one);
    expect(found.faults[0]!.says).toMatch(/^1 triangle looks the wrong way/);
    expect(found.measures.volume).toBeCloseTo(measure(ball(5, 12)).volume, 9);
  });

  it('a hole: closed flat, said, and the volume has a spread that holds the truth', () => {
    const whole = ball(5, 12);
    const found = checkMesh(without(without(whole, 100), 100));
    expect(found.faults.map(({ id }) => id)).toEqual(['holes']);
    expect(found.faults[0]!.says).toMatch(/1 hole \(4 open edges\)/);
    expect(Math.abs(found.measures.volume - measure(whole).volume)).toBeLessThan(found.volumeSpread);
    expect(found.sure).toMatch(/not closed/);
  });

  it('cracks: points a hair apart are taken as one', () => {
    const builder = startMesh();
    const { points, corners } = box(10, 10, 10);
    for (let i = 0; i < corners.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => {
        const p = 3 * corners[i + k]!;
        const shift = ((i * 7 + k * 3) % 5) * 1e-6;
        return builder.point(points[p]! + shift, points[p + 1]! - shift, points[p + 2]!);
      });
      builder.face(a!, b!, c!);
    }
    const found = checkMesh(builder.done());
    expect(found.faults.map(({ id, harmless }) => [id, harmless])).toEqual([['cracks', true]]);
    expect(found.measures.volume).toBeCloseTo(1000, 2);
  });

  it('faces without area, faces twice', () => {
    const { points, corners } = box(10, 10, 10);
    expect(ids({ points, corners: new Uint32Array([...corners, 0, 1, 1]) })).toEqual(['flat']);
    const twice = checkMesh({ points, corners: new Uint32Array([...corners, ...corners.slice(0, 3)]) });
    expect(twice.faults.map(({ id }) => id)).toEqual(['twice']);
    expect(twice.measures.volume).toBeCloseTo(1000, 9);
  });

  it('a hollow, whichever way its faces look', () => {
    const outer = ball(10, 24);
    const inner = ball(4, 24);
    const truth = measure(outer).volume - measure(inner).volume;
    for (const hollow of [inner, reversed(inner)]) {
      const found = checkMesh(together([outer, hollow]));
      expect(found.faults.map(({ id }) => id)).toContain('hollows');
      expect(found.measures.volume).toBeCloseTo(truth, 6);
    }
  });

  it('two bodies apart, and two that meet', () => {
    const away = moved(box(5, 5, 5), ([x, y, z]) => [x + 20, y, z]);
    expect(ids(together([box(5, 5, 5), away]))).toEqual(['shells']);
    const into = moved(box(5, 5, 5), ([x, y, z]) => [x + 3, y + 1, z + 1]);
    expect(ids(together([box(5, 5, 5), into]))).toEqual(['overlap']);
  });

  it('a band with one side', () => {
    const builder = startMesh();
    const steps = 24;
    const at = (i: number, side: number): number => {
      const turn = (2 * Math.PI * i) / steps;
      const out = 10 + side * Math.cos(turn / 2);
      return builder.point(out * Math.cos(turn), out * Math.sin(turn), side * Math.sin(turn / 2));
    };
    const first = [at(0, -1), at(0, 1)] as const;
    let before: readonly [number, number] = first;
    for (let i = 1; i <= steps; i += 1) {
      const now = i === steps ? ([first[1], first[0]] as const) : ([at(i, -1), at(i, 1)] as const);
      builder.face(before[0], now[0], now[1]);
      builder.face(before[0], now[1], before[1]);
      before = now;
    }
    expect(ids(builder.done())).toContain('one-sided');
  });
});

describe('the fittings of the mill', () => {
  it.each(fittings.map((fitting) => [fitting.name, fitting] as const))('%s is closed', (_, fitting) => {
    const found = checkMesh(fitting.mesh());
    expect(found.faults.filter(({ harmless }) => !harmless)).toEqual([]);
    expect(found.volumeSpread).toBe(0);
  });

  it('hold the metal of their sheets', () => {
    const volume = (id: string): number =>
      checkMesh(fittings.find((one) => one.id === id)!.mesh()).measures.volume;
    // 5606.7 mm³ by hand; the arch in flat steps loses a few parts in ten thousand
    expect(volume('lamp-shield') / 5606.7).toBeCloseTo(1, 3);
    // 5376 + 2160 + 5040
    expect(volume('latch-keeper')).toBeCloseTo(12_576, 6);
    // 2048 + 1680 + π/4 · 2.5² · 25 = 3850.7, and 1 mm of the tip inside the blade, counted here twice
    expect(volume('index-pointer') / (3850.7 + 4.9)).toBeCloseTo(1, 3);
  });
});

describe('surfaces that are no part', () => {
  it('a quarter of a million loose triangles are said to be open, quickly', () => {
    const faces = 250_000;
    const points = Float64Array.from({ length: 9 * faces }, (_, n) => 100 * ((n * 0.618_033_988_7) % 1));
    const corners = Uint32Array.from({ length: 3 * faces }, (_, n) => n);
    const found = checkMesh({ points, corners });
    expect(found.faults.map(({ says }) => says).join(' ')).toMatch(/open nearly everywhere/);
    expect(found.sure).toMatch(/means nothing|encloses nothing/);
    expect(() => analyse(found, gridFor(found, 100_000))).toThrow(
      /^The surface encloses no metal|^Its triangles cover one another/,
    );
  });

  const spot = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 9 }))) as fc.Arbitrary<
    [number, number, number]
  >;
  test.prop(
    [
      fc.array(spot, { minLength: 3, maxLength: 12 }),
      fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat()), { minLength: 1, maxLength: 30 }),
    ],
    { numRuns: 300 },
  )('any triangles at all are measured, filled or refused in words', (places, triples) => {
    const builder = startMesh();
    const at = (n: number): number => builder.point(...places[n % places.length]!);
    for (const [a, b, c] of triples) builder.face(at(a), at(b), at(c));
    const found = checkMesh(builder.done());
    expect(Number.isFinite(found.measures.area)).toBe(true);
    for (const { says } of found.faults) expect(says).toMatch(/\.$/);
    try {
      const part = analyse(found, gridRound(found.mesh, 0.7));
      for (const value of part.thick) expect(Number.isFinite(value)).toBe(true);
      const from = fromGate(part, heaviestPlace(part), 0.5);
      expect(from.sections.length).toBeGreaterThan(0);
    } catch (error) {
      expect((error as Error).message).toMatch(/^[A-Z].*\.$/);
    }
  });
});
