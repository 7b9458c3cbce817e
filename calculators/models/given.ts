import type { Result, Row, Step, Values } from '../core/model.ts';

/** A result with nothing in it but the reasons, when a model cannot or must not answer. */
export const noResult = (...notes: readonly string[]): Result => ({
  values: {},
  steps: [],
  checks: [],
  notes,
});

/** A quantity in SI; NaN when it was left open. */
export function numberAt(inputs: Values | Row, name: string): number {
  const value = inputs[name];
  return typeof value === 'number' && Number.isFinite(value) ? value : Number.NaN;
}

export function textAt(inputs: Values | Row, name: string): string {
  const value = inputs[name];
  return typeof value === 'string' ? value : '';
}

export function rowsAt(inputs: Values, name: string): readonly Row[] {
  const value = inputs[name];
  return Array.isArray(value) ? (value as readonly Row[]) : [];
}

/** The first of these quantities that is missing or not above nought, by its name in the form. */
export function notAboveNought(
  inputs: Values,
  named: Readonly<Record<string, { readonly name: string }>>,
  ...names: readonly string[]
): string | undefined {
  const bad = names.find((name) => !(numberAt(inputs, name) > 0));
  return bad === undefined ? undefined : `${named[bad]?.name ?? bad} is missing or not above nought`;
}

/** The values that are numbers: an output that does not apply is left out. */
export function known(values: Readonly<Record<string, number | undefined>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) =>
      value !== undefined && Number.isFinite(value) ? [[name, value]] : [],
    ),
  );
}

/** The lines of working that are numbers or say why there is none: far outside the ranges a series may give neither. */
export const knownSteps = (steps: readonly Step[]): readonly Step[] =>
  steps.filter(({ value }) => value === undefined || Number.isFinite(value));
