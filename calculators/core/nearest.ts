/** A name longer than this was not mistyped. */
const longest = 100;

/**
 * Edit distance with neighbouring letters swapped counting as one (optimal string alignment), or infinity as
 * soon as it must be above `most`.
 */
function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return Number.POSITIVE_INFINITY;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(row[j - 1]! + 1, above[j]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
      if (best < least) least = best;
    }
    // A swap reaches back two rows, so one row past the bound decides nothing yet; it costs one all the same.
    if (least > most + 1) return Number.POSITIVE_INFINITY;
    before = above;
    above = row;
  }
  return above[b.length]!;
}

/** The candidates a mistyped name may have meant, nearest first; empty when nothing is near. */
export function nearest(typed: string, candidates: readonly string[], most = 3): string[] {
  const wanted = typed.toLowerCase();
  if (wanted.length > longest) return [];
  const bound = Math.max(1, typed.length / 3);
  return candidates
    .map((candidate) => {
      const text = candidate.toLowerCase();
      const last = text.slice(text.lastIndexOf('/') + 1);
      const contains = wanted.length > 2 && text.includes(wanted) ? 0.5 : Number.POSITIVE_INFINITY;
      const whole = distance(wanted, text, bound);
      return {
        candidate,
        score: Math.min(whole, last === text ? whole : distance(wanted, last, bound), contains),
      };
    })
    .filter(({ score }) => score <= bound)
    .sort((a, b) => a.score - b.score)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** `; did you mean "x" or "y"?`, or nothing. */
export function didYouMean(typed: string, candidates: readonly string[]): string {
  const found = nearest(typed, candidates).map((candidate) => `"${candidate}"`);
  return found.length === 0 ? '' : `; did you mean ${found.join(' or ')}?`;
}
