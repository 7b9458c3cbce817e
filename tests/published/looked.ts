/**
 * Calculations with fewer than two figures read at a source, and where was looked for them.
 * The evidence page prints these lines, and "not looked for yet" where there is none; a test says when a
 * line is no longer needed.
 */
export const looked: Readonly<Record<string, string>> = {
  // charge
  'charge/deoxidiser':
    'Foundry handbooks and course notes: doses are given as a share of the melt, never worked with a recovery. One dose of another trade is read.',
  // pattern
  // sand
  'sand/grain-fineness':
    'Laboratory reports, papers on river sands and data sheets of silica sand print a number without the masses on the sieves. The one sheet with its masses counts 145 for sieve 200 where the handbook has 140, and so comes to another number.',
  // investment
  'investment/schedule':
    'Makers’ sheets in public copies: the usual holds were taken from them, so they are no outside check of it.',
  'investment/time-budget':
    'Textbooks of planning: adding up minutes is all there is to check, and a sum is no check.',
  // freezing
  // filling
  // vacuum
  // feeding
  // melting
  // safety
  // inspection
  'inspection/compare':
    'Proficiency-test examples and a statistics handbook: a second one gives its deviation only in data that was recalled, so it stands among the recalled.',
  // the plan
};
