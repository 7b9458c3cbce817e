/** The state in a fragment that belongs to this calculator; undefined for an anchor or another calculator's. */
export function fromFragment(hash: string, id: string): Readonly<Record<string, string>> | undefined {
  const text = hash.replace(/^#/, '');
  if (!text.startsWith(`${id}:`) || !text.includes('=')) return undefined;
  const found: Record<string, string> = {};
  for (const part of text.slice(id.length + 1).split('&')) {
    const at = part.indexOf('=');
    if (at < 1) continue;
    try {
      found[part.slice(0, at)] = decodeURIComponent(part.slice(at + 1));
    } catch {
      // A mangled part of a link is left out; the field keeps its example.
    }
  }
  return found;
}
