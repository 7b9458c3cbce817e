// Written by `npm run index` from the files beside it; change those and run it again.
import type { Material } from '../core/material.ts';

export const materials: Readonly<Record<string, Material>> = {};
