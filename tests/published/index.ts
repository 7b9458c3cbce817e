import type { PublishedCheck } from './check.ts';
import { feedingChecks } from './feeding.ts';
import { fillingChecks } from './filling.ts';
import { freezingChecks } from './freezing.ts';
import { sandChecks } from './sand.ts';

/** Every value of other people that the formulas are put to, chapter by chapter. */
export const allChecks: readonly PublishedCheck[] = [
  ...freezingChecks,
  ...fillingChecks,
  ...sandChecks,
  ...feedingChecks,
];
