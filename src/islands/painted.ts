import type { ClientDirective } from 'astro';

/** Wakes an island once a frame of the page has been drawn, so that its script is not fetched before the text stands. */
const painted: ClientDirective = (load) => {
  const wake = async (): Promise<void> => {
    const hydrate = await load();
    await hydrate();
  };
  // What is asked for before a frame comes before it is drawn; what waits behind that comes after.
  requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => void wake(), 0)));
};

export default painted;
