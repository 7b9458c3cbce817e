import { describe, expect, it } from 'vitest';
import type { Check, Result, Row, Values } from '../../calculators/core/model.ts';
import { unit } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { planSpread, waysToChange, whatWouldHaveToChange } from '../../calculators/models/pour-plan/index.ts';

const known = resolvedMaterials(materials);

function inputsOf(given: Readonly<Record<string, unknown>> = {}): Values {
  const { values, problems } = completeInputs(pourPlan, given, known);
  expect(problems).toEqual([]);
  return values;
}

const plan = (given: Readonly<Record<string, unknown>> = {}): Result => pourPlan.run(inputsOf(given));

function check(result: Result, id: string): Check {
  const found = result.checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id} among ${result.checks.map((one) => one.id).join(', ')}`);
  return found;
}

const verdict = (given: Readonly<Record<string, unknown>>, id: string): string =>
  check(plan(given), id).verdict;

/** The smallest and largest step of an output, or of a check's margin, as one input rises. */
function climbs(input: string, values: readonly number[], of: (result: Result) => number): number[] {
  const start = inputsOf();
  const heights = values.map((value) => of(pourPlan.run({ ...start, [input]: value })));
  return heights.slice(1).map((height, i) => height - heights[i]!);
}

const steps = (low: number, high: number, count = 12): number[] =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));

const rising = (changes: readonly number[]): boolean => changes.every((change) => change >= -1e-12);
const falling = (changes: readonly number[]): boolean => changes.every((change) => change <= 1e-12);

describe('the plan as it opens', () => {
  it('asks eight questions first', () => {
    const first = Object.values(pourPlan.inputs).filter((input) => input.first);
    expect(first).toHaveLength(8);
  });

  it('has a start, a group and a unit for every quantity, or says where the number comes from', () => {
    for (const [name, input] of Object.entries(pourPlan.inputs)) {
      expect(input.group ?? (input.kind === 'material' ? name : undefined), name).toBeDefined();
      if (input.kind !== 'quantity') continue;
      expect(unit(input.show ?? input.unit).symbol, name).toBeDefined();
      const open = ['metal.zinc', 'metal.lead', 'site.barometer', 'own.constant', 'own.margin'].includes(
        name,
      );
      expect(open || input.usual !== undefined || input.from !== undefined, name).toBe(true);
    }
  });

  it('declares every value it gives, and every step names a formula that exists', () => {
    const result = plan();
    for (const name of Object.keys(result.values)) expect(pourPlan.outputs, name).toHaveProperty([name]);
    for (const step of result.steps)
      if (step.formula) expect(formulas, step.id).toHaveProperty([step.formula]);
    const ids = result.steps.map((step) => step.id);
    for (const one of result.checks) for (const step of one.steps ?? []) expect(ids, one.id).toContain(step);
  });

  it('gives every step a number', () => {
    expect(plan().steps.filter((step) => step.value === undefined)).toEqual([]);
  });

  it('names levers that are quantities with a range', () => {
    for (const { id, levers } of plan({ 'suction.gauge': '0 kPa' }).checks) {
      for (const lever of levers) {
        const input = pourPlan.inputs[lever];
        expect(input?.kind === 'quantity' && input.range !== undefined, `${id}: ${lever}`).toBe(true);
      }
    }
  });

  it('takes sections thinnest first', () => {
    const result = plan();
    const rows = result.checks
      .filter(({ id }) => id.startsWith('sections.'))
      .map(({ id }) => result.values[`${id}.modulus`]!);
    expect(rows).toEqual([...rows].sort((a, b) => a - b));
    expect(rows).toHaveLength(3);
  });

  it('says where the sums do not hold', () => {
    const notes = plan().notes.join(' ');
    for (const words of ['Under 3 mm', 'long range', 'oxide skin', 'hot tearing'])
      expect(notes).toContain(words);
  });
});

describe('the lamp shield', () => {
  it('does not fill from a 40 mm head without suction', () => {
    expect(verdict({ 'suction.gauge': '0 kPa', head: '40 mm' }, 'sections.1')).toBe('fails');
    expect(verdict({ 'suction.gauge': '0 kPa', head: '40 mm' }, 'entry')).toBe('fails');
  });

  it('is not saved by a hotter mould', () => {
    expect(verdict({ 'suction.gauge': '0 kPa', 'mould.temperature': '290 °C' }, 'sections.1')).toBe('fails');
  });

  it.each(['20 kPa', '30 kPa', '40 kPa'])(
    'fills with half of %s at the cavity, or with 100 mm more head',
    (gauge) => {
      for (const id of ['sections.1', 'sections.2', 'sections.3', 'entry', 'edge']) {
        expect(verdict({ 'suction.gauge': gauge }, id), id).not.toBe('fails');
        expect(verdict({ 'suction.gauge': '0 kPa', head: '140 mm' }, id), id).not.toBe('fails');
      }
    },
  );

  it('is not better for more suction: sand, penetration and the gate lose what the edge gains', () => {
    const at = (gauge: string, id: string): number =>
      check(plan({ 'suction.gauge': gauge, 'suction.where': 'sealed' }), id).margin;
    for (const id of ['sand', 'penetration', 'gate-speed'])
      expect(at('60 kPa', id), id).toBeLessThan(at('20 kPa', id));
    expect(at('60 kPa', 'edge')).toBeGreaterThan(at('20 kPa', 'edge'));
    expect(verdict({ 'suction.gauge': '20 kPa' }, 'sand')).not.toBe('fails');
    expect(verdict({ 'suction.gauge': '60 kPa' }, 'sand')).toBe('fails');
    expect(verdict({ 'suction.gauge': '80 kPa', 'suction.where': 'sealed' }, 'penetration')).toBe('fails');
  });

  it('hides a hole in each lug with no feeder', () => {
    expect(check(plan(), 'feeding').verdict).toBe('fails');
    expect(check(plan(), 'feeding').why).toContain('3.9 mm');
  });
});

describe('physics it is held to', () => {
  const fill = (result: Result): number => check(result, 'sections.1').margin;

  it('a warmer mould never freezes a section sooner, nor lets it fill less', () => {
    const kelvin = steps(293, 570);
    for (const id of ['sections.1', 'sections.2', 'sections.3']) {
      for (const line of ['freeze', 'freeze.soonest', 'freeze.latest', 'freeze.sand']) {
        expect(rising(climbs('mould.temperature', kelvin, (result) => result.values[`${id}.${line}`]!))).toBe(
          true,
        );
      }
    }
    expect(rising(climbs('mould.temperature', kelvin, fill))).toBe(true);
  });

  it('more head is never slower', () => {
    const heads = steps(0.01, 0.4);
    expect(rising(climbs('head', heads, (result) => result.values['gate.speed']!))).toBe(true);
    expect(rising(climbs('head', heads, fill))).toBe(true);
  });

  it('a wider span is never safer, a thicker cake never less safe', () => {
    const sand = (result: Result): number => check(result, 'sand').margin;
    expect(falling(climbs('sand.span', steps(0.005, 0.2), sand))).toBe(true);
    expect(rising(climbs('sand.cake', steps(0.008, 0.1), sand))).toBe(true);
  });

  it('a longer way to the mould never leaves more time, more water never less gas', () => {
    expect(falling(climbs('melt.carry', steps(0, 60), fill))).toBe(true);
    const blow = (result: Result): number => check(result, 'blow-back').margin;
    expect(falling(climbs('mould.moisture', steps(0, 0.05), blow))).toBe(true);
  });

  it('keeps the bounds of a freezing time about the lead', () => {
    for (const mould of ['20 °C', '150 °C', '280 °C']) {
      const { values } = plan({ 'mould.temperature': mould });
      for (const id of ['sections.1', 'sections.2', 'sections.3']) {
        expect(values[`${id}.freeze`]!).toBeGreaterThan(values[`${id}.freeze.soonest`]!);
        expect(values[`${id}.freeze`]!).toBeLessThanOrEqual(values[`${id}.freeze.latest`]!);
      }
    }
  });
});

describe('gates', () => {
  it('fails oil-bonded sand above its own limit, with the reason', () => {
    const hot = check(plan({ mould: 'oil-bonded-sand', 'mould.dried': 'none' }), 'mould');
    expect(hot.verdict).toBe('fails');
    expect(hot.why).toContain('60 °C');
  });

  it('never bakes oil-bonded sand, at any temperature chosen', () => {
    const baked = check(plan({ mould: 'oil-bonded-sand', 'mould.temperature': '20 °C' }), 'mould');
    expect(baked.verdict).toBe('fails');
    expect(baked.why).toContain('Never bake');
    expect(
      verdict({ mould: 'oil-bonded-sand', 'mould.temperature': '20 °C', 'mould.dried': 'none' }, 'mould'),
    ).toBe('holds');
  });

  it('does not take warm for dry', () => {
    expect(verdict({ 'mould.dried': 'warmed' }, 'dryness')).toBe('fails');
    expect(verdict({ 'mould.moisture': '4 %' }, 'dryness')).toBe('fails');
    expect(verdict({ 'mould.moisture': '4 %', 'suction.gauge': '0 kPa' }, 'blow-back')).toBe('fails');
  });

  it('flags zinc and lead by the metal’s name or by the number', () => {
    expect(verdict({ metal: 'brass-60-40', 'melt.temperature': '1000 °C' }, 'fume')).toBe('close');
    expect(verdict({ metal: 'leaded-gunmetal' }, 'fume')).toBe('fails');
    expect(verdict({ 'metal.lead': '1 %' }, 'fume')).toBe('fails');
    expect(verdict({}, 'fume')).toBe('holds');
  });

  it('refuses a crucible that is too small, and a reading no pump reaches high up', () => {
    expect(verdict({ 'crucible.volume': '10 mL' }, 'crucible')).toBe('fails');
    expect(verdict({ 'suction.gauge': '60 kPa', 'site.altitude': '3000 m' }, 'gauge')).toBe('fails');
    expect(verdict({ 'suction.gauge': '60 kPa' }, 'gauge')).not.toBe('fails');
  });

  it('leaves out what it does not know, and says so', () => {
    const result = plan({ mould: 'graphite-mould' });
    expect(result.checks.map(({ id }) => id)).not.toContain('penetration');
    expect(result.notes.join(' ')).toContain('permeability');
  });
});

describe('what would have to change', () => {
  const failing = { 'suction.gauge': '0 kPa' };

  it.each(['sections.1', 'entry', 'edge', 'feeding', 'gate-speed'])('solves %s to a margin of zero', (id) => {
    const inputs = inputsOf(failing);
    const ways = waysToChange(inputs, id);
    expect(ways.length).toBeGreaterThan(0);
    for (const { lever, value, from } of ways) {
      expect(from).toBe(inputs[lever]);
      const margin = check(pourPlan.run({ ...inputs, [lever]: value }), id).margin;
      expect(Math.abs(margin), `${id} by ${lever}`).toBeLessThan(1e-6);
    }
  });

  it('finds the suction that just enters the webs', () => {
    const change = whatWouldHaveToChange(inputsOf(failing), 'entry');
    expect(change).toMatchObject({ lever: 'suction.gauge', from: 0, breaks: [] });
  });

  it('says what a change would break', () => {
    const slower = waysToChange(inputsOf(failing), 'gate-speed').find(({ lever }) => lever === 'head');
    expect(slower?.breaks).toContain('blow-back');
  });

  it('says so when no one number is enough, and when nothing is wrong', () => {
    expect(whatWouldHaveToChange(inputsOf(), 'gate-speed')).toHaveProperty('none');
    expect(whatWouldHaveToChange(inputsOf({ mould: 'oil-bonded-sand' }), 'mould')).toHaveProperty('none');
    expect(whatWouldHaveToChange(inputsOf(), 'crucible')).toEqual({ none: 'It holds as it is.' });
    expect(whatWouldHaveToChange(inputsOf(), 'no-such')).toHaveProperty('none');
  });
});

describe('the spread of a plan', () => {
  const { values, spreads } = completeInputs(pourPlan, {}, known);

  it('is the same for the same seed, holds the value, and names the interface as the largest doubt of the race', () => {
    const one = planSpread(values, spreads, { count: 120 })!;
    const two = planSpread(values, spreads, { count: 120 })!;
    const whole = (spread: typeof one) => ({ ...spread, margin: spread.margin('sections.1') });
    expect(whole(two)).toEqual(whole(one));
    const now = pourPlan.run(values).values;
    for (const name of ['charge', 'sections.1.freeze', 'pressure', 'edge']) {
      expect(one.outputs[name]!.low, name).toBeLessThan(now[name]!);
      expect(one.outputs[name]!.high, name).toBeGreaterThan(now[name]!);
    }
    expect(one.margin('sections.1')!.shares[0]!.name).toBe('mould.interface');
    expect(one.chances['gate-speed']).toBe(0);
    expect(one.chances['sections.1']).toBeGreaterThan(0.8);
  });

  it('stops when told', () => {
    let asked = 0;
    expect(
      planSpread(values, spreads, { count: 50, watch: { cancelled: () => (asked += 1) > 3 } }),
    ).toBeUndefined();
  });

  it('does not spread a suction that is not there', () => {
    const none = completeInputs(pourPlan, { 'suction.gauge': '0 kPa' }, known);
    expect(none.spreads['suction.gauge']).toBeUndefined();
  });
});

describe('several castings and other parts', () => {
  it('shares the pour between castings', () => {
    const one = plan().values;
    const four = plan({ 'part.castings': '4', 'crucible.volume': '100 mL' }).values;
    expect(four['charge']!).toBeGreaterThan(one['charge']!);
    expect(four['flow']! / four['pour.flow']!).toBeCloseTo(0.25, 9);
  });

  it('works from a volume and from a weighed pattern', () => {
    expect(plan({ 'part.by': 'volume', 'part.volume': '10 cm³' }).values['part.mass']).toBeCloseTo(0.0836, 6);
    // 5.7 g of wax of 960 kg/m³ with 2.08 % in it: 5.7 × 8360 / (960 × 1.0208³) = 46.66 g
    expect(plan({ 'part.by': 'pattern' }).values['part.mass']).toBeCloseTo(0.04666, 5);
  });

  it('feeds when the feeder is heavy enough, and says which rule it misses', () => {
    expect(
      verdict({ feeder: 'cylinder', 'feeder.modulus': '2.5 mm', 'feeder.volume': '4 cm³' }, 'feeding'),
    ).toBe('holds');
    expect(
      verdict({ feeder: 'cylinder', 'feeder.modulus': '1 mm', 'feeder.volume': '4 cm³' }, 'feeding'),
    ).toBe('fails');
    expect(
      verdict({ feeder: 'cylinder', 'feeder.modulus': '2 mm', 'feeder.volume': '1 cm³' }, 'feeding'),
    ).toBe('fails');
  });

  it('loses head when the part stands', () => {
    expect(plan({ orientation: 'standing' }).values['head.left']).toBeCloseTo(0.004, 9);
  });

  it('never throws, whatever the rows and numbers', () => {
    const odd: readonly Row[] = [
      {},
      { name: 'A', thickness: 0, width: 0.001, length: 0.01 },
      {
        name: 'B',
        shape: 'plate',
        thickness: 0.002,
        width: 0.02,
        length: 0.03,
        run: 0.01,
        before: 0.02,
        through: 'B',
      },
      { name: 'C', shape: 'rod', thickness: 0.002, length: 0.03, run: 0.03, through: 'D', before: 0.01 },
      {
        name: 'D',
        shape: 'block',
        thickness: 0.002,
        width: 0.003,
        length: 0.03,
        run: 0.03,
        through: 'C',
        before: 0.01,
      },
    ];
    expect(() => pourPlan.run({ ...inputsOf(), sections: odd })).not.toThrow();
    expect(() => pourPlan.run({})).not.toThrow();
    expect(() => pourPlan.run({ ...inputsOf(), sections: [] })).not.toThrow();
    for (const extreme of [0, -1, 1e9, Number.NaN]) {
      for (const [name, input] of Object.entries(pourPlan.inputs)) {
        if (input.kind !== 'quantity') continue;
        const result = pourPlan.run({ ...inputsOf(), [name]: extreme });
        for (const { id, margin } of result.checks)
          expect(Number.isNaN(margin), `${name} ${extreme} ${id}`).toBe(false);
      }
    }
  });
});

describe('numbers from the reader’s own pours', () => {
  it('lead with their own mould constant, the book’s time beside it', () => {
    const book = plan();
    const own = plan({ 'own.constant': '2 s/mm² ± 0.2' });
    const modulus = own.values['sections.2.modulus']!;
    // 2 s for each square millimetre of modulus
    expect(own.values['sections.2.freeze']).toBeCloseTo(2e6 * modulus ** 2, 9);
    expect(own.values['sections.2.freeze.book']).toBeCloseTo(book.values['sections.2.freeze']!, 9);
    expect(book.values['sections.2.freeze.book']).toBeUndefined();
    expect(own.notes.join(' ')).toMatch(/your own mould constant, 2\.?0? s\/mm²; by the book/);
    expect(check(own, 'sections.2').why).toMatch(/by the book/);
  });

  it('carry their doubt into the spread of the time', () => {
    const { values, spreads } = completeInputs(pourPlan, { 'own.constant': '2 s/mm² ± 0.2' }, known);
    expect(spreads['own.constant']).toBeCloseTo(0.2e6, 6);
    const { outputs } = planSpread(values, { 'own.constant': 0.2e6 })!;
    const { low, high } = outputs['sections.2.freeze']!;
    const middle = 2e6 * pourPlan.run(values).values['sections.2.modulus']! ** 2;
    // A tenth of the constant is a tenth of the time
    expect(Math.abs(high / middle - 1.1)).toBeLessThan(0.03);
    expect(Math.abs(low / middle - 0.9)).toBeLessThan(0.03);
  });

  it('want more of a section by their own fill factor, the book’s beside it', () => {
    const flat = plan({ 'own.margin': '1' });
    const strict = plan({ 'own.margin': '2 ± 0.3' });
    const [one, two] = [check(flat, 'sections.1'), check(strict, 'sections.1')];
    expect(one.margin).toBeCloseTo(check(plan(), 'sections.1').margin, 12);
    // ln 2 less to spare
    expect(one.margin - two.margin).toBeCloseTo(Math.log(2), 6);
    const line = strict.steps.find(({ id }) => id === 'sections.1.margin');
    expect(line?.note).toMatch(/^Wanted: 3 or more, by your own pours; by the book 1\.5\.$/);
  });
});
