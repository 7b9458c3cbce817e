import type { Formula } from '../../core/formula.ts';
import type { Row, Step, Values } from '../../core/model.ts';
import { rearrange, solve } from '../../core/solve.ts';
import type { UnitSymbol } from '../../core/units.ts';
import { implicitRoot } from './implicit-root.ts';

/** What a plan is worked from and what it leaves behind: numbers by name, the steps that gave them, remarks. */
export interface Working {
  /** A quantity input in SI; NaN when it is not known, which every later line then shows. */
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
  readonly flag: (name: string) => boolean;
  readonly rows: (name: string) => readonly Row[];
  /** Works a formula for its first symbol, or for `find`, and keeps the line. NaN when there is no answer. */
  readonly work: (
    id: string,
    title: string,
    formula: Formula,
    given: Readonly<Record<string, number>>,
    find?: string,
  ) => number;
  /** Keeps a line that is no formula: a sum, a smaller of two, a choice. */
  readonly state: (id: string, title: string, value: number, unit: UnitSymbol, note: string) => number;
  readonly note: (sentence: string) => void;
  readonly steps: readonly Step[];
  readonly notes: readonly string[];
  /** Every line's number by its id. */
  readonly values: Readonly<Record<string, number>>;
}

export function startWorking(inputs: Values): Working {
  const steps: Step[] = [];
  const notes: string[] = [];
  const values: Record<string, number> = {};

  function keep(step: Step): number {
    steps.push(step);
    const value = step.value ?? Number.NaN;
    if (Number.isFinite(value)) values[step.id] = value;
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
    work: (id, title, formula, given, find = Object.keys(formula.symbols)[0]!) => {
      const line = { id, title, formula: formula.id, given, find };
      const unit = formula.symbols[find]?.unit ?? '1';
      const known = Object.values(given).every(Number.isFinite);
      if (known && !rearrange(formula, find)) {
        const value = implicitRoot(formula, given, find, 1);
        if (value !== undefined) return keep({ ...line, value, unit });
      }
      const solved = solve(formula, given, find);
      return keep(
        solved.ok ? { ...line, value: solved.value, unit } : { ...line, unit, note: solved.reason },
      );
    },
    state: (id, title, value, unit, note) =>
      keep({ id, title, unit, note, ...(Number.isFinite(value) && { value }) }),
    note: (sentence) => {
      if (!notes.includes(sentence)) notes.push(sentence);
    },
    steps,
    notes,
    values,
  };
}
