import { stem } from './words.ts';

/** Words that different shops use for one thing. A search for one also finds the others, a little lower. */
const groups: readonly string[] = [
  'riser feeder',
  'gate ingate',
  'weight mass heavy',
  'speed velocity fast',
  'vacuum suction suck',
  'span opening grid',
  'freeze solidify solidification frozen freezing set',
  'shrinkage contraction shrink',
  'temperature hot heat warm',
  'preheat warm',
  'size diameter dimension large',
  'melt melting molten',
  'capacity volume hold',
  'scrap returns stock revert',
  'fuel propane gas lpg',
  'burn scald',
  'smoke fume vapour',
  'fineness carat',
  'raise increase',
  'flask box ring',
  'buoyancy float lift',
  'crack tear',
  'hole cavity void',
  'web thin',
  'leak leakage',
  'investment plaster',
  'water moisture damp',
  'burnout dewax',
  'depth deep',
  'length far reach',
  'time long seconds minutes',
  'thickness thick',
  'vent venting',
  'detail sharp edge crisp',
  'porosity pores porous',
  'altitude elevation height',
  'safety danger hazard',
  'gloves clothing',
  'oxide dross skim',
];

const table = new Map<string, Set<string>>();
for (const group of groups) {
  const words = group.split(' ').map(stem);
  for (const word of words) {
    const others = table.get(word) ?? new Set();
    for (const other of words) if (other !== word) others.add(other);
    table.set(word, others);
  }
}

/** Other words for this stem, as stems. */
export function othersFor(word: string): readonly string[] {
  return [...(table.get(word) ?? [])];
}
