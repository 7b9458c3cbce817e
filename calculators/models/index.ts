// Written by `npm run index` from the files beside it; change those and run it again.
import type { Model } from '../core/model.ts';

export const models: Readonly<Record<string, Model>> = {};
