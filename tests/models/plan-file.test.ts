import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import {
  readFragment,
  readPlanFile,
  writeFragment,
  writePlanFile,
  type Written,
} from '../../calculators/models/pour-plan/index.ts';
import { sheet } from './lamp-shield-sheet.ts';

const inputs = sheet as Written;
const file = (content: unknown): string => JSON.stringify(content);
const good = { format: 'warm-mould-plan', version: 1, name: 'Lamp shield', inputs: { head: '60 mm' } };

describe('the file of a plan', () => {
  it('comes back as it was written', () => {
    expect(readPlanFile(writePlanFile({ name: 'Lamp shield', inputs }), pourPlan)).toEqual({
      name: 'Lamp shield',
      inputs,
      problems: [],
    });
  });

  it('gives the same plan after the journey', () => {
    const known = resolvedMaterials(materials);
    const before = pourPlan.run(completeInputs(pourPlan, inputs, known).values);
    const read = readPlanFile(writePlanFile({ name: 'A', inputs }), pourPlan);
    expect(pourPlan.run(completeInputs(pourPlan, read.inputs, known).values)).toEqual(before);
  });

  it.each([
    ['', 'not JSON'],
    ['{"format":', 'not JSON'],
    ['[]', 'no names and values'],
    ['null', 'no names and values'],
    ['{"format":"other"}', 'format'],
  ])('says of %j that it is no plan', (text, words) => {
    const { inputs: none, problems } = readPlanFile(text, pourPlan);
    expect(none).toEqual({});
    expect(problems.join()).toContain(words);
  });

  it('keeps what it can read and names the rest', () => {
    const { inputs: kept, problems } = readPlanFile(
      file({
        ...good,
        inputs: {
          head: '60 mm',
          'gate.area': 'wide',
          headd: '60 mm',
          'suction.where': 'opne',
          orientation: 'standing',
          'pattern.allowance': 'perhaps',
          'mould.temperature': 120,
          toString: 'x',
          sections: [{ name: 'Webs', thickness: '1.4 mm', width: '2 kg', colour: 'red' }, 7],
        },
      }),
      pourPlan,
    );
    expect(kept).toEqual({
      head: '60 mm',
      orientation: 'standing',
      'mould.temperature': '120',
      sections: [{ name: 'Webs', thickness: '1.4 mm' }],
    });
    const told = problems.join('\n');
    for (const words of [
      'Area of the gate',
      '"headd"',
      '"head"',
      '"opne"',
      '"open"',
      'yes or no',
      '2 kg',
      '"colour"',
      'row 2',
      '"toString"',
    ]) {
      expect(told).toContain(words);
    }
    expect(problems).toHaveLength(8);
  });

  it('reads a newer version as far as it goes', () => {
    const { inputs: kept, problems } = readPlanFile(file({ ...good, version: 2 }), pourPlan);
    expect(kept).toEqual({ head: '60 mm' });
    expect(problems.join()).toContain('version 2');
  });

  it('takes a byte order mark and a missing name', () => {
    expect(readPlanFile(`\uFEFF${file({ ...good, name: '' })}`, pourPlan)).toMatchObject({
      name: 'Plan',
      problems: [],
    });
  });
});

describe('the fragment of a plan', () => {
  it('comes back as it was written', () => {
    expect(readFragment(pourPlan, writeFragment(pourPlan, inputs))).toMatchObject({ problems: [] });
    const { inputs: read } = readFragment(pourPlan, writeFragment(pourPlan, inputs));
    const filled = (row: Readonly<Record<string, unknown>>): object =>
      Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== ''));
    expect({ ...read, sections: [] }).toEqual({ ...inputs, sections: [] });
    expect(read['sections']).toEqual(
      (inputs['sections'] as readonly object[]).map((row) => filled(row as Record<string, unknown>)),
    );
  });

  it('is readable and needs no more than it must', () => {
    const text = writeFragment(pourPlan, {
      head: '60 mm',
      'pattern.allowance': false,
      'suction.gauge': '10 inHg ± 1',
    });
    expect(text).toBe('head=60+mm&pattern.allowance=no&suction.gauge=10+inHg+%C2%B1+1');
  });

  it('carries names with any sign in them', () => {
    const rows = [
      { name: 'A~B; C=D & 5% + é', thickness: '1 3/8 in' },
      { name: 'x', through: 'A~B' },
    ];
    expect(readFragment(pourPlan, writeFragment(pourPlan, { sections: rows })).inputs).toEqual({
      sections: rows,
    });
  });

  it.each([
    'head=%E0%A4%A',
    'head',
    '&&&',
    '=',
    'sections=%ZZ',
    'sections=~~~~;;',
    'head=60+mm&nothing=1',
    '%%%=%%%',
  ])('never throws on %s', (text) => {
    const { inputs: read, problems } = readFragment(pourPlan, text);
    expect(Array.isArray(problems)).toBe(true);
    if (text.startsWith('head=60')) expect(read).toEqual({ head: '60 mm' });
  });

  it('says what in the address could not be read', () => {
    expect(readFragment(pourPlan, 'head=%E0%A4%A&suction.gauge=20+kPa')).toEqual({
      inputs: { 'suction.gauge': '20 kPa' },
      problems: ['"head=%E0%A4%A" in the address could not be read'],
    });
  });
});

describe('inputs from what is given', () => {
  const known = resolvedMaterials(materials);

  it('takes a material’s number and spread until the reader writes their own', () => {
    const start = completeInputs(pourPlan, {}, known);
    const book = known['silicon-bronze']!.latent!;
    expect(start.values['metal.latent']).toBe(book.value);
    expect(start.spreads['metal.latent']).toBe(book.spread);
    const own = completeInputs(pourPlan, { 'metal.latent': '180 kJ/kg ± 10 kJ/kg' }, known);
    expect(own.values['metal.latent']).toBe(180_000);
    expect(own.spreads['metal.latent']).toBeCloseTo(10_000, 6);
    const other = completeInputs(pourPlan, { metal: 'fine-silver' }, known);
    expect(other.values['metal.density.solid']).not.toBe(start.values['metal.density.solid']);
  });

  it('names what it cannot read and goes on with the start', () => {
    const { values, problems } = completeInputs(
      pourPlan,
      {
        head: 'high',
        mould: 'oil-bonded-snad',
        'sand.held': 'glued',
        sections: 'many',
        heads: 3,
        'pattern.allowance': 7,
      },
      known,
    );
    expect(problems).toHaveLength(6);
    expect(problems.join('\n')).toContain('oil-bonded-sand');
    expect(values['head']).toBe(0.04);
    expect(values['mould']).toBe('clay-bonded-sand');
    expect(values['sections']).toHaveLength(3);
  });

  it('leaves an open quantity open', () => {
    expect(completeInputs(pourPlan, {}, known).values).not.toHaveProperty(['site.barometer']);
  });
});
