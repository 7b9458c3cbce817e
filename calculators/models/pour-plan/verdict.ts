import type { Check, Verdict } from '../../core/model.ts';
import type { Working } from './working.ts';

/** Margins are logarithms of have over need: this much above one is still only close. */
const closeBelow = Math.log(1.2);

export function verdictOf(margin: number): Verdict {
  if (margin < 0) return 'fails';
  return margin < closeBelow ? 'close' : 'holds';
}

/** What a check says of itself. */
export interface Words {
  readonly title: string;
  readonly levers: readonly string[];
  readonly steps: readonly string[];
  /** The step whose number the decision turns on, when there is one. */
  readonly shows?: string;
  /** The sentence for each verdict; `close` falls back on `holds`. */
  readonly why: { readonly holds: string; readonly close?: string; readonly fails: string };
}

export interface Judged extends Words {
  readonly id: string;
  readonly margin: number;
}

/** A check with its verdict and sentence, or nothing when a number behind it is not known. */
export function judge({ why, ...check }: Judged): Check[] {
  if (Number.isNaN(check.margin)) return [];
  const verdict = verdictOf(check.margin);
  const sentence =
    verdict === 'fails' ? why.fails : verdict === 'close' ? (why.close ?? why.holds) : why.holds;
  return [{ ...check, verdict, why: sentence }];
}

const wordless = { title: '', why: '', levers: [], steps: [] } as const;

/** The same in a plan, where a trial asks for no words. */
export function weigh(working: Working, id: string, margin: number, words: () => Words): Check[] {
  if (!working.trial) return judge({ id, margin, ...words() });
  return Number.isNaN(margin) ? [] : [{ id, margin, verdict: verdictOf(margin), ...wordless }];
}

/** ln(have / need), with ends so that a lever can still be solved for where one of them is not above zero. */
export function marginOf(have: number, need: number): number {
  if (Number.isNaN(have) || Number.isNaN(need)) return Number.NaN;
  if (need <= 0) return 5;
  if (have <= 0) return -5 + Math.max(-5, have / Math.abs(need));
  return Math.max(-5, Math.min(5, Math.log(have / need)));
}
