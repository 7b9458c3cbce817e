import { printQuantity, printWritten } from '../../calculators/core/print.ts';
import { quantity, quantityFigures, readSpread } from '../../calculators/core/quantity.ts';
import { solve } from '../../calculators/core/solve.ts';
import type { Citation } from '../../calculators/core/formula.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import type { PublishedCheck } from '../../tests/published/check.ts';
import { allChecks } from '../../tests/published/index.ts';
import type { ModelCheck } from '../../tests/published/model-check.ts';
import { modelChecks } from '../../tests/published/models.ts';
import { solidChecks, type SolidCheck } from '../../tests/published/solids.ts';
import { address } from './address.ts';
import { howWords } from './lookup.ts';
import { linkLine } from './working.ts';

export { standingOf, trends, type Standing, type Trend } from '../../tests/published/trends.ts';

/** A published figure beside what the library gives for the same numbers. */
export interface Compared {
  readonly id: string;
  readonly title: string;
  /** The formula or model put to the test. */
  readonly subject: string;
  readonly subjectTitle: string;
  /** Sign and text of each number given. */
  readonly given: readonly (readonly [string, string])[];
  readonly find: string;
  readonly printed: string;
  /** Printed one figure finer than the source. */
  readonly ours: string;
  /** Ours less theirs, as a part of theirs. */
  readonly off: number;
  readonly within: boolean;
  readonly tolerance: string;
  readonly source: Citation;
  readonly note?: string;
}

/** What a card says of a comparison, as HTML. */
export const comparison = ({ id, title, printed, ours, within, tolerance, source }: Compared): string =>
  linkLine(
    address(`evidence/#${id}`),
    title,
    `: printed ${printed}, here ${ours}, ${within ? 'within' : 'outside'} ${tolerance} (${howWords[source.how]}).`,
  );

type Asked = Pick<PublishedCheck, 'id' | 'title' | 'expect' | 'tolerance' | 'source' | 'note'>;

function against(
  { id, title, expect, tolerance, source, note }: Asked,
  found: number | string,
  rest: Pick<Compared, 'subject' | 'subjectTitle' | 'given' | 'find'>,
): Compared {
  const { value, unit, figures } = quantityFigures(expect);
  const ours = typeof found === 'number' ? found : Number.NaN;
  return {
    id,
    title,
    ...rest,
    printed: printWritten(expect),
    ours: typeof found === 'number' ? printQuantity(found, unit, { figures: figures + 1 }) : found,
    off: value === 0 ? ours : ours / value - 1,
    within: Math.abs(ours - value) <= readSpread(tolerance, value, unit) * (1 + 1e-9),
    tolerance: printWritten(tolerance),
    source,
    ...(note === undefined ? {} : { note }),
  };
}

function formulaRow(check: PublishedCheck): Compared {
  const formula = formulas[check.formula]!;
  const sign = (symbol: string): string => formula.symbols[symbol]?.sign ?? symbol;
  const given = Object.entries(check.given);
  const si = Object.fromEntries(given.map(([symbol, text]) => [symbol, quantity(text)]));
  const solved = solve(formula, si, check.find);
  return against(check, solved.ok ? solved.value : solved.reason, {
    subject: formula.id,
    subjectTitle: formula.title,
    given: given.map(([symbol, text]) => [sign(symbol), printWritten(text)]),
    find: sign(check.find),
  });
}

const books = resolvedMaterials(materials);

function modelRow(check: ModelCheck): Compared {
  const model = models[check.model]!;
  const { values, notes } = model.run(completeInputs(model, check.given, books).values);
  const rows = (value: ModelCheck['given'][string]): string =>
    typeof value === 'string'
      ? printWritten(value)
      : value.map((row) => Object.values(row).join(' ')).join('; ');
  return against(check, values[check.find] ?? notes.join(' '), {
    subject: model.id,
    subjectTitle: model.title,
    given: Object.entries(check.given).map(([name, value]) => [
      model.inputs[name]?.name ?? name,
      rows(value),
    ]),
    find: model.outputs[check.find]?.name ?? check.find,
  });
}

const solidRow = ({ rows, ...check }: SolidCheck): Compared =>
  modelRow({
    ...check,
    given: {
      solids: rows.map((row) => ({
        count: '1',
        ...Object.fromEntries(Object.entries(row).map(([name, text]) => [name, String(text)])),
      })),
    },
  });

/** Every published figure, compared, in the order of its chapter. */
export const compared: readonly Compared[] = [
  ...allChecks.map(formulaRow),
  ...solidChecks.map(solidRow),
  ...modelChecks.map(modelRow),
];

export { agreements } from '../../tests/published/libraries.ts';
export { looked } from '../../tests/published/looked.ts';
