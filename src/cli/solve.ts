import { printEquation } from '../../calculators/core/expression.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import type { Model, Result } from '../../calculators/core/model.ts';
import { didYouMean } from '../../calculators/core/nearest.ts';
import { plainNumber, printQuantity, printWithSpread } from '../../calculators/core/print.ts';
import { readQuantity } from '../../calculators/core/quantity.ts';
import { solve, usualOf } from '../../calculators/core/solve.ts';
import { formulaSpread } from '../../calculators/core/spread.ts';
import { fromSI, widthFromSI } from '../../calculators/core/units.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { UsageError, type Answer, type Call, type Files } from './command.ts';

/** What a user gave by name, as text: from the words of the call or from a file. */
async function givenTexts(call: Call, files: Files): Promise<Record<string, unknown>> {
  const given: Record<string, unknown> = {};
  const path = call.options.get('input');
  if (path !== undefined) {
    let parsed: unknown;
    try {
      parsed = JSON.parse(await files.read(path));
    } catch (error) {
      throw new UsageError(
        `cannot read ${path}: ${error instanceof Error ? error.message : 'unknown fault'}`,
      );
    }
    if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
      throw new UsageError(`${path} must hold one object of names and quantities, like {"h": "40 mm"}`);
    }
    Object.assign(given, parsed);
  }
  for (const word of call.words.slice(1)) {
    const [name = '', text] = word.split(/=(.*)/s);
    if (text === undefined) throw new UsageError(`"${word}" is not NAME=QUANTITY, e.g. h="40 mm"`);
    given[name] = text;
  }
  return given;
}

/** Solves a formula for one symbol from quantities as a user writes them. */
export async function solveFormula(formula: Formula, call: Call, files: Files): Promise<Answer> {
  const symbols = Object.keys(formula.symbols);
  const texts = await givenTexts(call, files);
  for (const name of Object.keys(texts)) {
    if (!symbols.includes(name)) {
      throw new UsageError(
        `${formula.id} has no symbol "${name}"${didYouMean(name, symbols)}; it has ${symbols.join(', ')}`,
      );
    }
  }
  const find = call.options.get('for') ?? symbols.find((symbol) => !(symbol in texts));
  if (find === undefined) throw new UsageError(`every symbol is given; leave one out, or say --for SYMBOL`);
  const sought = formula.symbols[find];
  if (!sought || sought.constant !== undefined) {
    throw new UsageError(
      `cannot solve ${formula.id} for "${find}"${didYouMean(find, symbols)}; it has ${symbols.join(', ')}`,
    );
  }
  const given: Record<string, number> = {};
  const widths: Record<string, number> = {};
  for (const [name, text] of Object.entries(texts)) {
    if (name === find) continue;
    const spec = formula.symbols[name]!;
    const reading = readQuantity(String(text), { unit: spec.unit, ...(spec.show && { show: spec.show }) });
    if (!reading.ok) throw new UsageError(`${name}: ${reading.message}`);
    given[name] = reading.value;
    if (reading.spread !== undefined) widths[name] = reading.spread;
  }
  const assumed = Object.entries(usualOf(formula)).filter(([name]) => name !== find && !(name in given));
  const values = { ...Object.fromEntries(assumed), ...given };
  const solved = solve(formula, values, find);
  const shown = sought.show ?? sought.unit;
  const warnings = solved.warnings.map(({ symbol, message }) => `${symbol}: ${message}`);
  if (!solved.ok)
    return {
      code: 1,
      error: [solved.reason, ...warnings.filter((w) => !w.includes(solved.reason))].join('\n'),
    };
  const spread = formulaSpread(formula, values, widths, find);
  if (call.options.has('json')) {
    const out = {
      id: formula.id,
      find,
      value: fromSI(solved.value, shown),
      unit: shown,
      ...(spread && {
        spread: widthFromSI(spread.spread, shown),
        low: fromSI(spread.low, shown),
        high: fromSI(spread.high, shown),
      }),
      assumed: Object.fromEntries(assumed.map(([name, value]) => [name, quantityText(formula, name, value)])),
      warnings,
    };
    return { code: 0, out: JSON.stringify(out, null, 2) };
  }
  const lines = [
    `${find} = ${spread ? printWithSpread(solved.value, shown, [spread.low, spread.high]) : printQuantity(solved.value, shown, { figures: 4 })}`,
    `  ${solved.rearranged ? printEquation(solved.rearranged) : `${formula.equation}  (root found by search)`}`,
    ...(assumed.length > 0
      ? [
          `  taken as usual: ${assumed.map(([name, value]) => `${name} = ${quantityText(formula, name, value)}`).join(', ')}`,
        ]
      : []),
    ...(spread
      ? [
          `  spread mostly from ${spread.shares
            .slice(0, 2)
            .map(({ name, share }) => `${name} (${Math.round(100 * share)} %)`)
            .join(', ')}`,
        ]
      : []),
    ...(solved.roots.length > 1
      ? [
          `  other answers: ${solved.roots
            .filter((root) => root !== solved.value)
            .map((root) => printQuantity(root, shown))
            .join(', ')}`,
        ]
      : []),
    ...warnings.map((warning) => `  warning: ${warning}`),
    ...(formula.caution ?? []).map((caution) => `  caution: ${caution}`),
  ];
  return { code: 0, out: lines.join('\n') };
}

