import type { ClientDirective } from 'astro';

/** Inputs and lists whose value is not the one they came with, and that value. */
function altered(element: Element): readonly (readonly [HTMLInputElement | HTMLSelectElement, string])[] {
  const inputs = [...element.querySelectorAll('input')].filter(
    ({ value, defaultValue }) => value !== defaultValue,
  );
  const lists = [...element.querySelectorAll('select')].filter(
    (list) => list.selectedOptions[0]?.defaultSelected === false,
  );
  return [...inputs, ...lists].map((field) => [field, field.value] as const);
}

/** Whether the reader has numbers, units or a size of their own here, which the page as built does not show. */
function hasHabit(element: Element): boolean {
  if (!element.querySelector('.calculator, .model-card')) return false;
  const card = element.querySelector('[data-card]')?.getAttribute('data-card') ?? '';
  try {
    return ['units', 'large', `card:${card}`].some(
      (name) => localStorage.getItem(`warm-mould:${name}`) !== null,
    );
  } catch {
    return false;
  }
}

/**
 * Wakes an island when the reader reaches for it (focus, pointer, touch) or comes by a link that carries its
 * state, so that a card costs no script to read; with `visible`, when it comes into view. What is typed,
 * chosen, pressed or handed in while it sleeps or wakes is done again afterwards: nothing is lost on a slow line.
 */
const reach: ClientDirective = (load, { value: when }, element) => {
  const signs = ['focusin', 'pointerenter', 'touchstart'] as const;
  let last: (() => void) | undefined;
  let woken = false;
  const press = ({ target }: Event): void => {
    const button = target instanceof Element ? target.closest('button') : null;
    if (button && button.type !== 'submit') last = () => button.click();
  };
  const handIn = (event: Event): void => {
    const form = event.target;
    if (!(form instanceof HTMLFormElement)) return;
    event.preventDefault();
    last = () => form.requestSubmit();
  };
  const touched = new Set<EventTarget>();
  const touch = ({ target }: Event): void => {
    if (!target) return;
    touched.delete(target);
    touched.add(target);
  };
  const wake = async (): Promise<void> => {
    if (woken) return;
    woken = true;
    const hydrate = await load();
    const order = [...touched];
    // In the order of the reader's hand: a unit chosen before a number must not be put over it.
    const fields = [...altered(element)].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
    element.removeEventListener('click', press);
    element.removeEventListener('submit', handIn);
    for (const sign of ['input', 'change']) element.removeEventListener(sign, touch);
    await hydrate();
    for (const [field, value] of fields) {
      field.value = value;
      field.dispatchEvent(
        new Event(field instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
      );
      // The next one builds on the state this one leaves, so the island has to have taken it.
      await new Promise((taken) => setTimeout(taken, 0));
    }
    // What was typed has to reach the island's state before it is handed in.
    if (last) setTimeout(last, 0);
  };
  const begin = (): void => void wake();
  element.addEventListener('click', press);
  element.addEventListener('submit', handIn);
  for (const sign of ['input', 'change']) element.addEventListener(sign, touch);
  for (const sign of signs) element.addEventListener(sign, begin, { passive: true, once: true });
  if (when === 'visible') {
    const seen = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      seen.disconnect();
      begin();
    });
    for (const child of element.children) seen.observe(child);
    return;
  }
  const linked = (): void => {
    if (location.hash.includes('=') || hasHabit(element)) begin();
  };
  addEventListener('hashchange', linked);
  linked();
};

export default reach;
