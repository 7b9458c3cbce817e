import { Cavity, Ink, Label, Metal, Sand, type Drawing } from './drawing.tsx';

const cup = 'M22 8H66L50 26V46';

export const missing: Readonly<Record<string, Drawing>> = {
  misrun: {
    says: 'The end of the thin web is missing. The metal stopped with a smooth, round nose.',
    lines: (
      <>
        <Sand />
        <Cavity d="M12 22H48V48H148V62H48V92H12z" />
        <Metal d="M12 22H48V48H98C109 48 109 62 98 62H48V92H12z" />
        <Label x={130} y={40}>
          empty
        </Label>
      </>
    ),
  },
  'short-pour': {
    says: 'The metal ends level, as water would stand, with a sharp edge. The cup is empty.',
    lines: (
      <>
        <Sand d="M2 8H158V108H2z" />
        <Cavity d="M22 8H66L50 26V82H66V30H140V96H36V26z" />
        <Metal d="M36 56H50V82H66V56H140V96H36z" />
        <Label x={103} y={48}>
          empty
        </Label>
      </>
    ),
  },
  'trapped-air': {
    says: 'A smooth dish in a high blind end with no vent. The metal below it is sound, and the thin web is full.',
    lines: (
      <>
        <Sand />
        <Cavity d="M12 60H62V16H104V60H148V72H104V96H62V72H12z" />
        <Metal d="M12 60H62V30C66 40 76 43 83 43S100 40 104 30V60H148V72H104V96H62V72H12z" />
        <Label x={83} y={30}>
          air
        </Label>
      </>
    ),
  },
  'run-out': {
    says: 'A hollow shell: the skin froze, and what was liquid ran out through a crack below.',
    lines: (
      <>
        <Sand d="M2 8H158V84H2z" />
        <Cavity d="M22 8H66L50 26V44H136V74H36V26z" />
        <Metal d="M36 30H39V44H50V44H136V74H94V84H100V96C100 101 118 100 122 104H64C68 100 86 101 86 96V84H90V71H132V48H53V48H40V71H88V74H36z" />
        <Ink d="M2 84H158" />
        <Label x={34} y={100}>
          leak
        </Label>
      </>
    ),
  },
  'frozen-cup': {
    says: 'The cup is full and froze first. The sprue below it is choked, and the cavity is empty.',
    lines: (
      <>
        <Sand d="M2 8H158V108H2z" />
        <Cavity d={`${cup}V66H140V92H36V26z`} />
        <Metal d="M22 8H66L50 26V44C50 54 36 54 36 46V26z" />
        <Label x={96} y={82}>
          empty
        </Label>
      </>
    ),
  },
};
