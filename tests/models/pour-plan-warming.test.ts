import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { planSpread } from '../../calculators/models/pour-plan/spread.ts';
import { warmThrough } from '../../calculators/models/warm-through.ts';

const resolved = resolvedMaterials(materials);

function planned(given: Readonly<Record<string, unknown>> = {}) {
  const { values, spreads, problems } = completeInputs(pourPlan, given, resolved);
  expect(problems).toEqual([]);
  const { values: outputs, checks } = pourPlan.run(values);
  return { values, spreads, outputs, checks };
}

const seal = {
  metal: 'sterling-silver',
  mould: 'gypsum-investment',
  'mould.temperature': '500 °C',
  'melt.temperature': '1000 °C',
  'suction.where': 'perforated',
};

describe('warming in the plan', () => {
  it('gives the time of the card for a cylinder of the flask’s size', () => {
    const { outputs, values } = planned();
    const card = warmThrough.run({
      shape: 'flask',
      thickness: 0.1,
      height: 0.055,
      k: values['mould.conductivity'],
      rho: values['mould.density.bulk'],
      c: values['mould.heat'],
      moisture: 0,
      T_start: 293.15,
      T_oven: 473.15,
      h_oven: 20,
      T_want: 423.15,
      T_air: 293.15,
      h_air: 12,
      t_air: 60,
    });
    expect(outputs['oven.time']).toBeCloseTo(card.values['time']!, 6);
    expect(outputs['oven.middle']).toBeCloseTo(card.values['centre_after']!, 6);
  });

  it('fails when the mould stands about until its middle is cold, and says what would do', () => {
    const { checks } = planned({ 'mould.out': '40 min' });
    const warming = checks.find(({ id }) => id === 'warming')!;
    expect(warming.verdict).toBe('fails');
    expect(warming.levers).toContain('mould.out');
  });

  it('fails when the oven is hotter than the mould stands', () => {
    const { checks } = planned({ 'mould.temperature.limit': '190 °C' });
    expect(checks.find(({ id }) => id === 'warming')!.why).toMatch(/too hot for this mould/);
  });

  it('asks nothing of a mould at room temperature', () => {
    const { checks } = planned({ 'mould.temperature': '20 °C' });
    expect(checks.map(({ id }) => id)).not.toContain('warming');
  });

  it('plans a burnout for investment, within the limit of its binder', () => {
    const { outputs, checks } = planned(seal);
    // Gypsum is fired to 730 °C, never past 750 °C: practice of the trade and the limit of the sheet.
    expect(outputs['kiln.peak']! - 273.15).toBeLessThanOrEqual(750);
    expect(outputs['kiln.total']! / 3600).toBeGreaterThan(5);
    expect(checks.find(({ id }) => id === 'warming')!.verdict).toBe('holds');
    expect('oven.time' in outputs).toBe(false);
  });

  it.each([
    ['castable-resin', false],
    ['lime-wood', false],
    ['casting-wax', true],
  ])('warns of wax vapour only where there is wax: %s', (pattern, warns) => {
    const { outputs } = planned({ ...seal, pattern });
    expect('vapour' in outputs).toBe(warns);
    expect(outputs['kiln.total']).toBeGreaterThan(0);
  });

  it('is left out of the trials: the hours hang on nothing else', () => {
    const { values, spreads } = planned();
    expect(planSpread(values, spreads, { count: 20 })!.chances).not.toHaveProperty('warming');
  });
});

describe('hydrogen in the melt', () => {
  it.each([
    // Sieverts’ constants as the gas card cites them: ten to A − B/T, by the root of a hundredth of an atmosphere, cm³ in 100 g.
    ['aluminium-silicon-12', '750 °C', 10 ** (2.72 - 2700 / 1023.15) / 10],
    ['aluminium-bronze', '1150 °C', 10 ** (2.378 - 2167 / 1423.15) / 10],
    ['sterling-silver', '1000 °C', 10 ** (2.154 - 3512 / 1273.15) / 10],
  ])('goes by the base metal: %s', (metal, temperature, in100g) => {
    const { outputs } = planned({ metal, 'melt.temperature': temperature });
    expect((outputs['melt.hydrogen']! * 1e6) / (outputs['charge']! * 10)).toBeCloseTo(in100g, 6);
  });

  it('is not guessed for a metal whose constants are not known', () => {
    expect('melt.hydrogen' in planned({ metal: 'pewter' }).outputs).toBe(false);
  });
});

describe('what a slip would do', () => {
  it('is as worked by hand for the lamp shield', () => {
    const { outputs } = planned();
    // 5.6704e-8 × (1408.15⁴ − 293.15⁴) = 222 531 W/m²; r² = 10 cm²/π = 3.183 cm²; 3.183/(3.183 + 1600) = 0.0019855.
    expect(outputs['radiant']).toBeCloseTo(441.8, 0);
    // 0.05 g ÷ 18.015 g/mol = 2.7754 mmol; × 8.3145 × 1408.15 K ÷ 101 325 Pa = 0.3207 L.
    expect(outputs['drop']! * 1000).toBeCloseTo(0.3207, 4);
    // 0.36 m² × 50 mm × 1600 kg/m³.
    expect(outputs['spill.sand']).toBeCloseTo(28.8, 6);
    // 0.7 × 7.52 × … : √(2 (9.80665 × 0.04 + 35 000/ρ)) m/s through 10 mm² for 2 s, in grams of the metal's own density.
    const rho = Number(planned().values['metal.density.liquid']);
    expect(outputs['run-out']).toBeCloseTo(
      0.7 * rho * 1e-5 * 2 * Math.sqrt(2 * (0.392266 + 35_000 / rho)),
      6,
    );
  });
});
