import { Hollow, Investment, Label, Metal, Rounds, Sand, Seam, type Drawing } from './drawing.tsx';

const slab = 'M14 38H146V88H14z';

export const pits: Readonly<Record<string, Drawing>> = {
  'slag-inclusion': {
    says: 'A glassy lump with sharp facets in the upper face, flat against the mould.',
    lines: (
      <>
        <Sand />
        <Metal d={slab} />
        <path class="other" d="M58 38H104L100 48L90 54L78 51L68 55L60 47z" />
        <Seam d="M72 38L78 51L86 38M90 54L92 40" />
      </>
    ),
  },
  'sand-inclusion': {
    says: 'A ragged pit in the upper face, with grains in it.',
    lines: (
      <>
        <Sand />
        <Metal d={slab} />
        <Hollow d="M56 37L60 45L57 52L66 56L72 63L82 60L92 62L94 54L103 50L100 43L105 37z" />
        <Rounds
          kind="other"
          at={[
            [64, 44, 3.4],
            [72, 41, 3],
            [70, 50, 3.6],
            [78, 47, 3.2],
            [77, 55, 3],
            [86, 42, 3.6],
            [86, 53, 3.6],
            [94, 46, 3.2],
          ]}
        />
      </>
    ),
  },
  'investment-inclusion': {
    says: 'White crumbs in a ragged pit, and extra metal where an edge of the mould is missing.',
    lines: (
      <>
        <Investment />
        <Metal d="M14 30H84L90 36L94 43L102 46V66H146V94H14z" />
        <Seam d="M84 30H102V46" dashed />
        <Hollow d="M36 94L38 84L34 78L44 72L54 74L64 72L66 80L72 86L68 94z" />
        <Investment d="M40 86L44 77L52 80L58 76L63 83L58 90L48 88z" />
        <Label x={130} y={44}>
          broke off
        </Label>
      </>
    ),
  },
  'cold-shot': {
    says: 'A ball of the same metal lies in a hollow that fits it, with a gap all round.',
    lines: (
      <>
        <Sand />
        <Metal d={slab} />
        <Rounds at={[[84, 70, 14]]} />
        <Rounds kind="solid" at={[[84.6, 71, 11.4]]} />
      </>
    ),
  },
};
