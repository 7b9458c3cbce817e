import { Hollow, Ink, Label, Metal, Sand, Seam, type Drawing } from './drawing.tsx';

export const shape: Readonly<Record<string, Drawing>> = {
  shift: {
    says: 'The upper half is moved against the lower one: a step at the joint on both sides.',
    lines: (
      <>
        <Sand />
        <Metal d="M50 22H122V56H112V90H40V56H50z" />
        <Ink d="M2 56H40M122 56H158" />
        <Label x={142} y={48}>
          joint
        </Label>
      </>
    ),
  },
  'core-shift': {
    says: 'The outside is right. The hole has floated up, and the wall is thin above and thick below.',
    lines: (
      <>
        <Sand />
        <Metal d="M80 12A43 43 0 0 1 80 98A43 43 0 0 1 80 12z" />
        <Hollow d="M80 18A25 25 0 0 1 80 68A25 25 0 0 1 80 18z" />
        <Sand d="M80 18A25 25 0 0 1 80 68A25 25 0 0 1 80 18z" />
        <Seam d="M80 30A25 25 0 0 1 80 80A25 25 0 0 1 80 30" dashed />
        <Label x={80} y={45}>
          core
        </Label>
      </>
    ),
  },
  warp: {
    says: 'The part is bent and rocks on a flat plate. Its thickness is the same everywhere.',
    lines: (
      <>
        <Metal d="M12 50C50 84 110 84 148 50L154 56C114 94 46 94 6 56z" />
        <Ink d="M2 84.5H158" />
        <Label x={132} y={100}>
          flat plate
        </Label>
      </>
    ),
  },
  'wrong-size': {
    says: 'Casting and the size wanted (broken line): the long one is off by much, the short one by little, by the same share.',
    lines: (
      <>
        <Metal d="M14 24H128V44H14z" />
        <Metal d="M14 68H52V88H14z" />
        <Ink d="M14 24H146V44H14z" dashed />
        <Ink d="M14 68H58V88H14z" dashed />
      </>
    ),
  },
  'over-rapped': {
    says: 'Casting and the size wanted (broken line): long and short are larger by the same amount.',
    lines: (
      <>
        <Metal d="M10 20H140V48H10z" />
        <Metal d="M10 66H66V92H10z" />
        <Seam d="M15 25H135V43H15z" dashed />
        <Seam d="M15 71H61V87H15z" dashed />
      </>
    ),
  },
};
