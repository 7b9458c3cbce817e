const prefix = 'warm-mould:card:';
const largeKey = 'warm-mould:large';
/** Cards whose numbers are kept; the one unused longest goes first. */
const most = 80;

/** The last numbers put into a card, as the fragment of a link. */
export function lastNumbers(id: string): string | undefined {
  try {
    const kept = localStorage.getItem(prefix + id);
    return kept === null ? undefined : kept.slice(kept.indexOf(' ') + 1);
  } catch {
    return undefined;
  }
}

export function keepNumbers(id: string, fragment: string): void {
  try {
    localStorage.setItem(prefix + id, `${Date.now()} ${fragment}`);
    const keys = Array.from({ length: localStorage.length }, (_, at) => localStorage.key(at) ?? '').filter(
      (one) => one.startsWith(prefix),
    );
    if (keys.length <= most) return;
    const age = (one: string): number => Number.parseInt(localStorage.getItem(one) ?? '0', 10);
    keys.sort((a, b) => age(a) - age(b));
    for (const old of keys.slice(0, keys.length - most)) localStorage.removeItem(old);
  } catch {
    // A full or missing store loses a convenience, not the work on the page.
  }
}

export function forgetNumbers(id: string): void {
  try {
    localStorage.removeItem(prefix + id);
  } catch {
    // Nothing was kept.
  }
}

export function isLarge(): boolean {
  try {
    return localStorage.getItem(largeKey) === 'on';
  } catch {
    return false;
  }
}

export function keepLarge(large: boolean): void {
  try {
    if (large) localStorage.setItem(largeKey, 'on');
    else localStorage.removeItem(largeKey);
  } catch {
    // Without storage it lasts as long as the page.
  }
}
