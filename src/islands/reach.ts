import type { ClientDirective } from 'astro';

/**
 * Wakes an island when the reader reaches for it (focus, pointer, touch) or comes by a link that carries its
 * state, so that a card costs no script to read. What is typed or pressed while it wakes is done again
 * afterwards: nothing is lost on a slow line.
 */
const reach: ClientDirective = (load, _options, element) => {
  const signs = ['focusin', 'pointerenter', 'touchstart'] as const;
  let pressed: HTMLElement | undefined;
  const press = (event: Event): void => {
    if (event.target instanceof Element) pressed = event.target.closest('button') ?? undefined;
  };
  const wake = async (): Promise<void> => {
    for (const sign of signs) element.removeEventListener(sign, begin);
    removeEventListener('hashchange', linked);
    element.addEventListener('click', press);
    const hydrate = await load();
    const typed = [...element.querySelectorAll('input')]
      .filter((input) => input.value !== input.defaultValue)
      .map((input) => [input, input.value] as const);
    const chosen = [...element.querySelectorAll('select')].map((select) => [select, select.value] as const);
    await hydrate();
    element.removeEventListener('click', press);
    for (const [input, text] of typed) {
      input.value = text;
      input.dispatchEvent(new Event('input', { bubbles: true }));
    }
    for (const [select, value] of chosen) {
      if (select.value === value) continue;
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
    }
    pressed?.click();
  };
  const begin = (): void => void wake();
  const linked = (): void => {
    if (location.hash.includes('=')) begin();
  };
  for (const sign of signs) element.addEventListener(sign, begin, { passive: true });
  addEventListener('hashchange', linked);
  linked();
};

export default reach;
