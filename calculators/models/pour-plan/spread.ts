import type { Row, Scalar, Values, Watch } from '../../core/model.ts';
import { startDrawing, type Spread } from '../../core/spread.ts';
import { withWritten } from '../../core/written.ts';
import { numbersOf } from '../inputs.ts';
import { pourPlan } from '../pour-plan.ts';
import { startLedger } from './ledger.ts';
import { runPlan, trialsOf } from './run.ts';
import { writtenOut } from './written-out.ts';

const solverOf = withWritten(writtenOut);

export interface PlanSpread {
  /** The 95 % interval of every output the plan gives, and the inputs it comes from. */
  readonly outputs: Readonly<Record<string, Spread>>;
  /** Of so many castings poured like this, the share for which each check holds. */
  readonly chances: Readonly<Record<string, number>>;
  /** A check's margin with its interval, and the inputs it depends on most; worked when it is asked for. */
  readonly margin: (id: string) => Spread | undefined;
  /** The share of samples in which every check holds that holds now. */
  readonly together: number;
  readonly count: number;
}

/**
 * All quantity inputs drawn together within their spreads, each number once a sample however many rows use
 * it. The same inputs and seed give the same answer. Undefined when cancelled.
 */
export function planSpread(
  inputs: Values,
  spreads: Readonly<Record<string, number>>,
  { watch = {}, ...how }: Trials & { readonly watch?: Watch } = {},
): PlanSpread | undefined {
  const trials = planTrials(inputs, spreads, how);
  for (let done = 0; ; done += 1) {
    if (watch.cancelled?.()) return undefined;
    const { value } = trials.next();
    if (typeof value === 'object') return value;
    if (done % 20 === 19) watch.progress?.(value);
  }
}

export interface Trials {
  readonly seed?: string;
  readonly count?: number;
}

/** The same a trial at a time, for whoever has to listen in between: the share done, and at the end the spread. */
export function* planTrials(
  inputs: Values,
  spreads: Readonly<Record<string, number>>,
  { seed = 'pour-plan', count = 400 }: Trials = {},
): Generator<number, PlanSpread, void> {
  const now = runPlan(inputs, { warming: false });
  const drawing = startDrawing(numbersOf(pourPlan, inputs), spreads, { seed, count });
  const { values, change } = changing(inputs);
  const ledger = startLedger();
  const trial = trialsOf(values, ledger, solverOf);
  const blank = (): Float64Array => new Float64Array(count).fill(Number.NaN);
  const outputs = Object.keys(now.values).map((name) => ({
    name,
    read: ledger.reader(name),
    drawn: blank(),
  }));
  const checks = now.checks.map(({ id, margin }) => ({ id, holds: margin >= 0, drawn: blank() }));
  let together = 0;

  for (let i = 0; i < count; i += 1) {
    drawing.next(change);
    const decided = trial();
    for (const { read, drawn } of outputs) drawn[i] = read();
    for (let k = 0; k < checks.length; k += 1) {
      const { id, drawn } = checks[k]!;
      // Mostly where it stands now; elsewhere when another is left out or its thickness has changed its turn.
      const same = decided[k]?.id === id ? decided[k] : decided.find((check) => check.id === id);
      drawn[i] = same?.margin ?? Number.NaN;
    }
    if (checks.every(({ holds, drawn }) => !holds || drawn[i]! >= 0)) together += 1;
    yield (i + 1) / count;
  }
  const spread = drawing.done();
  const held = (drawn: Float64Array): number => drawn.reduce((sum, margin) => sum + Number(margin >= 0), 0);
  return {
    outputs: Object.fromEntries(outputs.map(({ name, drawn }) => [name, spread(drawn)])),
    margin: (id) => {
      const check = checks.find((one) => one.id === id);
      return check && spread(check.drawn);
    },
    chances: Object.fromEntries(checks.map(({ id, drawn }) => [id, held(drawn) / count])),
    together: together / count,
    count,
  };
}

/** A copy of the inputs whose numbers can be changed in place, by the names of `numbersOf`. */
function changing(inputs: Values): {
  readonly values: Values;
  readonly change: (name: string, value: number) => void;
} {
  const values: Record<string, Scalar | readonly Row[]> = { ...inputs };
  const rows = new Map<string, { readonly row: Record<string, Scalar>; readonly field: string }>();
  for (const [name, list] of Object.entries(inputs)) {
    if (!Array.isArray(list)) continue;
    const copy = (list as readonly Row[]).map((row) => ({ ...row }));
    values[name] = copy;
    copy.forEach((row, index) => {
      for (const field of Object.keys(row)) rows.set(`${name}.${index + 1}.${field}`, { row, field });
    });
  }
  return {
    values,
    change: (name, value) => {
      const at = rows.get(name);
      if (at) at.row[at.field] = value;
      else values[name] = value;
    },
  };
}
