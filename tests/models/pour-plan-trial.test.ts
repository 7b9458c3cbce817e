import { describe, expect, it } from 'vitest';
import type { Values } from '../../calculators/core/model.ts';
import { createRandom } from '../../calculators/core/random.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs, numbersOf, withNumbers } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { lineOf, startLedger } from '../../calculators/models/pour-plan/ledger.ts';
import { outputs } from '../../calculators/models/pour-plan/outputs.ts';
import { runPlan, tryPlan } from '../../calculators/models/pour-plan/run.ts';

const books = resolvedMaterials(materials);
const metals = Object.values(materials).filter(({ role }) => role === 'metal');
const moulds = Object.values(materials).filter(({ role }) => role === 'mould');

/** Plans of every metal in every mould in turn, choices and numbers drawn, some of them absurd. */
function* plans(count: number): Generator<Values> {
  const random = createRandom('trial');
  const one = <T>(list: readonly T[]): T => list[random.uniformInt(list.length)]!;
  for (let i = 0; i < count; i += 1) {
    const given: Record<string, unknown> = {
      metal: metals[i % metals.length]!.id,
      mould: moulds[i % moulds.length]!.id,
    };
    for (const [name, input] of Object.entries(pourPlan.inputs)) {
      if (input.kind === 'choice') given[name] = one(Object.keys(input.options));
      if (input.kind === 'flag') given[name] = random.uniform() < 0.5;
    }
    const { values } = completeInputs(pourPlan, given, books);
    const numbers = numbersOf(pourPlan, values);
    for (const name of Object.keys(numbers)) {
      if (random.uniform() < 0.3) numbers[name]! *= Math.exp((i / count) * 2 * random.normal());
      if (random.uniform() < 0.004) numbers[name] = 0;
    }
    yield withNumbers(pourPlan, values, numbers);
  }
}

describe('a trial of the plan', () => {
  it('has every number, margin and verdict of the plan itself, and no other', () => {
    const ledger = startLedger();
    const seen = { numbers: 0, checks: 0, fails: 0 };
    for (const values of plans(300)) {
      const whole = runPlan(values, { warming: false });
      const trial = tryPlan(values, ledger);
      const numbers = Object.fromEntries(
        Object.keys(outputs).flatMap((name) => (ledger.has(name) ? [[name, ledger.get(name)]] : [])),
      );
      expect(numbers).toEqual(whole.values);
      const decided = whole.checks.map(({ id, margin, verdict }) => ({ id, margin, verdict }));
      expect(trial.map(({ id, margin, verdict }) => ({ id, margin, verdict }))).toEqual(decided);
      seen.numbers += Object.keys(numbers).length;
      seen.checks += decided.length;
      seen.fails += decided.filter(({ verdict }) => verdict === 'fails').length;
    }
    expect(seen.numbers).toBeGreaterThan(300 * 40);
    expect(seen.checks).toBeGreaterThan(300 * 10);
    expect(seen.fails).toBeGreaterThan(300);
  });

  it('makes no words', () => {
    for (const values of plans(3))
      for (const check of tryPlan(values)) expect(check).toMatchObject({ title: '', why: '' });
  });
});

describe('a ledger', () => {
  it('keeps numbers by the ids of their lines until it is emptied', () => {
    const ledger = startLedger();
    const read = ledger.reader('sections.1.flows');
    expect(read()).toBeNaN();
    ledger.set(lineOf('sections.1', 'flows'), 2);
    expect([ledger.get('sections.1.flows'), read(), ledger.has('sections.1.fills')]).toEqual([2, 2, false]);
    ledger.clear();
    expect([ledger.get('sections.1.flows'), ledger.has('sections.1.flows')]).toEqual([undefined, false]);
  });
});
