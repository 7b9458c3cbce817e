import { kept, offered, scopeOf } from '../offline/keep.ts';

const lookedKey = 'warm-mould:looked';
const hour = 3_600_000;

/**
 * On a page served from the kept copy: once an hour looks whether the host has a newer one, and if so shows the
 * line that says it. Nothing is fetched and nothing changes until the reader wants it.
 */
export async function sayNewer(base: string, line: HTMLElement): Promise<void> {
  const scope = scopeOf(base);
  const here = await kept(scope);
  if (!here) return;
  const [at = '0', version = ''] = lastLook().split(' ');
  let known = version;
  if (Date.now() - Number(at) > hour) {
    const there = await offered(scope);
    if (!there) return;
    known = 'stop' in there ? '' : there.version;
    keepLook(`${Date.now()} ${known}`);
  }
  line.hidden = known === '' || known === here.list.version;
}

function lastLook(): string {
  try {
    return localStorage.getItem(lookedKey) ?? '';
  } catch {
    return '';
  }
}

function keepLook(text: string): void {
  try {
    localStorage.setItem(lookedKey, text);
  } catch {
    // On a full device it looks again on the next page.
  }
}
