import type { Citation, How } from '../../calculators/core/formula.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { models } from '../../calculators/models/index.ts';
import { sources, type Source, type SourceKey } from '../../calculators/sources.ts';
import { compared } from './published.ts';

/** One work of the bibliography and what it is relied on for. */
export interface Use {
  readonly key: SourceKey;
  readonly source: Source;
  /** Cards whose equation or method comes from it. */
  readonly cards: readonly { readonly id: string; readonly title: string }[];
  /** Materials with numbers from it. */
  readonly materials: readonly { readonly id: string; readonly name: string; readonly numbers: number }[];
  /** Figures printed in it that test a sum here. */
  readonly figures: number;
  readonly hows: readonly How[];
}

/** Every work with its uses in the library. Lessons, exercises and defects are the page's to add. */
export function librarySources(): Use[] {
  const cards = [...Object.values(formulas), ...Object.values(models)].map((card) => ({
    id: card.id,
    title: card.title,
    citations: [card.source, ...('alsoSee' in card ? (card.alsoSee ?? []) : [])] as Citation[],
  }));
  const numbers = Object.values(materials).map(({ id, name, properties }) => ({
    id,
    name,
    citations: Object.values(properties).flatMap((entries) => entries.map(({ source }) => source)),
  }));
  return (Object.keys(sources) as SourceKey[]).map((key) => {
    const of = (citations: readonly Citation[]) => citations.filter((citation) => citation.key === key);
    const tests = of(compared.map(({ source }) => source));
    const all = [...cards, ...numbers].flatMap(({ citations }) => of(citations)).concat(tests);
    return {
      key,
      source: sources[key],
      cards: cards
        .filter(({ citations }) => of(citations).length > 0)
        .map(({ id, title }) => ({ id, title })),
      materials: numbers
        .map(({ id, name, citations }) => ({ id, name, numbers: of(citations).length }))
        .filter((material) => material.numbers > 0),
      figures: tests.length,
      hows: [...new Set(all.map(({ how }) => how))],
    };
  });
}
