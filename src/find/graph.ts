import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { unitLabel } from '../../calculators/core/print.ts';
import { sameDimension, unit, type UnitSymbol } from '../../calculators/core/units.ts';
import { same, wide } from './same.ts';

/** A thing that can be known or wanted. */
export interface GraphQuantity {
  readonly name: string;
  readonly sign: string;
  /** As printed beside a number; empty for a plain number. */
  readonly unit: string;
}

/** A formula as what it joins. */
export interface Relation {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly Part[];
}

export interface Part {
  /** Which quantity, by its place in the list. */
  readonly quantity: number;
  readonly symbol: string;
  /** The formula can be turned round for it. */
  readonly found: boolean;
  /** It has a usual value that holds on most benches: a coefficient or a property, never a size of the job. */
  readonly usual: boolean;
}

export interface Graph {
  readonly quantities: readonly GraphQuantity[];
  readonly relations: readonly Relation[];
}

const stands = new Map(same.flatMap(([name, ...others]) => others.map((other) => [other, name!])));

/** The graph of which formula joins which quantities. Constants of nature are left out: nobody has to know them. */
export function graphOf(formulas: readonly Formula[]): Graph {
  const quantities: GraphQuantity[] = [];
  const places = new Map<string, number>();
  const placeOf = (formula: Formula, symbol: string, spec: SymbolSpec): number => {
    const own = wide.includes(spec.name);
    const name =
      stands.get(`${formula.id}:${symbol}`) ??
      stands.get(spec.name) ??
      (own ? `${spec.name} (${formula.title.toLowerCase()})` : spec.name);
    const key = `${name} ${unit(spec.unit).dimension.join()} ${unit(spec.unit).kind}`;
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, quantities.length);
    quantities.push({ name, sign: spec.sign ?? symbol, unit: unitLabel(spec.show ?? spec.unit) });
    return quantities.length - 1;
  };
  const relations = formulas.map((formula) => ({
    id: formula.id,
    title: formula.title,
    parts: Object.entries(formula.symbols as Record<string, SymbolSpec>).flatMap(([symbol, spec]) =>
      spec.constant === undefined
        ? [
            {
              quantity: placeOf(formula, symbol, spec),
              symbol,
              found: formula.noSolve?.[symbol] === undefined,
              usual: spec.usual !== undefined && !ofTheJob(spec.unit),
            },
          ]
        : [],
    ),
  }));
  return { quantities, relations };
}

/** Lengths, areas, volumes, masses, times and flows are those of the reader's own job. */
const jobs: readonly UnitSymbol[] = ['m', 'm²', 'm³', 'kg', 's', 'm³/s', 'kg/s', 'm/s', 'N', 'J', 'W'];
const ofTheJob = (symbol: UnitSymbol): boolean =>
  jobs.some((job) => sameDimension(unit(job).dimension, unit(symbol).dimension));

/** Names of `same` and `wide` that no formula uses, or that join what cannot be one thing: as sentences. */
export function graphFaults(formulas: readonly Formula[]): string[] {
  const specs = formulas.flatMap((formula) =>
    Object.entries(formula.symbols as Record<string, SymbolSpec>).map(
      ([symbol, spec]) => [`${formula.id}:${symbol}`, spec] as const,
    ),
  );
  const of = (name: string): readonly SymbolSpec[] =>
    specs.flatMap(([key, spec]) => (key === name || spec.name === name ? [spec] : []));
  const unused = [...same.flatMap(([, ...others]) => others), ...wide]
    .filter((name) => of(name).length === 0)
    .map((name) => `no formula has "${name}"`);
  const apart = same.flatMap((names) => {
    const members = names.flatMap(of);
    const [first] = members;
    const odd = members.find((one) => !sameDimension(unit(one.unit).dimension, unit(first!.unit).dimension));
    return odd ? [`"${names[0]}" is in ${first!.unit} and in ${odd.unit}`] : [];
  });
  return [...unused, ...apart];
}
