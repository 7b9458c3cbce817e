import { Cavity, Hollow, Label, Metal, Rounds, Sand, Seam, type Drawing } from './drawing.tsx';

const slab = 'M14 38H146V84H14z';
/** A thin wall with a thick boss in the middle. */
const boss = 'M12 48H56V28H104V48H148V62H104V82H56V62H12z';

/** Small crystals that stand into a hole: what makes its wall rough. */
const ragged =
  'M66 54L70 46L72 50L76 42L80 48L84 41L86 48L92 46L90 53L96 56L89 59L92 66L85 62L82 69L78 62L72 67L73 60Z';

export const holes: Readonly<Record<string, Drawing>> = {
  blow: {
    says: 'One large, smooth hole under the upper face, where the sand above was damp.',
    lines: (
      <>
        <Sand />
        <Metal d={slab} />
        <Hollow d="M58 54C58 44 66 41 82 41S108 45 108 53S98 63 83 63S58 63 58 54z" />
        <Label x={82} y={24}>
          damp sand
        </Label>
      </>
    ),
  },
  'gas-porosity': {
    says: 'Round holes with clean walls, apart from each other, all through. The cup has risen.',
    lines: (
      <>
        <Sand />
        <Metal d="M56 20C66 8 94 8 104 20L88 40V52H146V98H14V52H72V40z" />
        <Rounds
          at={[
            [30, 62, 2.2],
            [46, 74, 3],
            [28, 86, 1.8],
            [60, 60, 1.8],
            [64, 84, 2.6],
            [76, 70, 4],
            [90, 80, 3],
            [96, 62, 2],
            [84, 90, 1.6],
            [110, 74, 3.4],
            [124, 62, 2],
            [132, 84, 2.6],
            [114, 90, 1.6],
            [80, 24, 2.8],
            [72, 18, 1.6],
            [90, 19, 2],
            [80, 46, 1.8],
          ]}
        />
      </>
    ),
  },
  shrinkage: {
    says: 'A rough hole with crystals in it, closed all round, in the middle of the thickest place.',
    lines: (
      <>
        <Sand />
        <Metal d={boss} />
        <Hollow d={ragged} />
      </>
    ),
  },
  pinholes: {
    says: 'Small round holes in a row under the skin. The middle is sound.',
    lines: (
      <>
        <Sand />
        <Metal d={slab} />
        <Rounds
          at={[20, 28, 35, 44, 51, 60, 69, 77, 86, 93, 102, 110, 119, 127, 135, 141].flatMap(
            (x, i) =>
              [
                [x, 42 + (i % 3), 1.2 + (i % 2) * 0.4],
                [x + 2 - (i % 4), 79.5 - (i % 2), 1 + (i % 3) * 0.3],
              ] as const,
          )}
        />
        <Label x={80} y={64} metal>
          sound
        </Label>
      </>
    ),
  },
  sink: {
    says: 'A smooth dish with a whole skin over the thickest place. The mould above it kept its shape.',
    lines: (
      <>
        <Sand />
        <Cavity d="M12 34H148V48H112V88H48V48H12z" />
        <Metal d="M12 34H50C64 34 66 46 80 46S96 34 110 34H148V48H112V88H48V48H12z" />
        <Label x={80} y={72} metal>
          thick
        </Label>
      </>
    ),
  },
  pipe: {
    says: 'A rough funnel, open to the top. Here it ends in the feeder, above the line of the cut, and the part is sound.',
    lines: (
      <>
        <Sand d="M2 10H158V108H2z" />
        <Metal d="M50 10H110V60H92V70H148V98H12V70H68V60H50z" />
        <Hollow d="M58 10L61 18L66 20L66 26L72 28L73 36L77 40L80 50L83 40L87 37L88 28L94 25L94 19L99 17L102 10z" />
        <Seam d="M66 66H94" dashed />
        <Label x={34} y={87} metal>
          part
        </Label>
        <Label x={132} y={40}>
          feeder
        </Label>
      </>
    ),
  },
  'corner-shrinkage': {
    says: 'A rough hole just inside a sharp inside corner, where the sand was heated from two sides.',
    lines: (
      <>
        <Sand />
        <Metal d="M20 14H62V56H144V96H20z" />
        <Hollow d="M62 57L57 58L59 62L53 61L55 67L60 66L60 71L65 67L70 68L67 63L70 59L65 61z" />
        <Label x={108} y={40}>
          sand
        </Label>
      </>
    ),
  },
  'gate-shrinkage': {
    says: 'The cup is full and sound. A rough hole opens under the line where the sprue is cut, and leads into the part.',
    lines: (
      <>
        <Sand d="M2 10H158V108H2z" />
        <Metal d="M54 10H106L86 30V56H132V96H28V56H74V30z" />
        <Hollow d="M77 55L75 62L70 64L74 68L70 74L77 73L80 81L83 73L90 74L86 68L90 64L85 62L84 55z" />
        <Seam d="M66 53H94" dashed />
        <Label x={118} y={46}>
          cut
        </Label>
      </>
    ),
  },
  microporosity: {
    says: 'A net of small ragged holes that join up, in the middle of a thick place. The skin is sound.',
    lines: (
      <>
        <Sand />
        <Metal d="M14 28H146V88H14z" />
        <Seam d="M44 58l5-4 3 4 6-6 2 6 7-3 1-6 6 5 5-3 2 6 6-4 4 5 6-5 3 5 6-2 5 4M48 64l6 2 3-4 5 5 7-4 4 5 6-5 4 5 7-3 4 4 6-5 5 4 6-2M58 49l5 3 5-5 6 3 6-4 5 4 6-3 5 4 6-2" />
        <Hollow d="M54 58l4-3 2 4-3 3zM70 54l3-4 3 4-2 3zM84 60l4-4 3 4-4 4zM98 56l3-3 4 3-3 4zM76 66l3-3 3 3-3 3zM62 66l2-3 3 3-2 3z" />
      </>
    ),
  },
};
