import { describe, expect, it } from 'vitest';
import type { Row } from '../../calculators/core/model.ts';
import { quantity, quantityFigures, readSpread } from '../../calculators/core/quantity.ts';
import { primitives } from '../../calculators/models/primitives.ts';
import { solids, type Shape } from '../../calculators/models/solids.ts';
import { solidChecks } from '../published/solids.ts';

const mm = 1e-3;

/** Sizes in millimetres, results in mm, mm² and mm³. */
function part(...rows: readonly (readonly [Shape, count: number, ...sizes: number[]])[]) {
  const result = primitives.run({
    solids: rows.map(([shape, count, a, b, c]): Row => {
      const size = (value: number | undefined) => (value === undefined ? undefined : value * mm);
      return { shape, count, a: size(a), b: size(b), c: size(c) };
    }),
  });
  const { volume = NaN, surface = NaN, cooled = NaN, modulus = NaN } = result.values;
  return {
    volume: volume / mm ** 3,
    surface: surface / mm ** 2,
    cooled: cooled / mm ** 2,
    modulus: modulus / mm,
    notes: result.notes,
  };
}

describe('the fittings of the tide mill, worked by hand', () => {
  it('lamp shield: frame, twelve webs of 20 mm, two lugs, gate of 6 × 4.5 mm at the foot', () => {
    // Section of the frame 4.5 × 4.5 = 20.25 mm²; two bars of 60 and two of 27 between them: 174 × 20.25 = 3523.5 mm³.
    // Webs 1.4 × 2.2 = 3.08 mm², 240 mm of them: 739.2 mm³. Lugs 12 × 8 × 7 = 672, two: 1344 mm³. Sum 5606.7 mm³.
    // Surfaces: bar of 60: 4 × 60 × 4.5 + 2 × 20.25 = 1120.5; of 27: 486 + 40.5 = 526.5; both pairs 3294 mm².
    // Web: 2 × 20 × (1.4 + 2.2) + 2 × 3.08 = 150.16; twelve 1801.92. Lug: 2 × (96 + 56 + 84) = 472; two 944.
    // Joints, both faces: corners 4 × 40.5 = 162; 24 web ends × 6.16 = 147.84; lugs on the 4.5 mm frame 2 × 2 × 12 × 4.5 = 216.
    // Outer surface 6039.92 − 525.84 = 5514.08; less the gate's 27: 5487.08 mm². Modulus 5606.7 ÷ 5487.08 = 1.02180 mm.
    const shield = part(
      ['plate', 2, 60, 4.5, 4.5],
      ['plate', 2, 27, 4.5, 4.5],
      ['joint', 4, 4.5, 4.5],
      ['plate', 12, 20, 2.2, 1.4],
      ['joint', 24, 2.2, 1.4],
      ['plate', 2, 12, 8, 7],
      ['joint', 2, 12, 4.5],
      ['gate', 1, 6, 4.5],
    );
    expect(shield.volume).toBeCloseTo(5606.7, 6);
    expect(shield.surface).toBeCloseTo(5514.08, 6);
    expect(shield.cooled).toBeCloseTo(5487.08, 6);
    expect(shield.modulus).toBeCloseTo(1.0218, 4);
  });

  it('latch keeper: plate 40 × 18 × 4 mm, two 4.5 mm holes, a slot of 14 × 6 mm', () => {
    // 2880 − 2 × 63.6173 − 336 = 2416.765 mm³ (π/4 × 4.5² = 15.90431 mm², × 4 = 63.6173).
    // 2 × (720 + 72 + 160) = 1904; each hole + π × 4.5 × 4 − 2 × 15.90431 = 56.54867 − 31.80863 = 24.74004;
    // slot + 2 × 20 × 4 − 2 × 84 = −8. 1904 + 49.48008 − 8 = 1945.480 mm².
    const keeper = part(['plate', 1, 40, 18, 4], ['hole', 2, 4.5, 4], ['window', 1, 14, 6, 4]);
    expect(keeper.volume).toBeCloseTo(2416.765, 3);
    expect(keeper.surface).toBeCloseTo(1945.48, 3);
  });

  it('seal: disc 18 × 3 mm under a handle that narrows from 12 to 6 mm over 15 mm', () => {
    // Disc π × 81 × 3 = 763.407 mm³; 2 × π × 81 + π × 18 × 3 = 508.938 + 169.646 = 678.584 mm².
    // Handle π × 15 ÷ 12 × (144 + 72 + 36) = 315 π = 989.602 mm³; slant √(225 + 9) = 15.29706;
    // 36 π + 9 π + 9 π × 15.29706 = 113.097 + 28.274 + 432.516 = 573.887 mm². Joint 2 × 36 π = 226.195 mm².
    const seal = part(['rod', 1, 18, 3], ['frustum', 1, 12, 6, 15], ['round-joint', 1, 12]);
    expect(seal.volume).toBeCloseTo(1753.009, 3);
    expect(seal.surface).toBeCloseTo(1026.277, 2);
  });

  it('index pointer: triangular blade 8 × 60 × 2.5 mm', () => {
    // 8 × 60 ÷ 2 × 2.5 = 600 mm³; side √(16 + 3600) = 60.13319; 480 + 2.5 × (8 + 120.26638) = 800.666 mm².
    const pointer = part(['triangle', 1, 8, 60, 2.5]);
    expect(pointer.volume).toBeCloseTo(600, 9);
    expect(pointer.surface).toBeCloseTo(800.666, 3);
  });
});

