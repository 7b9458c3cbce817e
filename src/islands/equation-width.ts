/**
 * Notes on each equation of a card how wide the widest part is that stands in one line, in its own letter size,
 * so that the print style can make it fit its card. The width in letters is the same on the screen and on paper.
 */
export function noteWidths(): void {
  for (const equation of document.querySelectorAll<HTMLElement>('.card-equation')) {
    const parts = [...equation.querySelectorAll('.katex-base')].map((part) => part.getBoundingClientRect());
    const width = Math.max(...parts.map((part) => part.width));
    const letter = Number.parseFloat(getComputedStyle(equation).fontSize);
    if (width > 0 && letter > 0) equation.style.setProperty('--wide', (width / letter).toFixed(2));
  }
}
