import type { Citation } from '../../calculators/core/formula.ts';
import { treeOf } from '../../calculators/models/front/channel.ts';
import { follow } from '../../calculators/models/front/follow.ts';
import type { Metal } from '../../calculators/models/front/pour.ts';

/** What one work says of a trend, as the number the race of fronts is asked for too. */
export interface Statement {
  readonly what: string;
  readonly value: number;
  readonly source: Citation;
}

/** How the run of metal changes with one thing: what is published, and what the race of fronts gives. Nothing is fitted. */
export interface Trend {
  readonly id: string;
  readonly title: string;
  readonly published: readonly Statement[];
  /** Over the tubes below: least and most. */
  readonly here: () => readonly [least: number, most: number];
  readonly means: string;
  /** A work that says what it hangs on without a figure. */
  readonly besides?: Citation;
}

/** A tube that metal is drawn or pressed into. */
export interface Tube {
  /** J·s^-½/(m²·K) and W/(m²·K). */
  readonly b: number;
  readonly h: number;
  readonly width: number;
  /** K. */
  readonly wall: number;
}

/** A356, and an aluminium-silicon that freezes at one temperature. */
export const a356: Metal = {
  rho: 2430,
  c: 1160,
  latent: 441e3,
  solidus: 828.15,
  liquidus: 888.15,
  gamma: 0.85,
  theta: (130 / 180) * Math.PI,
  mu: 0.0012,
  stop: 0.35,
  gate: 0,
};
export const silumin: Metal = { ...a356, rho: 2450, latent: 500e3, solidus: 850.14, liquidus: 850.15 };

export interface Changed {
  readonly mu?: number;
  readonly loss?: number;
  readonly gamma?: number;
  /** m. */
  readonly head?: number;
}

/** How far the metal runs, m. Widths and coefficients are not in the abstracts, so each trend is taken over several. */
export function runOf(
  metal: Metal,
  { b, h, width, wall }: Tube,
  celsius: number,
  suction: number,
  { loss = 0.5, head = 0, ...change }: Changed = {},
): number {
  const tree = treeOf([
    {
      name: 'Tube',
      from: 'gate',
      shape: 'round',
      length: 5,
      width,
      thickness: width,
      rise: 0,
      alike: 1,
      loss,
      vent: 0,
    },
  ]);
  if (!tree.ok) throw new Error(tree.why);
  return follow({
    channels: tree.channels,
    metal: { ...metal, ...change, gate: celsius + 273.15 },
    mould: { b, h, temperature: wall, permeability: Number.NaN, thickness: 0.025 },
    drive: { head, ambient: 101_325, suction, gas: 0, flow: Number.POSITIVE_INFINITY },
    cells: 333,
  }).fronts[0]!.reached;
}

const tubesOf = (b: number): Tube[] =>
  [2000, 5000].flatMap((h) => [0.004, 0.006].map((width) => ({ b, h, width, wall: 293.15 })));
export const quartz = tubesOf(1500);
export const steel = tubesOf(8000);
/** The channel of a spiral in a mould of iron. */
const spirals = [373.15, 473.15, 573.15].flatMap((wall) =>
  [1000, 3000].map((h): Tube => ({ b: 13_000, h, width: 0.008, wall })),
);

const over = (tubes: readonly Tube[], ratio: (tube: Tube) => number): readonly [number, number] => {
  const all = tubes.map(ratio);
  return [Math.min(...all), Math.max(...all)];
};

export const bySuction = (tube: Tube, change?: Changed): number =>
  runOf(a356, tube, 690, 30_000, change) / runOf(a356, tube, 690, 5000, change);
export const bySuperheat = (tube: Tube): number =>
  runOf(a356, tube, 730, 15_000) / runOf(a356, tube, 650, 15_000);
export const straightness = (tube: Tube): number =>
  (2 * runOf(a356, tube, 690, 15_000)) / (runOf(a356, tube, 650, 15_000) + runOf(a356, tube, 730, 15_000));
export const byWidth = (tube: Tube): number =>
  Math.log2(runOf(a356, { ...tube, width: 2 * tube.width }, 690, 10_000) / runOf(a356, tube, 690, 10_000));
export const metalAgainstMould = (tube: Tube): number => {
  const run = (celsius: number, warmer: number): number =>
    runOf(silumin, { ...tube, wall: tube.wall + warmer }, celsius, 0, { head: 0.1 });
  return (run(720, 0) - run(680, 0)) / (run(700, 20) - run(700, -20));
};

