/** What came of reading something from outside. The reason is a sentence. */
export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

export interface Limits {
  readonly characters: number;
  readonly depth: number;
}

const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/** JSON from anybody: no larger and no deeper than allowed, and no key that reaches behind an object. Never throws. */
export function parseUntrusted(text: string, { characters, depth }: Limits): Read<unknown> {
  const no = (reason: string): Read<unknown> => ({ ok: false, reason });
  if (text.length > characters) return no('It is far larger than such a file can be.');
  const source = text.replace(/^\uFEFF/, '');
  if (depthOf(source) > depth) return no('It is nested deeper than such a file can be.');
  let data: unknown;
  try {
    data = JSON.parse(source);
  } catch {
    return no('It cannot be read: it was cut short or damaged on its way.');
  }
  return hasForbidden(data)
    ? no('It holds a name that no such file has, so it was not made by these pages.')
    : { ok: true, value: data };
}

/** How many brackets are open at once, strings left out; counted before anything is parsed. */
function depthOf(text: string): number {
  let open = 0;
  let most = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (quoted) {
      if (code === 0x5c) at += 1;
      else if (code === 0x22) quoted = false;
    } else if (code === 0x22) quoted = true;
    else if (code === 0x7b || code === 0x5b) most = Math.max(most, (open += 1));
    else if (code === 0x7d || code === 0x5d) open -= 1;
  }
  return most;
}

function hasForbidden(data: unknown): boolean {
  if (typeof data !== 'object' || data === null) return false;
  if (Array.isArray(data)) return data.some(hasForbidden);
  return Object.entries(data).some(([key, value]) => forbidden.has(key) || hasForbidden(value));
}
