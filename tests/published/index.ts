import { chargeChecks } from './charge.ts';
import type { PublishedCheck } from './check.ts';
import { feedingChecks } from './feeding.ts';
import { fillingChecks } from './filling.ts';
import { freezingChecks } from './freezing.ts';
import { inspectionChecks } from './inspection.ts';
import { investmentChecks } from './investment.ts';
import { meltingChecks } from './melting.ts';
import { patternChecks } from './pattern.ts';
import { safetyChecks } from './safety.ts';
import { sandChecks } from './sand.ts';
import { vacuumChecks } from './vacuum.ts';

/** Every value of other people that the formulas are put to, chapter by chapter. */
export const allChecks: readonly PublishedCheck[] = [
  ...freezingChecks,
  ...fillingChecks,
  ...sandChecks,
  ...feedingChecks,
  ...chargeChecks,
  ...patternChecks,
  ...vacuumChecks,
  ...meltingChecks,
  ...safetyChecks,
  ...inspectionChecks,
  ...investmentChecks,
];
