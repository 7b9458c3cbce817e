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
    'Laboratory reports, papers on river sands and data sheets of silica sand print a number without the masses on the sieves. The one sheet with its masses counts 145 for sieve 200 where the handbook has 140, and so comes to another number.',
  // investment
  'investment/schedule':
    'Makers’ sheets in public copies: the usual holds were taken from them, so they are no outside check of it.',
  'investment/time-budget':
    'Textbooks of planning: adding up minutes is all there is to check, and a sum is no check.',
  // freezing
  // filling
  'filling/effective-head':
    'Course notes on gating state the rule without a worked head. A gate in the middle is worked by hand on its card.',
  'filling/flow-length':
    'It is flow time by speed. The time has its figures; a length of run printed with every number it takes was not found.',
  'filling/flow-length-sand':
    'It is freezing time in sand by speed. The time has its figures; a length of run printed with every number it takes was not found.',
  // vacuum
  // feeding
  'feeding/chill':
    'Papers and handbooks on chills give the factor by which a face counts, and no casting worked through with it.',
  'feeding/distance':
    'Guidelines and papers of steel founders, exam papers and lecture notes: what could be read gives the rule or begins with newer ones, never a plate with its length. One plate is recalled.',
  'feeding/distance-bar':
    'Guidelines and papers of steel founders, exam papers and lecture notes: what could be read never works a bar.',
  'feeding/freezing-ratio':
    'Exam papers, question pages, course notes in English and Spanish and a university chapter on feeders: the hyperbola is named and its ratio defined, but a worked figure is given for none of its constants that could be read.',
  'feeding/gradient':
    'Papers on steel castings and on their centre-line pores: critical values are given, the gradient and the cooling rate behind one of them are not.',
  // melting
  // safety
  // inspection
  'inspection/compare':
    'Proficiency-test examples and a statistics handbook: a second one gives its deviation only in data that was recalled, so it stands among the recalled.',
  // the plan
};
