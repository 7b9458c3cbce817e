import { useEffect, useState } from 'preact/hooks';

/** How many of `all` to draw yet: some more each time the page has had its turn, so that hundreds do not hold it. */
export function useByAndBy(all: number, some: number, begun = true): number {
  const [shown, setShown] = useState(some);
  useEffect(() => {
    if (!begun || shown >= all) return undefined;
    const wait = setTimeout(() => setShown(shown + some));
    return () => clearTimeout(wait);
  }, [shown, all, begun]);
  return Math.min(shown, all);
}
