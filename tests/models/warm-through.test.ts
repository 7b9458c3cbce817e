import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { centreLag } from '../../calculators/models/centre-lag.ts';
import { flaskTemperature } from '../../calculators/models/flask-temperature.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { schedule } from '../../calculators/models/schedule.ts';
import { warmThrough } from '../../calculators/models/warm-through.ts';
import type { Model } from '../../calculators/core/model.ts';

const resolved = resolvedMaterials(materials);
const worked = (model: Model, given: Readonly<Record<string, unknown>>) => {
  const { values, problems } = completeInputs(model, given, resolved);
  expect(problems).toEqual([]);
  return model.run(values);
};
const minutes = (seconds: number | undefined) => (seconds ?? NaN) / 60;
const celsius = (kelvin: number | undefined) => (kelvin ?? NaN) - 273.15;

describe('warming a mould through', () => {
  it('answers for 70 mm of dry sand in an oven at 220 °C, its middle wanted at 140 °C', () => {
    const { values } = worked(warmThrough, {});
    expect(minutes(values.time)).toBeGreaterThan(45);
    expect(minutes(values.time)).toBeLessThan(100);
    expect(celsius(values.centre)).toBeCloseTo(140, 6);
    // The outside is between the middle and the oven, and two minutes of air take some of it away.
    expect(celsius(values.face)).toBeGreaterThan(155);
    expect(celsius(values.face)).toBeLessThan(185);
    expect(values.face_after!).toBeLessThan(values.face!);
    // Meanwhile the middle still warms, or stands.
    expect(Math.abs(values.centre_after! - values.centre!)).toBeLessThan(3);
  });

  it('says that a face near 200 °C over a middle at 120 °C belongs to wet sand or a hotter oven', () => {
    // Common practice has 200 outside when the middle is at 120; dry sand in this oven does not.
    const dry = worked(warmThrough, { thickness: '80 mm', T_oven: '200 °C', T_want: '120 °C' });
    expect(celsius(dry.values.face)).toBeLessThan(170);
  });

  it('roughly doubles the time for 4 % of water, and stands at 100 °C while it boils', () => {
    const given = { thickness: '80 mm', T_oven: '200 °C', T_want: '120 °C' };
    const dry = worked(warmThrough, given);
    const wet = worked(warmThrough, { ...given, moisture: '4 %' });
    const times = wet.values.time! / dry.values.time!;
    expect(times).toBeGreaterThan(1.5);
    expect(times).toBeLessThan(2.8);
    const stood = worked(warmThrough, {
      ...given,
      moisture: '4 %',
      t_oven: `${minutes(dry.values.time)} min`,
    });
    expect(celsius(stood.values.centre)).toBeCloseTo(100, 3);
  });

  it('refuses wet sand in an oven that cannot boil the water', () => {
    const { values, notes } = worked(warmThrough, { moisture: '3 %', T_oven: '90 °C', T_want: '70 °C' });
    expect(values).toEqual({});
    expect(notes.join(' ')).toMatch(/100 °C/);
  });

  it('takes four times as long on one face as on two when the inside decides', () => {
    const given = { k: '0.1 W/(m·K)', h_oven: '60 W/(m²·K)', thickness: '150 mm' };
    const both = worked(warmThrough, given).values.time!;
    const one = worked(warmThrough, { ...given, shape: 'one-face' }).values.time!;
    // Four where only the inside resists; the surface, which counts twice, takes a little off it.
    expect(one / both).toBeGreaterThan(3.8);
    expect(one / both).toBeLessThan(4);
  });

  it('cools a body of water as the lumped rule, where that holds', () => {
    // Çengel, Example 4-2, lumped: a cylinder 1.7 m long and 0.3 m across, here with water stirred (k large).
    // 43,860 s from 37 to 25 °C in 20 °C (read in a textbook companion).
    const given = {
      shape: 'flask',
      thickness: '0.3 m',
      height: '1.7 m',
      k: '3000 W/(m·K)',
      rho: '996 kg/m³',
      c: '4178 J/(kg·K)',
      h_oven: '8 W/(m²·K)',
    };
    const { values } = completeInputs(warmThrough, given, resolved);
    const { time } = warmThrough.run({ ...values, T_start: 310.15, T_oven: 293.15, T_want: 298.15 }).values;
    expect(Math.abs(time! / 43860 - 1)).toBeLessThan(0.005);
  });
});

