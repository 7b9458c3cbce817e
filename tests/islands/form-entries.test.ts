import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import {
  bookEntry,
  entryIn,
  formFrom,
  formInHabit,
  isEntry,
  isYours,
  readingOf,
  textsOf,
  unitsFollowing,
  unreadable,
  usualRows,
  type Form,
} from '../../src/islands/form-entries.ts';
import { inUnit } from '../../src/islands/entries.ts';
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
  it('change what a form shows and nothing that is worked from it', () => {
    const { values, spreads } = completed({});
    for (const habit of ['us', 'jeweller'] as const) {
      const form = formInHabit(inputs, {}, habit);
      expect(form['mould.temperature']).toMatchObject({ unit: '°F' });
      expect(form['metal.latent']).toBeUndefined();
      const same = completed(form);
      for (const [name, input] of Object.entries(inputs)) {
        const [before, after] = [values[name], same.values[name]];
        if (input.kind !== 'quantity' || typeof before !== 'number' || typeof after !== 'number') continue;
        // Half of the sixth figure of a number and of the third of its spread: a plan prints three of either.
        expect(Math.abs(after - before), name).toBeLessThanOrEqual(5e-6 * Math.abs(before));
        expect(Math.abs((same.spreads[name] ?? 0) - (spreads[name] ?? 0)), name).toBeLessThanOrEqual(
          5e-3 * (spreads[name] ?? 0),
        );
      }
    }
  });

  it('say a result in the unit the reader chose for such a number, else in that of the habit', () => {
    const typed: Form = { 'mould.temperature': { text: '450 F', unit: '°C', spread: '' } };
    expect(unitsFollowing(inputs, typed, 'metric')('°C')).toBe('°F');
    expect(unitsFollowing(inputs, typed, 'metric')('kPa')).toBe('kPa');
    expect(unitsFollowing(inputs, {}, 'us')('kPa')).toBe('inHg');
  });
});
