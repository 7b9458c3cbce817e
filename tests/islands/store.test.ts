import { describe, expect, it } from 'vitest';
import { freeName, shelfFrom, withPlan, withoutOpen, type Plan } from '../../src/islands/plan/store.ts';

const first: Plan = { name: 'Lamp shield', texts: {} };
const latch: Plan = {
  name: 'Latch keeper',
  texts: { head: '90 mm ± 4', sections: [{ name: 'Arm', thickness: '3 mm ± 0.1' }] },
};

describe('the plans kept on a device', () => {
  it('come back as they were kept, nonsense in a field included', () => {
    const kept = {
      plans: [first, { ...latch, texts: { ...latch.texts, 'suction.gauge': 'thirty kPa ± 2' } }],
      open: 1,
    };
    expect(shelfFrom(JSON.stringify(kept), first)).toEqual({ shelf: kept, problems: [] });
  });

  it('keep what can be read when one of them cannot, and name the loss', () => {
    const text = JSON.stringify({
      plans: [7, { name: 'Latch keeper', texts: { head: '90 mm', pour: { odd: 1 } } }],
      open: 9,
    });
    const { shelf, problems } = shelfFrom(text, first);
    expect(shelf).toEqual({ plans: [{ name: 'Latch keeper', texts: { head: '90 mm' } }], open: 0 });
    expect(problems).toHaveLength(2);
    expect(problems.join(' ')).toMatch(/Plan 1 .* could not be read.*“Latch keeper”.*pour/);
  });

  it.each(['', '{', '[]', 'null', '{"plans": []}', '{"plans": "all"}', '42'])(
    'give the sample for %j, and say so',
    (text) => {
      const { shelf, problems } = shelfFrom(text, first);
      expect(shelf).toEqual({ plans: [first], open: 0 });
      expect(problems).toHaveLength(1);
    },
  );
});

describe('a plan brought from elsewhere', () => {
  it('is opened beside the others, under a name of its own', () => {
    const shelf = withPlan({ plans: [first], open: 0 }, { name: 'Lamp shield', texts: { head: '1 m' } });
    expect(shelf.plans.map(({ name }) => name)).toEqual(['Lamp shield', 'Lamp shield 2']);
    expect(shelf.open).toBe(1);
  });

  it('is not kept twice', () => {
    const once = withPlan({ plans: [first], open: 0 }, latch);
    const reordered: Plan = {
      name: latch.name,
      texts: Object.fromEntries(Object.entries(latch.texts).reverse()),
    };
    expect(withPlan({ ...once, open: 0 }, reordered)).toEqual(once);
  });
});

describe('taking a plan away', () => {
  it('leaves the next one open, and never an empty shelf', () => {
    expect(withoutOpen({ plans: [first, latch], open: 0 }, first)).toEqual({ plans: [latch], open: 0 });
    expect(withoutOpen({ plans: [first, latch], open: 1 }, first)).toEqual({ plans: [first], open: 0 });
    expect(withoutOpen({ plans: [latch], open: 0 }, first)).toEqual({ plans: [first], open: 0 });
  });

  it('counts names up', () => {
    const plans = ['Seal', 'Seal 2'].map((name) => ({ name, texts: {} }));
    expect(freeName('Seal', plans)).toBe('Seal 3');
    expect(freeName('Seal 2', plans)).toBe('Seal 3');
    expect(freeName('Hinge', plans)).toBe('Hinge');
  });
});
