import { useEffect, useState } from 'preact/hooks';
import type { Graph } from '../find/graph.ts';
import { toFragment, type Entry } from './entries.ts';

export interface CarryProps {
  readonly base: string;
  /** The formula the numbers come from. */
  readonly id: string;
  /** Its symbols with what stands in them, the answer among them. */
  readonly entries: Readonly<Record<string, Entry>>;
}

interface Way {
  readonly id: string;
  readonly title: string;
  readonly carries: number;
  readonly link: string;
}

/** Cards that use the answer or the other numbers of this one, the one that takes most of them first. */
export function Carry({ base, id, entries }: CarryProps) {
  const [graph, setGraph] = useState<Graph>();
  const [trouble, setTrouble] = useState(false);
  useEffect(() => {
    fetch(`${base}connect.json`)
      .then((answer) => answer.json())
      .then((fetched: Graph) => setGraph(fetched))
      .catch(() => setTrouble(true));
  }, []);
  if (trouble) return <p>The list could not be fetched. Open this again when there is a connection.</p>;
  if (!graph) return <p>Fetching the list.</p>;
  const ways = waysFrom(graph, id, entries, base);
  if (ways.length === 0) return <p>No other card uses these quantities.</p>;
  return (
    <ul>
      {ways.map(({ id: to, title, carries, link }) => (
        <li key={to}>
          <a href={link}>{title}</a> takes {carries === 1 ? 'one number' : `${carries} numbers`} with it
        </li>
      ))}
    </ul>
  );
}

/** Links that open another card with every number the two have in common. Pure, so that it can be tested. */
export function waysFrom(
  graph: Graph,
  id: string,
  entries: Readonly<Record<string, Entry>>,
  base: string,
): readonly Way[] {
  const from = graph.relations.find((relation) => relation.id === id);
  if (!from) return [];
  const held = new Map(
    from.parts.flatMap(({ quantity, symbol }) => {
      const entry = entries[symbol];
      return entry ? [[quantity, entry] as const] : [];
    }),
  );
  return graph.relations
    .flatMap((relation): Way[] => {
      if (relation.id === id) return [];
      const shared = relation.parts.filter(({ quantity }) => held.has(quantity));
      const find = relation.parts.find(({ quantity, found }) => found && !held.has(quantity));
      if (shared.length === 0 || !find) return [];
      const carried = Object.fromEntries(shared.map(({ quantity, symbol }) => [symbol, held.get(quantity)!]));
      return [
        {
          id: relation.id,
          title: relation.title,
          carries: shared.length,
          link: `${base}formulas/${relation.id}/#${toFragment(relation.id, find.symbol, carried)}`,
        },
      ];
    })
    .sort((a, b) => b.carries - a.carries || (a.title < b.title ? -1 : 1))
    .slice(0, 12);
}