function quantityText(formula: Formula, name: string, si: number): string {
  const spec = formula.symbols[name]!;
  const shown = spec.show ?? spec.unit;
  return `${plainNumber(fromSI(si, shown), { figures: 6 })}${shown === '1' ? '' : ` ${shown}`}`;
}

/** Runs a model on the inputs given, with usual values for the rest. */
export async function solveModel(model: Model, call: Call, files: Files): Promise<Answer> {
  const texts = await givenTexts(call, files);
  const names = Object.keys(model.inputs);
  for (const name of Object.keys(texts)) {
    if (!names.includes(name))
      throw new UsageError(`${model.id} has no input "${name}"${didYouMean(name, names)}`);
  }
  for (const [name, text] of Object.entries(texts))
    if (model.inputs[name]?.kind === 'list') texts[name] = rowsFrom(name, text);
  const { values, problems } = completeInputs(model, texts, resolvedMaterials(materials));
  if (problems.length > 0) throw new UsageError(problems.join('\n'));
  const start = performance.now();
  const result = model.run(values);
  const milliseconds = Math.round(1000 * (performance.now() - start)) / 1000;
  const answered = result.checks.length > 0 || Object.values(result.values).some(Number.isFinite);
  return {
    code: answered ? 0 : 1,
    out: call.options.has('json')
      ? JSON.stringify({ ...result, milliseconds }, null, 2)
      : resultText(model, result),
  };
}

/** A list of rows as typed in one word: JSON, as in a file given with `--input`. */
function rowsFrom(name: string, text: unknown): unknown {
  if (typeof text !== 'string') return text;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new UsageError(
      `${name} is a list: write it as rows, like ${name}='[{"name": "web", "thickness": "2 mm"}]', or in a file with --input`,
    );
  }
}

/** A model's result as lines: values, then checks, then notes. */
export function resultText(model: Model, result: Result): string {
  const values = Object.entries(result.values).map(([name, value]) => {
    const output = model.outputs[name];
    if (!output) return `${name}: ${value}`;
    // A count is counted, not measured: 39 cells, not 39.0.
    const count = output.unit === '1' && output.show === undefined && Number.isInteger(value);
    return `${output.name}: ${count ? value : printQuantity(value, output.show ?? output.unit)}`;
  });
  const checks = result.checks.map(({ title, verdict, why }) => `[${verdict}] ${title}. ${why}`);
  return [
    ...values,
    ...(checks.length > 0 ? ['', ...checks] : []),
    ...(result.notes.length > 0 ? ['', ...result.notes] : []),
  ]
    .join('\n')
    .trimStart();
}
