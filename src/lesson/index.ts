/** The words a lesson may use. Each checks what it is given and stops the build with a sentence. */
export { default as Calculator } from './Calculator.astro';
export { default as Cite } from './Cite.astro';
export { default as Curve } from './Curve.astro';
export { default as Defects } from './Defects.astro';
export { default as Exercise } from './Exercise.astro';
export { default as Figure } from './Figure.astro';
export { default as Formula } from './Formula.astro';
export { default as Note } from './Note.astro';
export { default as Predict } from './Predict.astro';
export { default as Safety } from './Safety.astro';
export { default as ShopFloor } from './ShopFloor.astro';
export { default as Steps } from './Steps.astro';
export { default as Symbol } from './Symbol.astro';
export { default as Table } from './Table.astro';
export { default as Term } from './Term.astro';
export { default as Value } from './Value.astro';
export { default as Worked } from './Worked.astro';
