/**
 * The times a reader waits for: every calculator, the plan and its trials. Prints one table; `6 ×` is what a
 * phone six times slower would need.
 */
import { solve, usualOf } from '../../calculators/core/solve.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { defaultInputs } from '../../calculators/models/inputs.ts';
import { planSpread } from '../../calculators/models/pour-plan/spread.ts';
import { runPlan } from '../../calculators/models/pour-plan/run.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';

/** Milliseconds of the processor a call takes, the least of several rounds; other programs do not count. */
function cost(run: () => unknown, least = 30): number {
  let best = Infinity;
  for (let round = 0; round < 5; round += 1) {
    let calls = 0;
    const start = process.cpuUsage();
    const until = performance.now() + least;
    do {
      run();
      calls += 1;
    } while (performance.now() < until);
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000 / calls);
  }
  return best;
}

const row = (name: string, ms: number, wanted: string): void => {
  console.log(
    `  ${ms.toFixed(3).padStart(9)} ms  ${(6 * ms).toFixed(2).padStart(9)} ms  ${name.padEnd(42)} ${wanted}`,
  );
};

const books = resolvedMaterials(materials);
console.log(
  '\nWhat a reader waits for       (wanted at 6 ×: 16 ms a calculator; trials of the plan: 100 ms)',
);
console.log('        here         6 ×');
const cards = Object.values(formulas).map((formula) => {
  const [find = ''] = Object.keys(formula.symbols);
  const usual = usualOf(formula);
  return { name: formula.id, ms: cost(() => solve(formula, usual, find), 4) };
});
const slowest = cards.sort((a, b) => b.ms - a.ms);
for (const { name, ms } of slowest.slice(0, 3)) row(`card ${name}`, ms, '16 ms');
row(`card in the middle of ${cards.length}`, slowest[Math.floor(cards.length / 2)]!.ms, '16 ms');
for (const model of Object.values(models)) {
  const { values } = defaultInputs(model, books);
  row(
    `model ${model.id}`,
    cost(() => model.run(values)),
    model.id.startsWith('freezing/t') || model.id === 'filling/front' ? 'in a worker' : '16 ms',
  );
}
const { values, spreads } = defaultInputs(pourPlan, books);
row(
  'plan without the oven',
  cost(() => runPlan(values, { warming: false })),
  '16 ms',
);
row(
  'plan, 1,000 trials, in a worker',
  cost(() => planSpread(values, spreads, { count: 1000 }), 400),
  '100 ms here',
);