describe('the lag of a flask', () => {
  const long = {
    diameter: '40 mm',
    height: '0.3 m',
    k: '0.4 W/(m·K)',
    rho: '1250 kg/m³',
    c: '800 J/(kg·K)',
    speed: '2 K/min',
    climb: '1000 Δ°C',
    h: '40 W/(m²·K)',
  };

  it('is R²·rate(1 + 2/Bi)/4α for a long flask and a long climb', () => {
    // Carslaw & Jaeger (1959) §7.7: 20² × (2/60) / (4 × 0.4) = 8.333 K; Bi = 40 × 0.02/0.4 = 2, so twice it.
    const { values } = worked(centreLag, long);
    expect(values.steady).toBeCloseTo(16.667, 1);
    expect(values.lag).toBeCloseTo(16.667, 1);
  });

  it('needs no hold when the lag is small already, and the more the less is allowed', () => {
    expect(worked(centreLag, { ...long, close: '20 Δ°C' }).values.hold).toBe(0);
    const loose = worked(centreLag, { ...long, close: '10 Δ°C' }).values.hold!;
    const strict = worked(centreLag, { ...long, close: '5 Δ°C' }).values.hold!;
    expect(strict).toBeGreaterThan(loose);
    // Late in a hold only the slowest part is left: halving takes ln 2/(αλ²/R²), λ = 1.5994 at Bi = 2.
    const finer = worked(centreLag, { ...long, close: '2.5 Δ°C' }).values.hold!;
    expect(finer - strict).toBeCloseTo(Math.log(2) / ((0.4e-6 * 1.5994 ** 2) / 0.02 ** 2), -1);
  });

  it('dries before it climbs when it is wet', () => {
    expect(worked(centreLag, { water: '40 %' }).values.drying!).toBeGreaterThan(1800);
    expect(worked(centreLag, {}).values.drying).toBe(0);
  });
});

describe('the burnout', () => {
  it('refuses to heat plaster past its limit, by peak or by casting temperature', () => {
    for (const given of [{ sheet_peak: '800 °C' }, { T_cast: '780 °C' }]) {
      const { values, notes } = worked(schedule, given);
      expect(values).toEqual({});
      expect(notes.join(' ')).toMatch(/sulphur dioxide/);
    }
    expect(worked(schedule, { binder: 'phosphate', sheet_peak: '900 °C' }).values.peak).toBeCloseTo(
      1173.15,
      6,
    );
  });

  it('takes about the public cycles of 6, 8 and 12 hours, with their ramps on top', () => {
    // Common practice by flask size: holds of 6, 8 and 12 h.
    for (const [diameter, height, hours] of [
      ['60 mm', '65 mm', 6],
      ['80 mm', '100 mm', 8],
      ['100 mm', '150 mm', 12],
    ] as const) {
      const { steps } = worked(schedule, { diameter, height });
      const holds = steps.filter(({ id }) => !id.startsWith('to-') && id !== 'total');
      const held = holds.reduce((sum, { value = 0 }) => sum + value, 0) / 3600;
      expect(held).toBeGreaterThanOrEqual(hours);
      expect(held).toBeLessThan(hours + 3.5);
    }
  });

  it('gives way to the sheet and is slower for resin', () => {
    expect(worked(schedule, { sheet_climb: '1 K/min' }).values.climb).toBeCloseTo(1 / 60, 9);
    expect(worked(schedule, { pattern: 'resin' }).values.total!).toBeGreaterThan(
      worked(schedule, {}).values.total! + 3600,
    );
  });
});

describe('the flask out of the kiln', () => {
  it('is at the kiln’s temperature all through after a long soak, and cools from its wall', () => {
    const { values } = worked(flaskTemperature, { t_kiln: '9 h', t_air: '60 s' });
    expect(celsius(values.centre_before)).toBeCloseTo(500, 0);
    expect(values.face!).toBeLessThan(values.cavity!);
    expect(values.cavity!).toBeLessThan(values.centre!);
  });

  it('says when the soak was too short', () => {
    expect(worked(flaskTemperature, { t_kiln: '5 min', diameter: '100 mm' }).notes.join(' ')).toMatch(
      /too short/,
    );
  });
});
