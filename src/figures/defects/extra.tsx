import { Hollow, Ink, Investment, Label, Metal, Rounds, Sand, Seam, type Drawing } from './drawing.tsx';

export const extra: Readonly<Record<string, Drawing>> = {
  flash: {
    says: 'A thin web runs out along the joint of the mould, on both sides.',
    lines: (
      <>
        <Sand />
        <Metal d="M54 26H106V55H138V58H106V88H54V58H26V55H54z" />
        <Ink d="M2 56.5H26M138 56.5H158" />
        <Label x={142} y={48}>
          joint
        </Label>
      </>
    ),
  },
  vein: {
    says: 'A thin blade stands on the face, where the mould cracked. The crack runs on outwards.',
    lines: (
      <>
        <Investment />
        <Metal d="M14 58H76L78 44L83 32L82 44L82 58H146V92H14z" />
        <Ink d="M83 33L81 24L86 14L84 2" />
        <Label x={106} y={22}>
          crack
        </Label>
      </>
    ),
  },
  swell: {
    says: 'A smooth bulge low down, where soft sand gave way. The broken line is the pattern.',
    lines: (
      <>
        <Sand />
        <Metal d="M50 12H102V52C104 62 122 70 120 82C119 92 106 96 98 96H50z" />
        <Seam d="M102 52V96" dashed />
        <Label x={138} y={84}>
          soft
        </Label>
      </>
    ),
  },
  wash: {
    says: 'A rough lump where the stream struck the sand, and the sand that it carried off further on.',
    lines: (
      <>
        <Sand d="M2 8H158V108H2z" />
        <Metal d="M16 8H52L42 22V62H148V86H52L48 92L42 90L38 96L32 91L26 94L24 86H28V22z" />
        <Hollow d="M104 61L107 68L114 70L120 74L128 71L134 68L136 61z" />
        <Rounds
          kind="other"
          at={[
            [111, 65, 2.6],
            [118, 68, 2.8],
            [117, 64, 1.8],
            [125, 65, 2.8],
            [131, 64.5, 2],
          ]}
        />
        <Seam d="M28 86H50" dashed />
      </>
    ),
  },
  drop: {
    says: 'A rough lump under the roof of the mould. The sand that hung there lies in the floor.',
    lines: (
      <>
        <Sand />
        <Metal d="M14 46H54L56 36L62 32L66 26L76 29L84 25L92 31L96 38L100 46H146V92H14z" />
        <Seam d="M54 46H100" dashed />
        <Hollow d="M58 92L62 82L66 78L76 80L84 76L92 82L98 92z" />
        <Sand d="M58 92L62 82L66 78L76 80L84 76L92 82L98 92z" />
      </>
    ),
  },
  crush: {
    says: 'A dent at one side of the joint, where sand was pushed in, and the sand loose beside it.',
    lines: (
      <>
        <Sand />
        <Metal d="M40 22H120V56L112 52L108 58L100 59L104 66L114 68L120 74V90H40z" />
        <Ink d="M2 56H40M120 56H158" />
        <Hollow d="M88 62L92 58L98 60L97 66L91 68z" />
        <Rounds kind="other" at={[[93, 63, 2.4]]} />
        <Label x={142} y={48}>
          joint
        </Label>
      </>
    ),
  },
  'wax-bubbles': {
    says: 'Round beads of the part’s own metal under the lower face and in the corner, one with the skin.',
    lines: (
      <>
        <Investment />
        <Metal d="M14 24H146V60H78V94H46V60H14z" />
        <Rounds
          kind="solid"
          at={[
            [92, 62.5, 4],
            [106, 61.5, 2.6],
            [120, 63, 4.6],
            [134, 61.5, 2.4],
            [81, 64, 3],
            [28, 62, 3.4],
            [40, 61, 2],
            [80, 80, 2.4],
          ]}
        />
      </>
    ),
  },
  'tin-sweat': {
    says: 'Beads of a paler metal stuck to the skin. The metal beneath them is spongy.',
    lines: (
      <>
        <Sand d="M2 2H158V22H2z" />
        <Metal d="M14 40H146V92H14z" />
        <Rounds
          kind="other"
          at={[
            [52, 38, 3.4],
            [62, 37, 4.6],
            [74, 38, 3],
            [84, 36.5, 5],
            [97, 38, 3.4],
            [106, 37.5, 4],
          ]}
        />
        <Hollow d="M54 54l3-3 2 3-3 3zM64 50l3-3 3 4-4 2zM76 56l2-4 4 3-3 3zM86 50l3-2 2 4-4 1zM98 54l3-3 3 3-4 3zM70 62l3-3 2 4-3 2zM90 62l3-3 3 3-3 3zM108 50l2-3 3 3-3 3z" />
      </>
    ),
  },
};
