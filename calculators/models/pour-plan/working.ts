import type { Formula } from '../../core/formula.ts';
import type { Row, Step, Values } from '../../core/model.ts';
import { firstSymbol } from '../../core/compiled.ts';
import { solve } from '../../core/solve.ts';
import { solverFor } from '../../core/solver.ts';
import type { UnitSymbol } from '../../core/units.ts';
import type { SolverOf } from '../../core/written.ts';
import { startLedger, type Ledger } from './ledger.ts';

/** What a plan is worked from and what it leaves behind: numbers by name, the steps that gave them, remarks. */
export interface Working {
  /** A quantity input in SI; NaN when it is not known, which every later line then shows. */
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
  readonly flag: (name: string) => boolean;
  readonly rows: (name: string) => readonly Row[];
  /**
   * Works a formula for its first symbol, or for `find`, and keeps the line. NaN when there is no answer.
   * `near` is where to look first in an equation that cannot be rearranged; it crosses once.
   */
  readonly work: (
    id: string,
    title: string,
    formula: Formula,
    given: Readonly<Record<string, number>>,
    find?: string,
    near?: number,
  ) => number;
  /** Keeps a line that is no formula: a sum, a smaller of two, a choice. */
  readonly state: (id: string, title: string, value: number, unit: UnitSymbol, note: string) => number;
  readonly note: (sentence: string | (() => string)) => void;
  readonly steps: readonly Step[];
  readonly notes: readonly string[];
  /** Every line's number by its id, where there is one. */
  readonly kept: Pick<Ledger, 'get' | 'has'>;
  readonly solverOf: SolverOf;
  /** Only numbers are wanted: no lines, no sentences. */
  readonly trial: boolean;
}

/** With a ledger it is a trial, which leaves its numbers there and says nothing. */
export function startWorking(inputs: Values, ledger?: Ledger, solverOf: SolverOf = solverFor): Working {
  const steps: Step[] = [];
  const notes: string[] = [];
  const trial = ledger !== undefined;
  const kept = ledger ?? startLedger();

  function keep(id: string, value: number): number {
    if (!Number.isFinite(value)) return Number.NaN;
    kept.set(id, value);
    return value;
  }

  return {
    number: (name) => {
      const value = inputs[name];
      return typeof value === 'number' ? value : Number.NaN;
    },
    text: (name) => {
      const value = inputs[name];
      return typeof value === 'string' ? value : '';
    },
    flag: (name) => inputs[name] === true,
    rows: (name) => {
      const value = inputs[name];
      return Array.isArray(value) ? (value as readonly Row[]) : [];
    },
    work: (id, title, formula, given, wanted, near = 1) => {
      const value = solverOf(formula, wanted)(given, near);
      if (!trial) {
        const find = wanted ?? firstSymbol(formula);
        const unit = formula.symbols[find]?.unit ?? '1';
        const line = { id, title, formula: formula.id, given, find, unit };
        const about = Number.isFinite(value) ? { value } : reasonOf(formula, given, find);
        steps.push({ ...line, ...about });
      }
      return keep(id, value);
    },
    state: (id, title, value, unit, note) => {
      if (!trial) steps.push({ id, title, unit, note, ...(Number.isFinite(value) && { value }) });
      return keep(id, value);
    },
    note: (sentence) => {
      if (trial) return;
      const text = typeof sentence === 'string' ? sentence : sentence();
      if (!notes.includes(text)) notes.push(text);
    },
    steps,
    notes,
    kept,
    solverOf,
    trial,
  };
}

function reasonOf(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  find: string,
): { readonly note?: string } {
  const solved = solve(formula, given, find);
  return solved.ok ? {} : { note: solved.reason };
}
