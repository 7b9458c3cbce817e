import { describe, expect, it } from 'vitest';
import { materials } from '../../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../../calculators/materials/resolve.ts';
import { besidePlan } from '../../../calculators/models/front/beside-plan.ts';
import { pourOfPlan } from '../../../calculators/models/front/of-plan.ts';
import { completeInputs } from '../../../calculators/models/inputs.ts';
import { pourPlan } from '../../../calculators/models/pour-plan.ts';
import { runPlan } from '../../../calculators/models/pour-plan/run.ts';
import { followPlan } from '../../../src/workers/plan-front.ts';

const books = resolvedMaterials(materials);
type Texts = Readonly<Record<string, unknown>>;
const planOf = (texts: Texts) => {
  const { values, problems } = completeInputs(pourPlan, texts, books);
  expect(problems).toEqual([]);
  const plan = runPlan(values, { warming: false });
  return { plan, made: pourOfPlan(values, plan, 0.004) };
};
const rowsOf = (texts: Texts) => {
  const { plan, made } = planOf(texts);
  if (!made.ok) throw new Error(made.why);
  return Object.fromEntries(besidePlan(made.pour, made.sections, plan).map((row) => [row.name, row]));
};
const bar = { name: 'Bar', shape: 'bar', thickness: '3 mm', width: '3 mm', length: '60 mm', run: '60 mm' };

describe('a plan as a tree of channels', () => {
  it('is the lamp shield cut where webs and lugs leave its frame', () => {
    const { made } = planOf({});
    if (!made.ok) throw new Error(made.why);
    // By hand from the sample: the frame runs 87 mm; the webs leave it at 45 mm and run 75 − 45, the lugs at 60 mm
    // and run 67 − 60. Two ways round, eight webs, two lugs.
    const at = (id: string) =>
      made.sections
        .find((section) => section.id === id)!
        .pieces.map((piece) => {
          const { length, alike, parent } = made.pour.channels[piece]!;
          return { mm: Math.round(length * 1e3), alike, parent };
        });
    const [first, second] = made.sections.find(({ id }) => id === 'sections.2')!.pieces;
    expect(at('sections.2')).toEqual([
      { mm: 45, alike: 2, parent: -1 },
      { mm: 15, alike: 2, parent: first },
      { mm: 27, alike: 2, parent: second },
    ]);
    expect(at('sections.1')).toEqual([{ mm: 30, alike: 8, parent: first }]);
    expect(at('sections.3')).toEqual([{ mm: 7, alike: 2, parent: second }]);
  });

  it('stands when the part stands, by its height over its longest run', () => {
    const { made } = planOf({ orientation: 'standing', 'part.height': '36 mm' });
    if (!made.ok) throw new Error(made.why);
    const frame = made.sections.find(({ name }) => name === 'Frame')!;
    const rise = frame.pieces.reduce((sum, piece) => sum + made.pour.channels[piece]!.rise, 0);
    expect(rise).toBeCloseTo(0.036, 9);
  });

  it('comes to an end where sections are reached through one another in a circle', () => {
    const { made } = planOf({
      sections: [
        { ...bar, name: 'A', before: '20 mm', through: 'B' },
        { ...bar, name: 'B', before: '20 mm', through: 'A' },
      ],
    });
    expect(made.ok && made.pour.channels.map(({ parent }) => parent)).toEqual([-1, -1]);
  });

  it('counts steam and not the pushed-out air twice', () => {
    const dry = planOf({ 'mould.moisture': '0 %' }).made;
    expect(dry.ok && dry.pour.drive.gas).toBe(0);
    const damp = planOf({ 'mould.moisture': '1 %', 'mould.dried': 'warmed', 'mould.temperature': '80 °C' });
    if (!damp.made.ok) throw new Error(damp.made.why);
    expect(damp.made.pour.drive.gas).toBeGreaterThan(0);
    expect(damp.made.pour.drive.gas).toBeLessThan(damp.plan.values['gas']!);
  });

  it.each([
    [{ sections: [] }, /no section/],
    [{ 'melt.temperature': '940 °C' }, /too stiff to flow/],
    [{ head: '0 mm', 'suction.gauge': '0 kPa' }, /Nothing flows/],
  ])('is refused with a sentence: %o', (texts, sentence) => {
    const { made } = planOf(texts);
    expect(made.ok ? '' : made.why).toMatch(sentence);
  });

  it('needs the viscosity of the metal', () => {
    const { values } = completeInputs(pourPlan, {}, books);
    const made = pourOfPlan(values, runPlan(values, { warming: false }), Number.NaN);
    expect(made.ok ? '' : made.why).toMatch(/viscosity/);
  });
});

describe('followed beside the quick sum', () => {
  it('agrees with it where the quick sum leaves nothing out that counts', () => {
    // One short bar straight from the gate, open sand: by hand, as in freezing/section-race, the flow gives the speed
    // and the coefficient the heat. Followed, sand warms and the range takes heat, both for the better.
    const { Bar } = rowsOf({ sections: [bar], 'mould.permeability': '100 AFS' });
    expect(Bar!.filled).toBe(true);
    expect(Bar!.has / Bar!.quick).toBeGreaterThan(0.8);
    expect(Bar!.has / Bar!.quick).toBeLessThan(1.4);
  });

  it('names the gas where tight sand holds it', () => {
    const { Webs } = rowsOf({ 'mould.permeability': '0.5 AFS' });
    expect(Webs!.has).toBeLessThan(0.6 * Webs!.quick);
    expect(Webs!.why).toMatch(/less and less sand to leave by/);
  });

  it('names friction where a long thin way is pushed hard', () => {
    // The speed by the quick sum is 1.3 m/s, from 3 heads in all. Followed, a channel of 2 mm by 700 mm has
    // 700/2 × 0.03 = 10 heads of friction besides at its end.
    const long = { ...bar, thickness: '2 mm', width: '2 mm', length: '700 mm', run: '700 mm', pieces: '30' };
    const { Bar } = rowsOf({ sections: [long], 'mould.permeability': '100 AFS' });
    expect(Bar!.quick).toBeGreaterThan(1);
    expect(Bar!.filled).toBe(false);
    expect(Bar!.story).toMatch(/freezes at \d+ mm of 700 mm/);
    expect(Bar!.why).toMatch(/friction along the way/);
  });

  it('names the others where they drink of the same pour', () => {
    const shares = {
      ...bar,
      name: 'Side',
      thickness: '6 mm',
      width: '6 mm',
      length: '200 mm',
      run: '200 mm',
    };
    const { Bar } = rowsOf({ sections: [bar, shares], 'mould.permeability': '100 AFS' });
    expect(Bar!.has).toBeLessThan(Bar!.quick);
    expect(Bar!.why).toMatch(/other sections drink/);
  });

  it('agrees that a web under the head alone hardly enters, and says what is little', () => {
    const { Webs } = rowsOf({ 'suction.gauge': '0 kPa' });
    expect(Webs!.sum).toMatch(/does not enter/);
    expect(Webs!.why).toMatch(/of gas against it.*a speck of skin/);
  });

  it('is what the worker sends, with the material’s own viscosity', () => {
    const reply = followPlan({ texts: {}, books });
    expect('rows' in reply && reply.rows.map(({ name }) => name)).toEqual(['Webs', 'Frame', 'Lugs']);
  });
});
