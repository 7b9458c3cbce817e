import type { Check, Verdict } from '../../core/model.ts';

/** Margins are logarithms of have over need: this much above one is still only close. */
const closeBelow = Math.log(1.2);

export function verdictOf(margin: number): Verdict {
  if (margin < 0) return 'fails';
  return margin < closeBelow ? 'close' : 'holds';
}

export interface Judged {
  readonly id: string;
  readonly title: string;
  readonly margin: number;
  readonly levers: readonly string[];
  readonly steps: readonly string[];
  /** The step whose number the decision turns on, when there is one. */
  readonly shows?: string;
  /** The sentence for each verdict; `close` falls back on `holds`. */
  readonly why: { readonly holds: string; readonly close?: string; readonly fails: string };
}

/** A check with its verdict and sentence, or nothing when a number behind it is not known. */
export function judge({ why, ...check }: Judged): Check[] {
  if (Number.isNaN(check.margin)) return [];
  const verdict = verdictOf(check.margin);
  const sentence =
    verdict === 'fails' ? why.fails : verdict === 'close' ? (why.close ?? why.holds) : why.holds;
  return [{ ...check, verdict, why: sentence }];
}

/** ln(have / need), with ends so that a lever can still be solved for where one of them is not above zero. */
export function marginOf(have: number, need: number): number {
  if (Number.isNaN(have) || Number.isNaN(need)) return Number.NaN;
  if (need <= 0) return 5;
  if (have <= 0) return -5 + Math.max(-5, have / Math.abs(need));
  return Math.max(-5, Math.min(5, Math.log(have / need)));
}
