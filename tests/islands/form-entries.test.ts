import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import type { Habit } from '../../calculators/core/shop-units.ts';
import { readFragment, writeFragment } from '../../calculators/models/pour-plan/fragment.ts';
import { readPlanFile, writePlanFile } from '../../calculators/models/pour-plan/plan-file.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import {
  bookEntry,
  entryIn,
  formFrom,
  formIn,
  inputsIn,
  isEntry,
  isYours,
  readingOf,
  textsOf,
  unitsFollowing,
  unreadable,
  usualRows,
  type Form,
  type Held,
} from '../../src/islands/form-entries.ts';
import { inUnit } from '../../src/islands/entries.ts';
import { outcomes, type Outcome } from '../../src/workers/plan-outcome.ts';
import type { QuantityInput } from '../../calculators/core/model.ts';

const { inputs } = pourPlan;
const books = resolvedMaterials(materials);
const spec = (name: string) => inputs[name] as QuantityInput;
const latent = spec('metal.latent');
const shown = (name: string, form: Form = {}) => entryIn(name, spec(name), inputs, form, books);
const completed = (form: Form) => completeInputs(pourPlan, textsOf(inputs, form, books), books);

describe('the form of a model', () => {
  it('shows exactly what an untouched plan is worked from', () => {
    const { values, spreads } = completed({});
    for (const [name, input] of Object.entries(inputs)) {
      if (input.kind !== 'quantity' || values[name] === undefined) continue;
      const back = completed({ [name]: { ...shown(name) } });
      expect(back.values[name], name).toBeCloseTo(values[name] as number, 9);
      expect(back.spreads[name] ?? 0, name).toBeCloseTo(spreads[name] ?? 0, 6);
    }
  });

  it('keeps a text that cannot be read, and says where it stands', () => {
    const typed: Form = { head: { text: 'forty', unit: 'mm', spread: '4' } };
    const back = formFrom(inputs, textsOf(inputs, typed, books));
    expect(back['head']).toEqual(typed['head']);
    expect(unreadable(inputs, back, books)).toEqual([{ input: 'head' }]);
  });

  it('can read whatever stands there untouched, in every model and with every material', () => {
    let read = 0;
    for (const model of Object.values(models)) {
      const choices = Object.entries(model.inputs).flatMap(([name, input]) =>
        input.kind === 'material'
          ? Object.values(materials).flatMap(({ id, role }) => (role === input.role ? [{ [name]: id }] : []))
          : [],
      );
      for (const form of [{}, ...choices] as Form[]) {
        for (const [name, input] of Object.entries(model.inputs)) {
          if (input.kind === 'list')
            for (const row of usualRows(input)) {
              for (const [cell, cellSpec] of Object.entries(input.item)) {
                const held = row[cell];
                if (cellSpec.kind !== 'quantity' || !isEntry(held)) continue;
                expect(readingOf(held, cellSpec)?.ok, `${model.id} ${name} ${cell}`).not.toBe(false);
                read += 1;
              }
            }
          if (input.kind !== 'quantity') continue;
          const entry = entryIn(name, input, model.inputs, form, books);
          const reading = readingOf(entry, input, bookEntry(input, model.inputs, form, books));
          expect(reading?.ok, `${model.id} ${name}`).not.toBe(false);
          read += 1;
        }
      }
    }
    expect(read).toBeGreaterThan(1000);
  });

  it('counts a unit typed in the text before the field has moved it', () => {
    const { values, problems } = completed({ 'suction.gauge': { text: '10 inHg', unit: 'kPa', spread: '' } });
    // 1 inHg = 3.38639 kPa (NIST SP 811, conventional inch of mercury).
    expect(values['suction.gauge']).toBeCloseTo(33863.9, 0);
    expect(problems).toEqual([]);
  });

  it('keeps a plain number plain in a field of percentages', () => {
    const typed: Form = { 'furnace.efficiency': { text: '0.5', unit: '1', spread: '' } };
    expect(completed(typed).values['furnace.efficiency']).toBe(0.5);
  });

  it('takes away a spread when its field is emptied', () => {
    const bare: Form = { head: { text: '40', unit: 'mm', spread: '' } };
    expect(completed(bare).spreads['head']).toBeUndefined();
    expect(formFrom(inputs, textsOf(inputs, bare, books))['head']).toEqual(bare['head']);
  });
});

