import type { Drawing } from './drawing.tsx';
import { extra } from './extra.tsx';
import { holes } from './holes.tsx';
import { metalItself } from './metal.tsx';
import { missing } from './missing.tsx';
import { pits } from './pits.tsx';
import { seams } from './seams.tsx';
import { shape } from './shape.tsx';
import { skin } from './skin.tsx';

/** By the defect's file name. */
export const defectDrawings: Readonly<Record<string, Drawing>> = {
  ...holes,
  ...pits,
  ...seams,
  ...missing,
  ...extra,
  ...skin,
  ...shape,
  ...metalItself,
};
