import { alloyChecks, toleranceChecks } from './alloys.ts';
import { benchModelChecks } from './bench-models.ts';
import { flaskModelChecks } from './flask-models.ts';
import { frontChecks } from './front.ts';
import type { ModelCheck } from './model-check.ts';
import { pourModelChecks } from './pour-models.ts';
import { warmingChecks } from './warming.ts';

/** Every value of other people that the models are put to. */
export const modelChecks: readonly ModelCheck[] = [
  ...warmingChecks,
  ...alloyChecks,
  ...toleranceChecks,
  ...benchModelChecks,
  ...flaskModelChecks,
  ...frontChecks,
  ...pourModelChecks,
];
