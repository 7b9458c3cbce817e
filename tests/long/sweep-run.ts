/**
 * `npm run -s sweep [-- points [seconds a model [part of a name]]]`: every formula and model at a hundred thousand
 * points in and around its ranges, and every fact of `monotone.ts` at a tenth of that. A slow model stops at its
 * seconds of the processor; no seconds leave the models out.
 */
import type { Formula } from '../../calculators/core/formula.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { models } from '../../calculators/models/index.ts';
import { facts, modelFacts } from './monotone.ts';
import { keepsTo, modelKeepsTo, quick, sweepFormula, sweepModel } from './sweep.ts';

const points = Number(process.argv[2] ?? 100_000);
const seconds = Number(process.argv[3] ?? 600);
const wanted = process.argv[4] ?? '';
let wrong = 0;
const say = (what: string, fault: string | undefined): void => {
  if (fault === undefined) return;
  wrong += 1;
  console.log(`${what}: ${fault}`);
};

let answered = 0;
let pairs = 0;
const swept = (Object.values(formulas) as readonly Formula[]).filter(({ id }) => id.includes(wanted));
for (const formula of swept) {
  const { answered: some, wrong: fault } = sweepFormula(formula, points);
  answered += some;
  say(formula.id, fault);
  for (const fact of facts[formula.id] ?? []) {
    const kept = keepsTo(formula, fact, points / 10);
    pairs += kept.answered;
    say(`${formula.id}, ${fact[2]}`, kept.wrong);
  }
}
const share = Math.round((100 * answered) / (points * swept.length));
if (swept.length > 0)
  console.log(
    `${swept.length} formulas at ${points} points each: ${share} % answered, the rest refused in words; ${pairs} pairs kept to their facts.`,
  );
for (const model of Object.values(models).filter(({ id }) => seconds > 0 && id.includes(wanted))) {
  const { points: done, answered: with_, wrong: fault } = sweepModel(model, points, seconds);
  say(model.id, fault);
  console.log(`${model.id}: ${done} points, ${with_} answered`);
  const held = quick[model.id];
  if (held && done < points) {
    const short = sweepModel(model, points, seconds, held);
    say(`${model.id}, held to small sums`, short.wrong);
    console.log(`${model.id}, held to small sums: ${short.points} points, ${short.answered} answered`);
  }
  for (const fact of [
    ...(model.monotone ?? []).map(({ input, output, sense }) => ({ raise: input, answer: output, sense })),
    ...modelFacts.filter((one) => one.model === model.id),
  ])
    say(
      `${model.id}, ${fact.raise} ${fact.sense} ${fact.answer}`,
      modelKeepsTo(model, fact, points / 10, seconds / 10).wrong,
    );
}
process.exitCode = wrong > 0 ? 1 : 0;
