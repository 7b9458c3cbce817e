// Written by `npm run index` from the files beside it; change those and run it again.
import type { Model } from '../core/model.ts';
import { primitives as patternPrimitives } from './primitives.ts';
import { pourPlan } from './pour-plan.ts';

export const models: Readonly<Record<string, Model>> = {
  'pattern/primitives': patternPrimitives,
  'pour-plan': pourPlan,
};
