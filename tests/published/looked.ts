/**
 * Calculations with fewer than two figures read at a source, and where was looked for them.
 * The evidence page prints these lines, and "not looked for yet" where there is none; a test says when a
 * line is no longer needed.
 */
export const looked: Readonly<Record<string, string>> = {
  // charge
  // pattern
  // sand
  'sand/grain-fineness':
    'One laboratory sheet was read with its masses. Laboratory reports, journal papers on river sands and data sheets of silica sand print a number without the masses on the sieves, or break off before the table.',
  // investment
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
