// Written by `npm run index` from the files beside it; change those and run it again.
import type { Formula } from '../core/formula.ts';

export const formulas: Readonly<Record<string, Formula>> = {};
