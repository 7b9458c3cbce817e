import type { Formula, SymbolSpec } from './formula.ts';
import type { Model, Output, QuantityInput, Values } from './model.ts';
import { solve } from './solve.ts';

/** A symbol of a formula as an input of a form. */
function inputOf(spec: SymbolSpec): QuantityInput {
  return {
    kind: 'quantity',
    name: spec.name,
    unit: spec.unit,
    ...(spec.sign !== undefined && { sign: spec.sign }),
    ...(spec.show !== undefined && { show: spec.show }),
    ...(spec.range !== undefined && { range: spec.range }),
    ...(spec.why !== undefined && { why: spec.why }),
    ...(spec.limit !== undefined && { limit: spec.limit }),
    ...(spec.usual !== undefined && { usual: spec.usual }),
    ...(spec.note !== undefined && { note: spec.note }),
  };
}

const outputOf = ({ name, sign, unit, show }: SymbolSpec): Output => ({
  name,
  unit,
  ...(sign !== undefined && { sign }),
  ...(show !== undefined && { show }),
});

/**
 * A formula lifted to the shape of a model, solved for its first symbol unless another is named, so that
 * card, command line, sweep and exercise know one shape.
 */
export function formulaAsModel(formula: Formula, find = Object.keys(formula.symbols)[0]!): Model {
  const symbols = Object.entries(formula.symbols);
  const sought = formula.symbols[find];
  if (!sought) throw new Error(`"${formula.id}" has no symbol "${find}"`);
  return {
    id: formula.id,
    title: formula.title,
    answers: formula.answers,
    inputs: Object.fromEntries(
      symbols.flatMap(([symbol, spec]) =>
        symbol === find || spec.constant !== undefined ? [] : [[symbol, inputOf(spec)]],
      ),
    ),
    outputs: { [find]: outputOf(sought) },
    run: (inputs: Values) => {
      const given = Object.fromEntries(
        Object.entries(inputs).flatMap(([symbol, value]) =>
          typeof value === 'number' ? [[symbol, value]] : [],
        ),
      );
      const solved = solve(formula, given, find);
      const notes = solved.warnings.map(
        ({ symbol, message }) => `${formula.symbols[symbol]?.name ?? symbol}: ${message}`,
      );
      if (!solved.ok) return { values: {}, steps: [], checks: [], notes: [solved.reason, ...notes] };
      const step = { id: find, title: formula.title, formula: formula.id, given, find, value: solved.value };
      return { values: { [find]: solved.value }, steps: [step], checks: [], notes };
    },
    assumes: formula.assumes,
    source: formula.source,
    examples: formula.examples,
    ...(formula.alsoSee !== undefined && { alsoSee: formula.alsoSee }),
    ...(formula.caution !== undefined && { caution: formula.caution }),
    ...(formula.words !== undefined && { words: formula.words }),
  };
}
