import { describe, expect, it } from 'vitest';
import { materials } from '../../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../../calculators/materials/resolve.ts';
import { front } from '../../../calculators/models/front.ts';
import { pourOf } from '../../../calculators/models/front/given-pour.ts';
import { completeInputs } from '../../../calculators/models/inputs.ts';
import type { Result } from '../../../calculators/core/model.ts';

const resolved = resolvedMaterials(materials);
const worked = (given: Readonly<Record<string, unknown>>): Result => {
  const { values, problems } = completeInputs(front, given, resolved);
  expect(problems).toEqual([]);
  return front.run(values);
};
const step = (result: Result, id: string) => result.steps.find((one) => one.id === id);

/** One web of the lamp shield straight from the gate, the cup kept full, in baked sand at 150 °C. */
const web = {
  sections: [{ name: 'Web', from: 'gate', length: '75 mm', width: '2.2 mm', thickness: '1.4 mm' }],
  T_gate: '1050 °C',
  flow: '1000 cm³/s',
};

describe('the web of the lamp shield', () => {
  it('fails under a 40 mm head without suction', () => {
    // By hand. The mouth resists with 2 × 1.2 × (1/0.0014 + 1/0.0022) = 2805 Pa. 40 mm of bronze press with
    // 7520 × 9.80665 × 0.04 = 2950 Pa: 145 Pa is left to move it. Laminar friction in a 1.4 × 2.2 mm channel is
    // 59.6 × 0.004 v x / (2 × 0.001711²) = 40 700 v x, so beyond the first centimetre v·x = 145/40 700 and
    // x = √(2 × 0.00356 t), less what the entry takes. It has from the gate 520 × 79 = 41 000 J/kg of superheat and
    // 0.3 × (150 000 + 520 × 111) = 62 300 of freezing, 103 kJ/kg × 7520 × 0.000428 m = 332 kJ/m², at
    // 1000 × about 830 = 830 kW/m²: 0.40 s. √(2 × 0.00356 × 0.4) = 53 mm at most, of 75.
    const { values, checks } = worked(web);
    expect(values.reached!).toBeLessThan(0.053);
    expect(values.reached!).toBeGreaterThan(0.03);
    expect(values.time!).toBeGreaterThan(0.36);
    expect(values.time!).toBeLessThan(0.46);
    expect(checks[0]!.verdict).toBe('fails');
    expect(checks[0]!.why).toMatch(/It freezes at \d+(\.\d+)? mm of 75 mm/);
  });

  it('fills with 15 kPa really at the cavity', () => {
    // By hand: 2950 + 15 000 − 2805 = 15 145 Pa. With entry and velocity head alone √(2 × 15 145/(1.5 × 7520)) =
    // 1.64 m/s; at the end friction, f ≈ 0.04 × 75/1.711 = 1.8 heads more, √(2 × 15 145/(3.3 × 7520)) = 1.11 m/s. Between
    // 75 mm / 1.64 = 0.046 s and 75 mm / 1.11 = 0.068 s, and it stays fluid about 0.4 s.
    const { values, checks } = worked({ ...web, suction: '15 kPa' });
    expect(values.share).toBeCloseTo(1, 9);
    expect(values.time!).toBeGreaterThan(0.046);
    expect(values.time!).toBeLessThan(0.068);
    expect(checks[0]!.verdict).toBe('holds');
  });

  it('is helped by pressure, and by no warmth a sand mould stands', () => {
    const result = worked(web);
    const have = (lever: string): number => step(result, `with.${lever}`)!.value!;
    expect(have('suction')).toBeGreaterThan(1.5);
    expect(have('T_mould')).toBeLessThan(1);
    expect(have('T_gate')).toBeLessThan(1);
    expect(step(result, 'change.T_mould')!.value).toBeUndefined();
    expect(step(result, 'change.T_mould')!.note).toMatch(/Not enough/);
    expect(step(result, 'change.suction')!.value!).toBeLessThan(5000);
  });

  it('fills with what the change asked for, and not with a tenth less of it', () => {
    const result = worked(web);
    const head = step(result, 'change.head')!.value!;
    const verdict = (mm: number) => worked({ ...web, head: `${mm} mm` }).checks[0]!.verdict;
    expect(verdict(head * 1000)).not.toBe('fails');
    expect(verdict(40 + (head * 1000 - 40) * 0.9)).toBe('fails');
  });
});

describe('the whole lamp shield', () => {
  it('is decided by its webs: short of pressure without suction, sure with 15 kPa', () => {
    const without = worked({});
    expect(without.checks.filter(({ verdict }) => verdict === 'fails').map(({ title }) => title)).toEqual([
      'Webs: fills before it stops',
    ]);
    const withSuction = worked({ suction: '15 kPa' });
    expect(withSuction.checks.every(({ verdict }) => verdict === 'holds')).toBe(true);
    expect(withSuction.values.cavity).toBeCloseTo(1, 9);
  });

  it('has a step for every section', () => {
    const { steps } = worked({});
    expect(steps.filter(({ id }) => id.startsWith('front.'))).toHaveLength(5);
  });
});

describe('what cannot be poured', () => {
  it.each([
    [{ solidus: '1000 °C', liquidus: '900 °C' }, /solidus is above the liquidus/],
    [{ T_mould: -4 }, /below absolute zero/],
    [{ T_gate: 0 }, /below absolute zero/],
    [{ cells: 1e9 }, /cells are too many/],
    [{ suction: '120 kPa' }, /air pressure/],
    [{ T_gate: '870 °C' }, /too stiff to flow/],
    [{ rho: '0 kg/m³' }, /density of the liquid metal is missing or not above nought/],
    [{ h_interface: '-5 W/(m²·K)' }, /interface coefficient is missing/],
    [{ sections: [] }, /no section to fill/],
    [{ flow: '0 cm³/s' }, /Nothing is poured/],
    [{ permeability: '-1 AFS' }, /permeability/],
    [{ f_stop: '120 %' }, /100 %/],
  ])('is refused with a sentence: %o', (given, sentence) => {
    const { values, notes } = worked(given);
    expect(values).toEqual({});
    expect(notes.join(' ')).toMatch(sentence);
  });

  it('is read once: the pour behind the form can be followed for figures', () => {
    const read = pourOf(completeInputs(front, {}, resolved).values);
    expect(read.ok && read.pour.channels.map(({ parent }) => parent)).toEqual([-1, 0, 0, 2, 2]);
  });
});
