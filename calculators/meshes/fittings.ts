import { boxes, moved, rod, swept, turned, type Box } from './forms.ts';
import { together, type Triangles } from './triangles.ts';

/** The four fittings of the tide mill as closed surfaces, in millimetres. */
export interface Fitting {
  readonly id: 'lamp-shield' | 'latch-keeper' | 'letter-seal' | 'index-pointer';
  readonly name: string;
  readonly metal: string;
  readonly format: 'stl' | 'text-stl' | 'obj' | '3mf';
  /** File name. */
  readonly file: string;
  readonly mesh: () => Triangles;
}

const block = (x: number, y: number, z: number, dx: number, dy: number, dz: number): Box => ({
  low: [x, y, z],
  high: [x + dx, y + dy, z + dz],
});

/**
 * Frame of 4.5 mm square, 60 by 36 mm outside. Webs of 1.4 by 2.2 mm, 240 mm in all: four upright of 27 mm,
 * three across of 42.2 mm between them, and a drop of 5.4 mm. Two lugs of 12 by 8 by 7 mm on the sides. The
 * screen is arched to a radius of 120 mm.
 */
function lampShield(): Triangles {
  const frame = [
    block(0, 0, 0, 60, 4.5, 4.5),
    block(0, 31.5, 0, 60, 4.5, 4.5),
    block(0, 4.5, 0, 4.5, 27, 4.5),
    block(55.5, 4.5, 0, 4.5, 27, 4.5),
  ];
  const z = (4.5 - 1.4) / 2;
  const upright = [12.9, 23.6, 34.2, 44.9];
  const webs = [
    ...upright.map((x) => block(x, 4.5, z, 2.2, 27, 1.4)),
    ...[9.5, 16.9, 24.3].map((y) => block(4.5, y, z, 51, 2.2, 1.4)),
    block(28.9, 26.1, z, 2.2, 5.4, 1.4),
  ];
  const lugs = [block(-8, 12, -1.25, 8, 12, 7), block(60, 12, -1.25, 8, 12, 7)];
  const along = Array.from({ length: 45 }, (_, i) => i * 1.5 - 3).filter((x) => x > -8 && x < 68);
  const radius = 120;
  return moved(boxes([...frame, ...webs, ...lugs], [along, [], []]), ([x, y, height]) => {
    const angle = (x - 30) / radius;
    const r = radius + height - 2.25;
    return [30 + r * Math.sin(angle), y, r * Math.cos(angle) - radius + 2.25];
  });
}

/** Plate 56 by 24 by 4 mm, nose 20 by 12 by 9 mm over its end, two pads of 18 by 14 by 10 mm over its edges. */
function latchKeeper(): Triangles {
  return boxes([
    block(0, 0, 0, 56, 24, 4),
    block(50, 6, 4, 20, 12, 9),
    block(19, -8, 4, 18, 14, 10),
    block(19, 18, 4, 18, 14, 10),
  ]);
}

/**
 * A face of 22 mm and 3 mm thick, a stem of 7 mm and 16 mm long on it, four arched leaves of 1.2 by 1.6 mm, 14 mm
 * along, whose ends run into the stem.
 */
function letterSeal(): Triangles {
  const body = turned(
    [
      [0, 0],
      [11, 0],
      [11, 3],
      [3.5, 3],
      [3.5, 19],
      [0, 19],
    ],
    96,
  );
  const bow = 14 / Math.PI;
  const leaves = [0, 1, 2, 3].map((quarter) => {
    const turn = (quarter * Math.PI) / 2;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const reach = Array.from({ length: 25 }, (_, i) => {
      // A little past the half circle at both ends, so that the ends are well inside the stem.
      const angle = -Math.PI / 2 - 0.12 + ((Math.PI + 0.24) * i) / 24;
      const [out, up] = [Math.cos(angle), Math.sin(angle)];
      const r = 3.3 + bow * out;
      return {
        at: [r * c, r * s, 11.5 + bow * up] as const,
        across: [out * c, out * s, up] as const,
        up: [-s, c, 0] as const,
      };
    });
    return swept(
      [
        [-0.6, -0.8],
        [0.6, -0.8],
        [0.6, 0.8],
        [-0.6, 0.8],
      ],
      reach,
    );
  });
  return together([body, ...leaves]);
}

/** A hub 16 by 16 by 8 mm, a blade of 8 by 3 mm and 70 mm long, a round tip of 2.5 mm reaching 25 mm beyond it. */
function indexPointer(): Triangles {
  const solid = boxes([block(0, -8, -8, 8, 16, 16), block(8, -4, -1.5, 70, 8, 3)]);
  const tip = moved(rod(1.25, 26, 48), ([x, y, height]) => [77 + height, x, y]);
  return together([solid, tip]);
}

export const fittings: readonly Fitting[] = [
  {
    id: 'lamp-shield',
    name: 'Lamp shield',
    metal: 'silicon-bronze',
    format: 'stl',
    file: 'lamp-shield.stl',
    mesh: lampShield,
  },
  {
    id: 'latch-keeper',
    name: 'Latch keeper',
    metal: 'leaded-gunmetal',
    format: '3mf',
    file: 'latch-keeper.3mf',
    mesh: latchKeeper,
  },
  {
    id: 'letter-seal',
    name: 'Letter seal',
    metal: 'sterling-silver',
    format: 'obj',
    file: 'letter-seal.obj',
    mesh: letterSeal,
  },
  {
    id: 'index-pointer',
    name: 'Index pointer',
    metal: 'aluminium-silicon-7',
    format: 'text-stl',
    file: 'index-pointer.stl',
    mesh: indexPointer,
  },
];
