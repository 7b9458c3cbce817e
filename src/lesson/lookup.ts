import type { Citation, Formula, How, SymbolSpec } from '../../calculators/core/formula.ts';
import type { Model, Output } from '../../calculators/core/model.ts';
import { didYouMean } from '../../calculators/core/nearest.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { models } from '../../calculators/models/index.ts';
import { sources, type Source } from '../../calculators/sources.ts';

/** The formula with this id; stops the build with a sentence when there is none. */
export function formulaOf(id: string, asked: string): Formula {
  const formula = formulas[id];
  if (formula) return formula;
  throw new Error(`${asked}: no formula "${id}"${didYouMean(id, Object.keys(formulas))}`);
}

export function symbolOf(formula: Formula, name: string, asked: string): SymbolSpec {
  const spec = (formula.symbols as Readonly<Record<string, SymbolSpec>>)[name];
  if (spec) return spec;
  throw new Error(
    `${asked}: "${formula.id}" has no symbol "${name}"${didYouMean(name, Object.keys(formula.symbols))}`,
  );
}

/** The model with this id; stops the build with a sentence when there is none. */
export function modelOf(id: string, asked: string): Model {
  const model = models[id];
  if (model) return model;
  throw new Error(`${asked}: no model "${id}"${didYouMean(id, Object.keys(models))}`);
}

export function outputOf(model: Model, name: string, asked: string): Output {
  const output = model.outputs[name];
  if (output) return output;
  throw new Error(
    `${asked}: "${model.id}" gives no "${name}"${didYouMean(name, Object.keys(model.outputs))}`,
  );
}

export function sourceOf(key: string, asked: string): Source {
  const source = (sources as Readonly<Record<string, Source>>)[key];
  if (source) return source;
  throw new Error(`${asked}: no source "${key}"${didYouMean(key, Object.keys(sources))}`);
}

/** How a number is known, as a reader is told. */
export const howWords: Readonly<Record<How, string>> = {
  read: 'read in the source',
  memory: 'recalled, not looked up again',
  'common practice': 'common practice',
  estimate: 'estimate',
};

/** `filling` → `Filling`; `burn-out` → `Burn out`. */
export function chapterName(id: string): string {
  const chapter = id.split('/')[0]!.replaceAll('-', ' ');
  return chapter.charAt(0).toUpperCase() + chapter.slice(1);
}

/** A citation as one plain sentence, for the foot of a sheet of paper: `Mills, K. C. (2002), table 4.1.` */
export function shortCitation({ key, at }: Citation, asked: string): string {
  const { authors, year } = sourceOf(key, asked);
  const names = authors.split(';');
  const lead = names.length > 2 ? `${names[0]} and others` : authors;
  return `${lead}${year === '' ? '' : ` (${year})`}, ${at}${/[.?]$/.test(at) ? '' : '.'}`;
}

/** Who wrote a work and when, closed by one full stop: “Carter, R.”, “Carter, R. (1999).” */
export const opening = ({ authors, year }: { readonly authors: string; readonly year: string }): string =>
  `${authors}${year === '' ? '' : ` (${year})`}`.replace(/\.?$/, '.');
