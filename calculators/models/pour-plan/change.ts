import type { Check, QuantityInput, Values } from '../../core/model.ts';
import { toSI } from '../../core/units.ts';
import { pourPlan } from '../pour-plan.ts';
import { runPlan, tryPlan } from './run.ts';
import { rootBetween } from '../../core/bracket.ts';
import { withWritten } from '../../core/written.ts';
import { startLedger } from './ledger.ts';
import { writtenOut } from './written-out.ts';

const solverOf = withWritten(writtenOut);
const ledger = startLedger();

/** One input, all others as they are, and the value at which the check just holds. */
export interface Change {
  readonly lever: string;
  /** In SI; the check holds from here on, away from `from`. */
  readonly value: number;
  readonly from: number;
  /** Checks that held and would fail then: what the change costs. */
  readonly breaks: readonly string[];
}

export type WhatChanges = Change | { readonly none: string };

/** A check's margin is looked at in this many places between the value now and each end of the range. */
const looks = 24;

/** Inputs that end where another input or output says so, whatever their own range. */
const ends: Readonly<Record<string, string>> = { 'mould.temperature': 'mould.temperature.limit' };

function rangeOf(lever: string, inputs: Values): readonly [number, number] | undefined {
  const input = pourPlan.inputs[lever] as QuantityInput | undefined;
  if (input?.kind !== 'quantity' || !input.range) return undefined;
  const [low, high] = input.range.map((end) => toSI(end, input.unit)) as [number, number];
  const end = inputs[ends[lever] ?? ''];
  return [low, typeof end === 'number' ? Math.min(high, end) : high];
}

/** Points from the value now towards an end, closer together near the value now. */
function lookingFrom(now: number, end: number): number[] {
  return Array.from({ length: looks }, (_, i) => now + (end - now) * ((i + 1) / looks) ** 2);
}

const checksOf = (inputs: Values, id: string): readonly Check[] =>
  id === 'warming' ? runPlan(inputs, { warming: true }).checks : tryPlan(inputs, ledger, solverOf);

const marginAt = (inputs: Values, id: string): number =>
  checksOf(inputs, id).find((check) => check.id === id)?.margin ?? Number.NaN;

const checkOf = (inputs: Values, id: string): Check | undefined =>
  runPlan(inputs, { warming: id === 'warming' }).checks.find((check) => check.id === id);

/** The least change of this lever that makes the check hold, or undefined when none in its range does. */
export function changeOfLever(inputs: Values, id: string, lever: string): Change | undefined {
  const from = inputs[lever];
  const range = rangeOf(lever, inputs);
  if (typeof from !== 'number' || !range) return undefined;
  const margin = (x: number): number => marginAt({ ...inputs, [lever]: x }, id);
  const found = range.flatMap((end) => {
    let before = from;
    for (const x of lookingFrom(from, end)) {
      if (margin(x) >= 0) return [rootBetween(margin, before, x)];
      before = x;
    }
    return [];
  });
  const [value] = found
    .filter((x) => Math.abs(margin(x)) < 1e-6)
    .sort((a, b) => Math.abs(a - from) - Math.abs(b - from));
  return value === undefined
    ? undefined
    : { lever, value, from, breaks: brokenBy(inputs, { ...inputs, [lever]: value }) };
}

function brokenBy(before: Values, after: Values): string[] {
  const failing = (inputs: Values): string[] =>
    runPlan(inputs, { warming: true })
      .checks.filter(({ verdict, margin }) => verdict === 'fails' && margin < -1e-6)
      .map(({ id }) => id);
  const already = new Set(failing(before));
  return failing(after).filter((id) => !already.has(id));
}

/** Every single change that would make the check hold, in the order the check names its levers. */
export function waysToChange(inputs: Values, id: string): Change[] {
  const check = checkOf(inputs, id);
  if (!check || check.verdict !== 'fails') return [];
  return check.levers.flatMap((lever) => {
    const change = changeOfLever(inputs, id, lever);
    return change ? [change] : [];
  });
}

/**
 * What would have to change for a failing check to hold: one lever, solved for where its margin is zero. A
 * change that breaks no other check is preferred; among equals the check's own order, most practical first.
 */
export function whatWouldHaveToChange(inputs: Values, id: string): WhatChanges {
  const check = checkOf(inputs, id);
  if (!check) return { none: `The plan has no check "${id}" with these inputs.` };
  if (check.verdict !== 'fails') return { none: 'It holds as it is.' };
  if (check.levers.length === 0) return { none: 'No number changes this: do what the sentence says.' };
  const ways = waysToChange(inputs, id);
  const [best] = [...ways].sort((a, b) => a.breaks.length - b.breaks.length);
  if (best) return best;
  const names = check.levers.map((lever) => pourPlan.inputs[lever]?.name.toLowerCase() ?? lever);
  return {
    none: `No one change in its range is enough: tried ${names.join(', ')}. Change two, or the part.`,
  };
}