const tubes2022 = (at: string): Citation => ({ key: 'a356-suction', at: `abstract: ${at}`, how: 'read' });
const thin2004: Citation = { key: 'zadeh-campbell', at: 'abstract', how: 'read' };
const silumin1951: Citation = { key: 'silumin-spiral', at: 'abstract, (2)', how: 'read' };

export const trends: readonly Trend[] = [
  {
    id: 'trend-suction',
    title: 'Suction from 5 to 30 kPa: the run grows to so many times',
    published: [
      { what: 'A356 in tubes of quartz', value: 43 / 25, source: tubes2022('25 to 43 cm') },
      { what: 'A356 in tubes of steel', value: 31 / 20, source: tubes2022('20 to 31 cm') },
      {
        what: 'run is speed by the time to stop, speed the root of the pressure: √6',
        value: Math.sqrt(6),
        source: { key: 'flemings', at: 'ch. 7, fluidity', how: 'memory' },
      },
    ],
    here: () => over([...quartz, ...steel], (tube) => bySuction(tube)),
    means:
      'More than the one test whose figures were read, less than the rule that leaves friction out. The speed in such a test hangs on the air path of the apparatus and the width of the tube as much as on the suction, says another work, and neither is stated: count on less than this sum from more suction.',
    besides: { key: 'suction-speed', at: 'abstract', how: 'read' },
  },
  {
    id: 'trend-superheat',
    title: 'Metal from 650 to 730 °C: the run grows to so many times',
    published: [
      { what: 'A356 in tubes of quartz', value: 36 / 26, source: tubes2022('26 to 36 cm') },
      { what: 'A356 in tubes of steel', value: 29 / 13, source: tubes2022('13 to 29 cm') },
    ],
    here: () => over([...quartz, ...steel], bySuperheat),
    means:
      'Less than either. In a tube that chills a shell grows on the wall and stays there; here what freezes travels with the stream.',
  },
  {
    id: 'trend-straight',
    title: 'Midway between two temperatures of the metal: the run over the mean of the runs at both',
    published: [
      { what: 'A356 in tubes of quartz: linear', value: 1, source: tubes2022('linearly') },
      { what: 'cast iron and aluminium-silicon, thin sections: linear', value: 1, source: thin2004 },
      { what: 'aluminium-silicon in a spiral of metal: in proportion', value: 1, source: silumin1951 },
    ],
    here: () => over([...quartz, ...steel], straightness),
    means: 'A straight line to within a hundredth, as published; in steel the published one is curved.',
  },
  {
    id: 'trend-metal-mould',
    title: 'A hotter metal does so many times what a mould as much warmer does',
    published: [{ what: 'aluminium-silicon in a spiral of metal', value: 2.36, source: silumin1951 }],
    here: () => over(spirals, metalAgainstMould),
    means:
      'Less: heat in the metal counts for less here than it was measured to, a warm mould for more. Whether a degree was set against a degree is not in the abstract.',
  },
  {
    id: 'trend-width',
    title: 'Thicker channel: the run grows with the thickness to the power',
    published: [
      { what: 'cast iron and aluminium-silicon: the square of the modulus', value: 2, source: thin2004 },
      {
        what: 'where the skin between metal and wall decides: in proportion',
        value: 1,
        source: { key: 'flemings', at: 'ch. 7, fluidity', how: 'memory' },
      },
    ],
    here: () =>
      over(
        [0.004, 0.006].flatMap((width) =>
          [2000, 20_000].map((h): Tube => ({ b: 1000, h, width, wall: 293.15 })),
        ),
        byWidth,
      ),
    means: 'Between the two limits: nearer to the square the better the metal touches the sand.',
  },
];

export type Standing = 'within' | 'below' | 'above' | 'partly outside';

/** Where the race of fronts stands to the band from the lowest to the highest statement, to within two hundredths. */
export function standingOf({ published }: Trend, [least, most]: readonly [number, number]): Standing {
  const low = 0.98 * Math.min(...published.map(({ value }) => value));
  const high = 1.02 * Math.max(...published.map(({ value }) => value));
  if (least >= low && most <= high) return 'within';
  if (most < low) return 'below';
  return least > high ? 'above' : 'partly outside';
}
