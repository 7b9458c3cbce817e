/**
 * Calculations with fewer than two figures read at a source, and where was looked for them.
 * The evidence page prints these lines, and "not looked for yet" where there is none; a test says when a
 * line is no longer needed.
 */
export const looked: Readonly<Record<string, string>> = {
  // charge
  // pattern
  // sand
  // investment
  // freezing
  // filling
  // vacuum
  // feeding
  // melting
  // safety
  // inspection
  // the plan
};
