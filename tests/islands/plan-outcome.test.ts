import { describe, expect, it } from 'vitest';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { changeText, outcomes, outcomesInSteps } from '../../src/workers/plan-outcome.ts';

const books = resolvedMaterials(materials);

describe('what would have to change', () => {
  it('is rounded to the side where the check holds', () => {
    const less = changeText({ lever: 'suction.gauge', value: 25_261.6, from: 35_000, breaks: [] }, []);
    expect(less).toContain('25.2 kPa or less instead of 35');
    const more = changeText({ lever: 'head', value: 0.061_21, from: 0.04, breaks: [] }, []);
    expect(more).toContain('61.3 mm or more instead of 40');
    const hotter = changeText({ lever: 'mould.temperature', value: 451.21, from: 423.15, breaks: [] }, []);
    expect(hotter).toContain('179 °C or more instead of 150');
    const melt = changeText({ lever: 'melt.temperature', value: 1423.3, from: 1408.15, breaks: [] }, []);
    expect(melt).toContain('1151 °C or more instead of 1135 °C');
  });

  it('is said for every check that fails and for no other', () => {
    const [, second] = [...outcomes({ 'suction.gauge': '0 kPa' }, books, 20)];
    const failing = second!.result.checks.filter(({ verdict }) => verdict === 'fails');
    expect(failing.length).toBeGreaterThan(0);
    expect(Object.keys(second!.changes).sort()).toEqual(failing.map(({ id }) => id).sort());
    for (const sentences of Object.values(second!.changes)) expect(sentences.length).toBeGreaterThan(0);
  });

  it('makes the check hold when it is done', () => {
    const [, second] = [...outcomes({ 'suction.gauge': '0 kPa' }, books, 20)];
    const way = second!.changes['entry']?.find((text) => text.startsWith('Suction at the gauge'));
    const [, value] = /: ([\d.]+ kPa) or more/.exec(way ?? '') ?? [];
    const [after] = [...outcomes({ 'suction.gauge': value }, books, 20)];
    expect(after!.result.checks.find(({ id }) => id === 'entry')?.verdict).not.toBe('fails');
  });
});

describe('an outcome worked in steps', () => {
  it('can be left after each trial, and comes out as it does at one go', () => {
    const steps = [...outcomesInSteps({}, books, 20)];
    expect(steps.filter((step) => step !== undefined)).toEqual([...outcomes({}, books, 20)]);
    expect(steps.filter((step) => step === undefined).length).toBeGreaterThanOrEqual(20);
  });
});
