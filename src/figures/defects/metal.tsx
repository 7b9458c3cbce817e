import { Hollow, Label, Metal, Seam, type Drawing } from './drawing.tsx';

export const metalItself: Readonly<Record<string, Drawing>> = {
  'coarse-grain': {
    says: 'A broken face: large crystals with flat facets on the left, and the fine even grain that is wanted on the right.',
    lines: (
      <>
        <Metal d="M10 22H74V88H10zM86 22H150V88H86z" />
        <Seam d="M10 42L30 36L46 22M30 36L38 58L10 66M38 58L60 52L74 34M60 52L66 72L74 74M66 72L50 88M38 58L34 78L20 88M34 78L50 88" />
        <Seam d="M90 28h3M98 26h3M106 29h3M114 26h3M122 28h3M130 26h3M140 28h3M92 38h3M102 36h3M110 39h3M119 36h3M128 39h3M137 37h3M145 40h3M89 48h3M97 46h3M106 49h3M115 46h3M124 49h3M133 47h3M142 49h3M92 58h3M101 56h3M110 59h3M119 57h3M128 59h3M138 57h3M90 68h3M98 66h3M107 69h3M116 66h3M125 69h3M134 67h3M143 69h3M93 78h3M103 77h3M112 80h3M121 77h3M131 80h3M140 78h3" />
        <Label x={42} y={102}>
          coarse
        </Label>
        <Label x={118} y={102}>
          fine
        </Label>
      </>
    ),
  },
  'hard-spots': {
    says: 'A filed face: small hard grains stand proud of it, and others lie deep inside.',
    lines: (
      <>
        <Metal d="M10 44C22 42 28 46 38 45L40 38L46 37L49 45C60 48 70 44 84 45L86 40L93 41L94 45C108 47 114 44 122 45L124 39L129 39L131 45C140 46 144 44 150 44V92H10z" />
        <Hollow d="M39.5 44L41.5 39.5L45.5 38.5L48 45L44 49zM85 46L87.5 41.5L92 42.5L93 47L89 50zM123 46L125 40.5L128.5 40.5L130 46L127 49zM60 68l4-3 4 3-2 5-5-1zM104 76l5-2 2 4-4 3zM30 80l4-3 3 4-4 3z" />
      </>
    ),
  },
};
