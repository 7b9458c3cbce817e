import { Hollow, Label, Metal, Sand, Seam, type Drawing } from './drawing.tsx';

export const seams: Readonly<Record<string, Drawing>> = {
  'cold-shut': {
    says: 'Two streams met. Their lips are round, and the seam goes through from face to face.',
    lines: (
      <>
        <Sand />
        <Metal d="M12 40H68C75 40 79 45 80 52C81 45 85 40 92 40H148V80H92C85 80 81 75 80 68C79 75 75 80 68 80H12z" />
        <Hollow d="M70 39.5C76 41 79 46 80 54C81 46 84 41 90 39.5zM70 80.5C76 79 79 74 80 66C81 74 84 79 90 80.5z" />
        <Seam d="M80 50V70" />
        <Label x={40} y={63} metal>
          →
        </Label>
        <Label x={120} y={63} metal>
          ←
        </Label>
      </>
    ),
  },
  'hot-tear': {
    says: 'A ragged crack starts at the hot inside corner, where a thin web joins a thick frame.',
    lines: (
      <>
        <Sand />
        <Metal d="M20 14H72V52H150V66H72V98H20z" />
        <Hollow d="M73 51L68 55L70 58L64 60L67 64L60 66L62 70L55 75L59 69L57 66L63 63L60 59L66 57L65 53L70 50z" />
        <Label x={46} y={40} metal>
          frame
        </Label>
        <Label x={118} y={46}>
          web
        </Label>
      </>
    ),
  },
  'cold-crack': {
    says: 'A clean, straight line with faces that fit, right across thick and thin.',
    lines: (
      <>
        <Metal d="M10 48H58V26H110V48H150V64H110V86H58V64H10z" />
        <Hollow d="M66 25L98 87L100 87L67.6 25z" />
      </>
    ),
  },
  'oxide-fold': {
    says: 'A dull skin folded into the metal. It starts at a crease in the surface and has nothing to do with where streams met.',
    lines: (
      <>
        <Sand />
        <Metal d="M12 36H58C62 36 63 40 65 40S68 36 72 36H148V88H12z" />
        <Seam d="M65 40C67 52 90 48 92 56S66 60 68 68S98 66 102 76" />
        <Seam d="M67 40C70 49 93 45 95 55S70 61 71 67S100 63 104 75" />
      </>
    ),
  },
};
