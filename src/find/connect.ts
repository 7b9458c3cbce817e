import type { Graph, Relation } from './graph.ts';

/** One formula of a chain: what it gives and from what. Quantities by their place in the graph. */
export interface Link {
  readonly relation: string;
  readonly title: string;
  readonly gives: number;
  readonly symbol: string;
  readonly from: readonly number[];
}

export interface Chain {
  readonly links: readonly Link[];
  /** Of what is known, what it uses. */
  readonly uses: readonly number[];
  /** Not known, but with a usual value to start from. */
  readonly usual: readonly number[];
  /** Not known: to be measured or looked up. */
  readonly lacking: readonly number[];
}

/** What it costs to go and look a number up, to take a usual one, and to work one out. */
const lookUp = 1.6;
const takeUsual = 0.5;
const workOut = 0.3;
/** A chain beyond this is a plan, not a sum. */
const longest = 4;

interface Way {
  readonly cost: number;
  /** By which formula; none when it is known or looked up. */
  readonly by?: Relation;
}

/**
 * Ways from what is known to what is wanted, the shortest first: each ends in another formula. A step may use
 * what an earlier step gave. Cheapest derivations over the and-or graph (Knuth's generalisation of Dijkstra's
 * method, Information Processing Letters 6, 1977).
 */
export function connect(
  graph: Graph,
  known: ReadonlySet<number>,
  wanted: number,
  limit = 8,
): readonly Chain[] {
  if (known.has(wanted)) return [];
  const ways = cheapest(graph, known, wanted);
  const chains: (Chain & { readonly cost: number })[] = [];
  for (const relation of graph.relations) {
    const end = relation.parts.find(({ quantity, found }) => quantity === wanted && found);
    if (!end || relation.parts.filter(({ quantity }) => quantity === wanted).length > 1) continue;
    const chain = unwind(ways, known, relation, wanted);
    if (!chain || chain.links.length > longest || chain.uses.length === 0) continue;
    const cost =
      workOut * chain.links.length +
      takeUsual * chain.usual.length +
      lookUp * chain.lacking.length -
      0.5 * chain.uses.length;
    chains.push({ ...chain, cost });
  }
  return chains
    .sort((a, b) => a.cost - b.cost || a.links.length - b.links.length)
    .slice(0, limit)
    .map(({ links, uses, usual, lacking }) => ({ links, uses, usual, lacking }));
}

/** The cheapest way to each quantity without going through what is wanted. */
function cheapest(
  { quantities, relations }: Graph,
  known: ReadonlySet<number>,
  wanted: number,
): readonly Way[] {
  const usual = new Set(
    relations.flatMap(({ parts }) => parts.flatMap((part) => (part.usual ? [part.quantity] : []))),
  );
  const ways: Way[] = quantities.map((_, at) => ({
    cost: known.has(at) ? 0 : at === wanted ? Infinity : usual.has(at) ? takeUsual : lookUp,
  }));
  const settled = new Set<number>();
  for (;;) {
    let next = -1;
    ways.forEach(({ cost }, at) => {
      if (!settled.has(at) && cost < (ways[next]?.cost ?? Infinity)) next = at;
    });
    if (next < 0) return ways;
    settled.add(next);
    for (const relation of relations) {
      if (!relation.parts.some(({ quantity }) => quantity === next)) continue;
      for (const part of relation.parts) {
        const at = part.quantity;
        if (!part.found || settled.has(at) || at === wanted) continue;
        const others = relation.parts.filter(({ quantity }) => quantity !== at);
        if (
          others.length === relation.parts.length - 1 &&
          others.every(({ quantity }) => settled.has(quantity))
        ) {
          const cost = workOut + others.reduce((sum, { quantity }) => sum + ways[quantity]!.cost, 0);
          if (cost < ways[at]!.cost) ways[at] = { cost, by: relation };
        }
      }
    }
  }
}

/** The chain that ends in this formula, each link after those it needs; undefined when it bites its own tail. */
function unwind(
  ways: readonly Way[],
  known: ReadonlySet<number>,
  last: Relation,
  wanted: number,
): Chain | undefined {
  const links: Link[] = [];
  const done = new Set<number>();
  const uses = new Set<number>();
  const usual = new Set<number>();
  const lacking = new Set<number>();
  const put = (relation: Relation, gives: number, above: readonly Relation[]): boolean => {
    if (above.includes(relation) || links.some((link) => link.relation === relation.id)) return false;
    const others = relation.parts.filter(({ quantity }) => quantity !== gives);
    for (const { quantity } of others) {
      const by = ways[quantity]!.by;
      if (known.has(quantity)) uses.add(quantity);
      else if (quantity === wanted) return false;
      else if (!by) (ways[quantity]!.cost < lookUp ? usual : lacking).add(quantity);
      else if (!done.has(quantity) && !put(by, quantity, [...above, relation])) return false;
    }
    done.add(gives);
    links.push({
      relation: relation.id,
      title: relation.title,
      gives,
      symbol: relation.parts.find(({ quantity }) => quantity === gives)!.symbol,
      from: others.map(({ quantity }) => quantity),
    });
    return true;
  };
  if (!put(last, wanted, [])) return undefined;
  return { links, uses: [...uses], usual: [...usual], lacking: [...lacking] };
}
