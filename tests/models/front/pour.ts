import { treeOf, type Channel, type Stretch } from '../../../calculators/models/front/channel.ts';
import type { Drive, Metal, Mould, Pour } from '../../../calculators/models/front/pour.ts';

/** Silicon bronze at the gate at 1050 °C, as the material states it; a front that does not wet at all. */
export const bronze: Metal = {
  rho: 7520,
  c: 520,
  latent: 150e3,
  solidus: 1133.15,
  liquidus: 1244.15,
  gamma: 1.2,
  theta: Math.PI,
  mu: 0.004,
  stop: 0.3,
  gate: 1323.15,
};

/** AFS 10 in m²: 1 cm³/min of air through 1 cm² and 1 cm under 1 cm of water, times ten. */
export const afs10 = (10 * 1e-8 * 1.8e-5) / (98.0665 * 1e-4 * 60);

/** Baked sand at 150 °C. */
export const sand: Mould = { temperature: 423.15, b: 1000, h: 1000, permeability: afs10, thickness: 0.025 };

/** No gas to press out, and next to no heat lost: for what the pressures alone do. */
export const open: Mould = { ...sand, h: 1e-3, permeability: Number.NaN };

export const push = (drive: Partial<Drive>): Drive => ({
  head: 0,
  ambient: 101_325,
  suction: 0,
  gas: 0,
  flow: Number.POSITIVE_INFINITY,
  ...drive,
});

const plain: Stretch = {
  name: 'Web',
  from: 'gate',
  shape: 'bar',
  length: 0.075,
  width: 0.0022,
  thickness: 0.0014,
  rise: 0,
  alike: 1,
  loss: 0.5,
  vent: 0,
};

/** Sections that differ from the web of the lamp shield in what is stated; each leaves from the one named. */
export function channels(...parts: readonly Partial<Stretch>[]): readonly Channel[] {
  const tree = treeOf(parts.map((part) => ({ ...plain, ...part })));
  if (!tree.ok) throw new Error(tree.why);
  return tree.channels;
}

export const pour = (parts: readonly Partial<Stretch>[], rest: Partial<Omit<Pour, 'channels'>>): Pour => ({
  channels: channels(...parts),
  metal: bronze,
  mould: sand,
  drive: push({ head: 0.04 }),
  cells: 60,
  ...rest,
});
