export {
  changeOfLever,
  waysToChange,
  whatWouldHaveToChange,
  type Change,
  type WhatChanges,
} from './change.ts';
export { readFragment, writeFragment } from './fragment.ts';
export {
  planFormat,
  planVersion,
  readPlanFile,
  writePlanFile,
  type PlanFile,
  type ReadPlan,
} from './plan-file.ts';
export { planSpread, type PlanSpread } from './spread.ts';
export { checkWritten, type Checked, type Written, type WrittenCell, type WrittenRow } from './written.ts';
