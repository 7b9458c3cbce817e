/**
 * Notes on each equation of a card how wide it is, in its own letter size, so that the print style can make one
 * fit that is wider than its card: of one that may go on in the next line, how wide the widest part that may not.
 * The width in letters is the same on the screen and on paper.
 */
export function noteWidths(): void {
  // All are measured before the first is noted, or each would have the page laid out anew.
  const noted = [...document.querySelectorAll<HTMLElement>('.card-equation')].map((equation) => {
    const parts = [...equation.querySelectorAll('.katex-base')].map((part) => part.getBoundingClientRect());
    const whole = Math.max(...parts.map(({ right }) => right)) - Math.min(...parts.map(({ left }) => left));
    const breaks = equation.classList.contains('breaks');
    const width = breaks ? Math.max(...parts.map((part) => part.width)) : whole;
    const letter = Number.parseFloat(getComputedStyle(equation).fontSize);
    return { equation, letters: width / letter };
  });
  for (const { equation, letters } of noted)
    if (letters > 0 && Number.isFinite(letters)) equation.style.setProperty('--wide', letters.toFixed(2));
}