describe('joints, crossings and openings', () => {
  it('two half bars with their joint are one whole bar', () => {
    const whole = part(['plate', 1, 50, 6, 4]);
    const halves = part(['plate', 2, 25, 6, 4], ['joint', 1, 6, 4]);
    expect(halves.volume).toBeCloseTo(whole.volume, 9);
    expect(halves.surface).toBeCloseTo(whole.surface, 9);
  });

  it('two crossing bars are the cross cut from one plate', () => {
    // Bars 3 and 5 mm wide, 2 mm deep, cross inside a rectangle of 40 × 30 mm.
    // Area of the cross 40 × 3 + 30 × 5 − 15 = 255 mm²; its outline is that of the rectangle, 2 × (40 + 30) = 140 mm.
    const cross = part(['plate', 1, 40, 3, 2], ['plate', 1, 30, 5, 2], ['crossing', 1, 3, 5, 2]);
    expect(cross.volume).toBeCloseTo(255 * 2, 9);
    expect(cross.surface).toBeCloseTo(2 * 255 + 140 * 2, 9);
  });

  it('a disc with a hole is a tube of the same height', () => {
    const drilled = part(['rod', 1, 20, 5], ['hole', 1, 8, 5]);
    const tube = part(['tube', 1, 20, 8, 5]);
    expect(drilled.volume).toBeCloseTo(tube.volume, 9);
    expect(drilled.surface).toBeCloseTo(tube.surface, 9);
  });

  it('two domes joined are a ball, and a cone less its tip is a frustum', () => {
    const ball = part(['sphere', 1, 10]);
    const domes = part(['dome', 2, 10], ['round-joint', 1, 10]);
    expect(domes.volume).toBeCloseTo(ball.volume, 9);
    expect(domes.surface).toBeCloseTo(ball.surface, 9);
    const stacked = part(['frustum', 1, 12, 6, 10], ['cone', 1, 6, 10], ['round-joint', 1, 6]);
    const cone = part(['cone', 1, 12, 20]);
    expect(stacked.volume).toBeCloseTo(cone.volume, 9);
    expect(stacked.surface).toBeCloseTo(cone.surface, 9);
  });

  it('a slender ring is a rod bent round without its ends', () => {
    // Pappus: π × 30 mm of a 2 mm rod: 94.2478 × π = 296.088 mm³ and 94.2478 × 2 π = 592.176 mm².
    const ring = part(['ring', 1, 30, 2]);
    expect(ring.volume).toBeCloseTo(296.088, 3);
    expect(ring.surface).toBeCloseTo(592.176, 3);
  });

  it('a fillet and its three neighbours round a square bar to a quarter pipe', () => {
    // Four fillets of radius 5 fill a square channel 10 × 10 mm down to a round bore of 10 mm: (100 − 25 π) × 20 = 429.204 mm³,
    // and its wall from 4 × 10 × 20 = 800 mm² to π × 10 × 20 = 628.319 mm².
    const block = part(['plate', 1, 20, 20, 20]);
    const filled = part(['plate', 1, 20, 20, 20], ['fillet', 4, 5, 20]);
    expect(filled.volume - block.volume).toBeCloseTo(429.204, 3);
    expect(filled.surface - block.surface).toBeCloseTo(628.319 - 800, 3);
  });

  it('a blind hole keeps its floor', () => {
    const drilled = part(['plate', 1, 20, 20, 10], ['blind-hole', 1, 6, 4]);
    // 4000 − 36 π = 3886.903 mm³; 2 × (400 + 200 + 200) + π × 24 = 1600 + 75.398 mm².
    expect(drilled.volume).toBeCloseTo(3886.903, 3);
    expect(drilled.surface).toBeCloseTo(1675.398, 3);
  });

  it('a face on the feeder stays in the surface and leaves the cooled one', () => {
    const riser = part(['rod', 1, 150, 150], ['round-gate', 1, 150]);
    expect(riser.surface - riser.cooled).toBeCloseTo(Math.PI * 75 ** 2, 6);
    // Height as the diameter, base not cooling: a fifth of the diameter.
    expect(riser.modulus).toBeCloseTo(30, 9);
  });
});