describe('a number of a material', () => {
  it('follows the material until the reader writes one', () => {
    const bronze = shown('metal.latent');
    const silver = shown('metal.latent', { metal: 'sterling-silver' });
    expect(silver.exact).toBe(books['sterling-silver']?.latent?.value);
    expect(silver.exact).not.toBe(bronze.exact);
    const mine: Form = {
      metal: 'sterling-silver',
      'metal.latent': { text: '99', unit: 'kJ/kg', spread: '5 %' },
    };
    expect(shown('metal.latent', mine).text).toBe('99');
    expect(completed(mine).values['metal.latent']).toBeCloseTo(99_000, 6);
    expect(isYours(mine['metal.latent'], latent, bookEntry(latent, inputs, mine, books))).toBe(true);
  });

  it('is not yours for being shown in another unit', () => {
    const book = bookEntry(latent, inputs, {}, books)!;
    const turned = inUnit(book, latent, 'J/kg');
    expect(isYours(turned, latent, book)).toBe(false);
    expect(textsOf(inputs, { 'metal.latent': turned }, books)).toEqual({});
  });
});

describe('rows', () => {
  it('come back from their texts, and leave out what is no choice', () => {
    const form = formFrom(inputs, {
      sections: [{ name: 'Arm', shape: 'star', thickness: '1/8 in', width: '9 mm ± 1', run: 'far' }],
    });
    const [row] = form['sections'] as readonly Record<string, unknown>[];
    expect(row).toMatchObject({ name: 'Arm', shape: 'bar', width: { text: '9', unit: 'mm', spread: '1' } });
    expect(row!['thickness']).toMatchObject({ text: '1/8', unit: 'in' });
    expect(unreadable(inputs, form, books)).toEqual([{ input: 'sections', row: 1, cell: 'run' }]);
  });
});

