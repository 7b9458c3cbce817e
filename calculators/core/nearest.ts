/** Edit distance with neighbouring letters swapped counting as one (optimal string alignment). */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(row[j - 1]! + 1, rows[i - 1]![j]! + 1, rows[i - 1]![j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, rows[i - 2]![j - 2]! + 1);
      row.push(best);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** The candidates a mistyped name may have meant, nearest first; empty when nothing is near. */
export function nearest(typed: string, candidates: readonly string[], most = 3): string[] {
  const wanted = typed.toLowerCase();
  const score = (candidate: string): number => {
    const text = candidate.toLowerCase();
    const last = text.split('/').pop()!;
    const contains = wanted.length > 2 && text.includes(wanted) ? 0.5 : Number.POSITIVE_INFINITY;
    return Math.min(distance(wanted, text), distance(wanted, last), contains);
  };
  return candidates
    .map((candidate) => ({ candidate, score: score(candidate) }))
    .filter(({ score: s }) => s <= Math.max(1, typed.length / 3))
    .sort((a, b) => a.score - b.score)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** `; did you mean "x" or "y"?`, or nothing. */
export function didYouMean(typed: string, candidates: readonly string[]): string {
  const found = nearest(typed, candidates).map((candidate) => `"${candidate}"`);
  return found.length === 0 ? '' : `; did you mean ${found.join(' or ')}?`;
}
