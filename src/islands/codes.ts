/** Draws the square code of every picture that waits for one: the address it names, on the host the page is on. */
export async function fillCodes(which: string): Promise<void> {
  const waiting = [...document.querySelectorAll<HTMLImageElement>(which)].filter(({ src }) => src === '');
  if (waiting.length === 0) return;
  const { renderSVG } = await import('uqr');
  let from = performance.now();
  for (const picture of waiting) {
    // A page of all cards has well over a hundred: the reader scrolls meanwhile.
    if (performance.now() - from > 8) {
      await new Promise((done) => setTimeout(done));
      from = performance.now();
    }
    const link = new URL(picture.dataset['code'] ?? '', location.href).href;
    picture.src = `data:image/svg+xml,${encodeURIComponent(renderSVG(link, { border: 1 }))}`;
    picture.alt = `Square code of ${link}`;
  }
  await Promise.all(waiting.map((picture) => picture.decode().catch(() => undefined)));
}

/** Draws the square code of the page with the numbers that stand on it, and again before it is printed. */
export async function keepCode(picture: HTMLImageElement): Promise<void> {
  const { renderSVG } = await import('uqr');
  const draw = (): void => {
    picture.src = `data:image/svg+xml,${encodeURIComponent(renderSVG(location.href, { border: 1 }))}`;
    picture.alt = `Square code of ${location.href}`;
  };
  draw();
  addEventListener('beforeprint', draw);
  addEventListener('hashchange', draw);
}
