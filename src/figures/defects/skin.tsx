import { Cavity, Hollow, Label, Metal, Rounds, Sand, type Drawing } from './drawing.tsx';

/** The grains of the face, large as under a lens. */
const faceGrains: readonly (readonly [number, number, number])[] = [14, 36, 58, 80, 102, 124, 146].map(
  (x, i) => [x, 50 + (i % 2) * 3, 11],
);
const deepGrains: readonly (readonly [number, number, number])[] = [3, 25, 47, 69, 91, 113, 135, 157].map(
  (x, i) => [x, 31 - (i % 2) * 2, 11],
);
const outerGrains: readonly (readonly [number, number, number])[] = [14, 36, 58, 80, 102, 124, 146].map(
  (x, i) => [x, 11 + (i % 2), 10],
);

/** Metal that follows the lower half of the grains of the face. */
const followed = `M0 55${faceGrains
  .map(([x, y, r]) => `L${x - r} ${y}A${r} ${r} 0 0 0 ${x + r} ${y}`)
  .join('')}L160 55V108H0z`;

export const skin: Readonly<Record<string, Drawing>> = {
  penetration: {
    says: 'Under a lens: metal fills the gaps between the grains and holds them fast, two grains deep.',
    lines: (
      <>
        <Metal d="M0 22H160V108H0z" />
        <Rounds at={faceGrains} />
        <Rounds at={deepGrains} />
        <Rounds kind="ink" at={outerGrains} />
        <Label x={80} y={90} metal>
          metal
        </Label>
      </>
    ),
  },
  'burn-on': {
    says: 'Under a lens: a layer of glass sticks to the skin. The metal below it is smooth and holds no grain.',
    lines: (
      <>
        <path class="other" d="M0 44L14 38L30 46L46 36L62 45L80 38L98 46L114 37L132 45L146 38L160 44V62H0z" />
        <Metal d="M0 62H160V108H0z" />
        <Rounds kind="ink" at={deepGrains.map(([x, y, r]) => [x, y - 4, r])} />
        <Label x={80} y={58} metal>
          glass
        </Label>
        <Label x={80} y={90} metal>
          metal
        </Label>
      </>
    ),
  },
  'rough-surface': {
    says: 'Under a lens: the skin is a print of the grains. They brush off, and none is held.',
    lines: (
      <>
        <Metal d={followed} />
        <Rounds kind="ink" at={faceGrains.map(([x, y, r]) => [x, y - 2.5, r])} />
        <Rounds kind="ink" at={deepGrains.map(([x, y, r]) => [x, y - 3, r])} />
        <Label x={80} y={90} metal>
          metal
        </Label>
      </>
    ),
  },
  'rounded-edge': {
    says: 'The mould has a sharp corner. The metal did not go into it, though the form is full.',
    lines: (
      <>
        <Sand />
        <Cavity d="M2 22H118V108H2z" />
        <Metal d="M2 22H88A30 30 0 0 1 118 52V108H2z" />
        <Label x={136} y={18}>
          edge
        </Label>
      </>
    ),
  },
  scab: {
    says: 'A rough plate of metal on the roof, with a sheet of sand shut in behind it.',
    lines: (
      <>
        <Sand />
        <Metal d="M14 44H46L48 34L56 30L74 32L92 28L108 33L110 44H146V90H14z" />
        <Hollow d="M56 44L58 39L76 41L92 38L102 40L103 44L90 47L72 46z" />
        <Sand d="M56 44L58 39L76 41L92 38L102 40L103 44L90 47L72 46z" />
      </>
    ),
  },
  buckle: {
    says: 'A groove like a V in the flat upper face, where the sand bent down. No metal got behind it.',
    lines: (
      <>
        <Sand />
        <Metal d="M14 44H66L82 64L90 44H146V90H14z" />
      </>
    ),
  },
  'rat-tail': {
    says: 'A shallow step in the lower face, hardly deeper than a hair.',
    lines: (
      <>
        <Sand />
        <Metal d="M14 30H146V76H86L81 72L80 78H14z" />
        <Label x={84} y={96}>
          lower face
        </Label>
      </>
    ),
  },
  'gypsum-breakdown': {
    says: 'A crust and pits on the heavy place. The thin wall beside it has a clean skin.',
    lines: (
      <>
        <Metal d="M10 60H62V24H126V92H62V74H10z" />
        <Hollow d="M74 23.5C74 30 82 30 82 23.5zM92 23.5C92 32 102 32 102 23.5zM110 23.5C110 29 117 29 117 23.5zM126.5 40C120 40 120 48 126.5 48zM126.5 60C118 60 118 70 126.5 70zM70 92.5C70 86 78 86 78 92.5zM90 92.5C90 84 100 84 100 92.5z" />
        <path class="other" d="M60 20L72 17L84 20L98 16L112 20L130 17V40L132 56L129 70L131 94H127V23H61z" />
        <Label x={94} y={62} metal>
          thick
        </Label>
        <Label x={34} y={52}>
          thin
        </Label>
      </>
    ),
  },
};