describe('the units of a shop', () => {
  it.each(['us', 'jeweller'] as const)(
    'change what the plan shows in %s and nothing that is worked from it',
    (habit) => {
      const shop = inputsIn(inputs, habit);
      const mould = shop['mould.temperature'] as QuantityInput;
      expect(entryIn('mould.temperature', mould, shop, {}, books)).toMatchObject({ text: '302', unit: '°F' });
      const liquidus = shop['metal.liquidus'] as QuantityInput;
      expect(entryIn('metal.liquidus', liquidus, shop, {}, books).unit).toBe('°F');
      // Every field touched and left as it stands, the rows too.
      const form: Record<string, Held> = {};
      for (const [name, input] of Object.entries(shop)) {
        if (input.kind === 'list') form[name] = usualRows(input);
        else if (input.kind === 'quantity') form[name] = { ...entryIn(name, input, shop, {}, books) };
      }
      const texts = textsOf(shop, form, books);
      expect(JSON.stringify(texts)).toContain(' ~ °F');
      const [before, after] = [{}, texts].map((given) => completeInputs(pourPlan, given, books));
      expect(after!.problems).toEqual([]);
      for (const [name, value] of Object.entries(before!.values))
        if (typeof value === 'number') expect(after!.values[name], name).toBeCloseTo(value, 12);
      for (const [name, spread] of Object.entries(before!.spreads))
        expect(Math.abs((after!.spreads[name] ?? 0) - spread), name).toBeLessThanOrEqual(1e-9 * spread);
      // And it opens again as it stood.
      expect(textsOf(shop, formFrom(shop, texts), books)).toEqual(texts);
    },
  );

  it('give every answer of the plan with the same last digit', () => {
    const at = (habit: Habit): Outcome => {
      const shop = inputsIn(inputs, habit);
      const form = formIn(shop, formFrom(inputs, { head: '43 mm ± 4', 'mould.temperature': '171 °C ± 8' }));
      return [...outcomes(textsOf(shop, form, books), books, 60, habit)].at(-1)!;
    };
    const [metric, us, jeweller] = (['metric', 'us', 'jeweller'] as const).map(at);
    for (const other of [us!, jeweller!]) {
      expect(other.result.values).toEqual(metric!.result.values);
      expect(other.spreads).toEqual(metric!.spreads);
      expect(other.result.checks.map(({ verdict, margin }) => [verdict, margin])).toEqual(
        metric!.result.checks.map(({ verdict, margin }) => [verdict, margin]),
      );
    }
    const said = ({ result, changes }: Outcome): string =>
      JSON.stringify([result.checks.map(({ why }) => why), changes]);
    expect(said(metric!)).toMatch(/°C.*kPa|kPa.*°C/);
    expect(said(us!)).not.toMatch(/\d (?:°C|kPa|mm|g|kg|N|m\/s)\b/);
    expect(said(us!)).toMatch(/\d psi/);
    expect(said(jeweller!)).not.toMatch(/\d (?:°C|g)\b/);
  });

  it('leave a typed unit and what was typed alone', () => {
    const shop = inputsIn(inputs, 'us');
    const texts = { head: '43 mm ± 4', 'mould.temperature': '171' };
    const form = formFrom(shop, texts);
    expect(form['head']).toMatchObject({ text: '43', unit: 'mm', spread: '4' });
    // A text without a unit is in the unit of the plan, whoever opens it.
    expect(form['mould.temperature']).toMatchObject({ text: '171', unit: '°C' });
    const turned = formIn(shop, form);
    expect(turned['head']).toMatchObject({ text: '1.69', unit: 'in', spread: '0.16' });
    expect(textsOf(shop, turned, books)).toMatchObject({ head: '43 mm ± 4 ~ in' });
    expect(formIn(inputs, turned)['head']).toEqual(form['head']);
    expect(formFrom(inputs, textsOf(shop, turned, books))['head']).toEqual(turned['head']);
  });

  it('go with a plan into a link and a file and back', () => {
    const texts = {
      head: '43 mm ± 4 ~ in',
      sections: [{ name: 'Rib', thickness: '3 mm ~ in', run: '1 in' }],
    };
    const link = writeFragment(pourPlan, texts);
    expect(readFragment(pourPlan, link)).toEqual({ inputs: texts, problems: [] });
    expect(readPlanFile(writePlanFile({ name: 'Rib', inputs: texts }), pourPlan).inputs).toEqual(texts);
    expect(completeInputs(pourPlan, texts, books).values['head']).toBeCloseTo(0.043, 12);
  });

  it('say a result in the unit the reader chose for such a number, else in that of the habit', () => {
    const typed: Form = { 'mould.temperature': { text: '450 F', unit: '°C', spread: '' } };
    expect(unitsFollowing(inputs, typed, 'metric')('°C')).toBe('°F');
    expect(unitsFollowing(inputs, typed, 'metric')('kPa')).toBe('kPa');
    expect(unitsFollowing(inputs, {}, 'us')('kPa')).toBe('inHg');
    expect(unitsFollowing(inputs, {}, 'us')('kPa', { stress: true })).toBe('psi');
    const pulled: Form = { 'suction.gauge': { text: '30', unit: 'kPa', spread: '' } };
    expect(unitsFollowing(inputsIn(inputs, 'us'), pulled, 'us')('kPa')).toBe('kPa');
    expect(unitsFollowing(inputsIn(inputs, 'us'), pulled, 'us')('kPa', { stress: true })).toBe('psi');
  });
});
