import { useEffect, useRef } from 'preact/hooks';

const longestPause = 300;

/** Seconds spent in each question while the page is looked at; a pause of more than five minutes counts as five. */
export function useClock(add: (id: string, seconds: number) => void): (id: string | undefined) => void {
  const now = useRef<{ id: string; since: number } | undefined>(undefined);
  const latest = useRef(add);
  latest.current = add;
  const turn = useRef((id: string | undefined): void => {
    const before = now.current;
    if (before && before.id === id) return;
    if (before) {
      const seconds = Math.round(Math.min(longestPause, (performance.now() - before.since) / 1000));
      if (seconds > 0) latest.current(before.id, seconds);
    }
    now.current = id === undefined ? undefined : { id, since: performance.now() };
  });
  useEffect(() => {
    const hidden = (): void => {
      if (document.visibilityState === 'hidden') turn.current(undefined);
    };
    document.addEventListener('visibilitychange', hidden);
    return () => document.removeEventListener('visibilitychange', hidden);
  }, []);
  return turn.current;
}
