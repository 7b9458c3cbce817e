import { printQuantity } from '../../calculators/core/print.ts';
import type { Check, QuantityInput, Values } from '../../calculators/core/model.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { readPlanFile, whatWouldHaveToChange } from '../../calculators/models/pour-plan/index.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { UsageError, type Answer, type Call, type Files } from './command.ts';

/** Every decision of a saved plan, in the order it is taken, and what would have to change where one fails. */
export async function planCommand(call: Call, files: Files): Promise<Answer> {
  const [path] = call.words;
  if (path === undefined) throw new UsageError('which plan? Give the file saved from the plan page');
  let text: string;
  try {
    text = await files.read(path);
  } catch (error) {
    throw new UsageError(`cannot read ${path}: ${error instanceof Error ? error.message : 'unknown fault'}`);
  }
  const plan = readPlanFile(text, pourPlan);
  if (plan.problems.length > 0 && Object.keys(plan.inputs).length === 0) {
    throw new UsageError(`${path}: ${plan.problems.join(' ')}`);
  }
  const completed = completeInputs(pourPlan, plan.inputs, resolvedMaterials(materials));
  const problems = [...plan.problems, ...completed.problems];
  const result = pourPlan.run(completed.values);
  const changes = Object.fromEntries(
    result.checks
      .filter(({ verdict }) => verdict === 'fails')
      .map(({ id }) => [id, whatWouldHaveToChange(completed.values, id)]),
  );
  const out = call.options.has('json')
    ? JSON.stringify({ name: plan.name, inputs: completed.values, problems, ...result, changes }, null, 2)
    : [
        plan.name,
        ...problems.map((problem) => `could not be read: ${problem}`),
        '',
        ...result.checks.flatMap((check) => lines(check, completed.values)),
        '',
        ...result.notes,
        '',
        ...(pourPlan.caution ?? []),
      ].join('\n');
  const target = call.options.get('out');
  if (target === undefined) return { code: 0, out };
  try {
    await files.write(target, `${out}\n`);
  } catch (error) {
    throw new UsageError(
      `cannot write ${target}: ${error instanceof Error ? error.message : 'unknown fault'}`,
    );
  }
  return { code: 0, out: `written to ${target}` };
}

function lines(check: Check, values: Values): string[] {
  const first = `${check.verdict.padEnd(5)}  ${check.title}. ${check.why}`;
  if (check.verdict !== 'fails') return [first];
  const change = whatWouldHaveToChange(values, check.id);
  if ('none' in change) return [first, `       ${change.none}`];
  const input = pourPlan.inputs[change.lever] as QuantityInput;
  const shown = input.show ?? input.unit;
  const costs = change.breaks.length > 0 ? ` That would fail ${change.breaks.join(', ')}.` : '';
  return [
    first,
    `       It would hold with ${input.name.toLowerCase()} at ${printQuantity(change.value, shown)}, now ${printQuantity(change.from, shown)}.${costs}`,
  ];
}