describe('what makes no body', () => {
  it('is named, and gives no numbers', () => {
    const spoilt: [ReturnType<typeof part>, RegExp][] = [
      [part(), /at least one/],
      [part(['plate', 1, 10, 5]), /row 1, plate, bar or block: thickness is missing/],
      [part(['plate', 0, 10, 5, 2]), /number of them/],
      [part(['tube', 1, 8, 9, 2]), /inner diameter/],
      [part(['rod', 1, 10, 5], ['hole', 3, 9, 5]), /take away more metal/],
      [part(['plate', 1, 10, 5, 2], ['joint', 9, 10, 5]), /take away more surface/],
    ];
    for (const [{ volume, notes }, message] of spoilt) {
      expect(volume).toBeNaN();
      expect(notes.join()).toMatch(message);
    }
    expect(primitives.run({ solids: [{ shape: 'toString', count: 1 }] }).notes.join()).toContain(
      'no solid "toString"',
    );
    expect(primitives.run({}).notes).toHaveLength(1);
  });

  it('offers every solid in its form', () => {
    const { item } = primitives.inputs.solids as Extract<
      (typeof primitives.inputs)[string],
      { kind: 'list' }
    >;
    const shape = item.shape as Extract<(typeof item)[string], { kind: 'choice' }>;
    expect(Object.keys(shape.options)).toEqual(Object.keys(solids));
  });
});

describe('solids of other people', () => {
  it.each(solidChecks.map((check) => [check.id, check.title, check] as const))(
    '%s %s',
    (_id, _title, check) => {
      const { values } = primitives.run({
        solids: check.rows.map(({ shape, a, b, c }) => ({
          shape,
          count: 1,
          a: quantity(a),
          b: b && quantity(b),
          c: c && quantity(c),
        })),
      });
      const { value, unit } = quantityFigures(check.expect);
      expect(Math.abs((values[check.find] ?? NaN) - value)).toBeLessThanOrEqual(
        readSpread(check.tolerance, value, unit),
      );
    },
  );

  it('R07: a feeder 150 mm across and high has 1.2 times the modulus of a casting 200 × 100 mm', () => {
    const casting = part(['rod', 1, 200, 100]);
    const feeder = part(['rod', 1, 150, 150], ['round-gate', 1, 150]);
    expect(feeder.modulus / casting.modulus).toBeCloseTo(1.2, 9);
  });
});
