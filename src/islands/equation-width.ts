/**
 * Notes on each equation of a card how wide it is, in its own letter size, so that the print style can make one
 * fit that is wider than its card: of one that may go on in the next line, how wide the widest part that may not.
 * The width in letters is the same on the screen and on paper.
 */
export function noteWidths(): void {
  for (const equation of document.querySelectorAll<HTMLElement>('.card-equation')) {
    const parts = [...equation.querySelectorAll('.katex-base')].map((part) => part.getBoundingClientRect());
    const whole = Math.max(...parts.map(({ right }) => right)) - Math.min(...parts.map(({ left }) => left));
    const breaks = equation.classList.contains('breaks');
    const width = breaks ? Math.max(...parts.map((part) => part.width)) : whole;
    const letter = Number.parseFloat(getComputedStyle(equation).fontSize);
    if (width > 0 && letter > 0) equation.style.setProperty('--wide', (width / letter).toFixed(2));
  }
}
