import type { Citation, Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import type { Input, Model } from '../../calculators/core/model.ts';
import { printNumber, unitLabel } from '../../calculators/core/print.ts';
import { fromSI, toSI, type UnitSymbol } from '../../calculators/core/units.ts';
import { sources } from '../../calculators/sources.ts';

const inUnit = (value: number, from: UnitSymbol, to: UnitSymbol): string =>
  `${printNumber(fromSI(toSI(value, from), to), { figures: 4 })}${to === '1' ? '' : ` ${unitLabel(to)}`}`;

export function cite({ key, at, how }: Citation): string {
  const { authors, title, year } = sources[key];
  return `${authors} (${year}), ${title}, ${at} [${how}]`;
}

function rangeText({ unit, show, range, why }: Pick<SymbolSpec, 'unit' | 'show' | 'range' | 'why'>): string {
  if (!range) return '';
  const shown = show ?? unit;
  return `${inUnit(range[0], unit, shown)} to ${inUnit(range[1], unit, shown)}${why ? ` (${why})` : ''}`;
}

function symbolLines(symbol: string, spec: SymbolSpec): string {
  const shown = spec.show ?? spec.unit;
  const facts = [
    spec.constant === undefined ? '' : `constant ${inUnit(spec.constant, spec.unit, shown)}`,
    spec.usual === undefined ? '' : `usually ${inUnit(spec.usual, spec.unit, shown)}`,
    rangeText(spec),
  ].filter(Boolean);
  return `  ${symbol.padEnd(8)} ${spec.name}, ${shown === '1' ? 'a number' : unitLabel(shown)}\n           ${facts.join('; ')}`.trimEnd();
}

function section(title: string, lines: readonly string[] | undefined): string[] {
  return lines && lines.length > 0 ? ['', title, ...lines.map((line) => `  ${line}`)] : [];
}

export function describeFormula(formula: Formula): string {
  return [
    `${formula.id}  ${formula.title}`,
    formula.answers,
    '',
    `  ${formula.equation}`,
    '',
    ...Object.entries(formula.symbols).map(([symbol, spec]) => symbolLines(symbol, spec)),
    ...section('Assumes', formula.assumes),
    ...section('Caution', formula.caution),
    ...section('Source', [formula.source, ...(formula.alsoSee ?? [])].map(cite)),
  ].join('\n');
}

function inputLines(name: string, input: Input): string {
  switch (input.kind) {
    case 'quantity': {
      const shown = input.show ?? input.unit;
      const usual = input.usual === undefined ? '' : `, usually ${inUnit(input.usual, input.unit, shown)}`;
      const from = input.from ? `, from the ${input.from.input} unless given` : '';
      return `${name}  ${input.name}, ${shown === '1' ? 'a number' : unitLabel(shown)}${usual}${from}`;
    }
    case 'choice':
      return `${name}  ${input.name}: ${Object.keys(input.options).join(' | ')}, usually ${input.usual}`;
    case 'material':
      return `${name}  ${input.name}: the id of a ${input.role}, usually ${input.usual}`;
    case 'list':
      return `${name}  ${input.name}: a list of { ${Object.keys(input.item).join(', ')} }`;
    default:
      return `${name}  ${input.name}: usually ${String(input.usual)}`;
  }
}

export function describeModel(model: Model): string {
  return [
    `${model.id}  ${model.title}`,
    model.answers,
    ...section(
      'Takes',
      Object.entries(model.inputs).map(([name, input]) => inputLines(name, input)),
    ),
    ...section(
      'Gives',
      Object.entries(model.outputs).map(
        ([name, { name: words, unit, show }]) =>
          `${name}  ${words}, ${unitLabel(show ?? unit) || 'a number'}`,
      ),
    ),
    ...section('Assumes', model.assumes),
    ...section('Caution', model.caution),
    ...section('Source', [model.source, ...(model.alsoSee ?? [])].map(cite)),
  ].join('\n');
}
