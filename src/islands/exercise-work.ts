/** What an exercise needs once somebody works on it: loaded on the first press, not with the page. */
export { markDesign } from '../../calculators/exercises/design.ts';
export { markChoice, markNumber, markOrder, markSteps } from '../../calculators/exercises/marking.ts';
export { drawVariant } from '../../calculators/exercises/variants.ts';
export { workedOf } from '../../calculators/exercises/worked.ts';
export { libraryFor } from '../workers/library.ts';
