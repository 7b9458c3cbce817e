import type { Row, Values } from '../../core/model.ts';
import { numberAt, rowsAt, textAt } from '../given.ts';
import { treeOf, type Stretch } from './channel.ts';
import { inputs, mostCells, mostSections } from './inputs.ts';
import type { Pour } from './pour.ts';

export type Given = { readonly ok: true; readonly pour: Pour } | { readonly ok: false; readonly why: string };

const orElse = (value: number, otherwise: number): number => (Number.isNaN(value) ? otherwise : value);

function stretchOf(row: Row, index: number): Stretch {
  return {
    name: textAt(row, 'name').trim() || `Section ${index + 1}`,
    from: textAt(row, 'from'),
    shape: textAt(row, 'shape') === 'round' ? 'round' : 'bar',
    length: numberAt(row, 'length'),
    width: numberAt(row, 'width'),
    thickness: numberAt(row, 'thickness'),
    rise: orElse(numberAt(row, 'rise'), 0),
    alike: Math.max(1, Math.round(orElse(numberAt(row, 'alike'), 1))),
    loss: orElse(numberAt(row, 'loss'), 0.5),
    vent: orElse(numberAt(row, 'vent'), 0),
  };
}

/** What must be above nought, in the order it is asked for. */
const positive = [
  'T_gate',
  'rho',
  'c',
  'L',
  'solidus',
  'liquidus',
  'f_stop',
  'T_mould',
  'h_interface',
  'thickness',
  'ambient',
];

function wrong(given: Values): string | undefined {
  const name = (input: string): string => inputs[input]?.name ?? input;
  const number = (input: string): number => numberAt(given, input);
  const cold = ['T_gate', 'T_mould', 'solidus', 'liquidus'].find((input) => number(input) <= 0);
  if (cold) return `The ${name(cold)} is below absolute zero, −273.15 °C.`;
  const missing = positive.find((input) => !(number(input) > 0));
  if (missing) return `The ${name(missing)} is missing or not above nought.`;
  if (number('solidus') > number('liquidus'))
    return 'The solidus is above the liquidus: the metal would be solid before it began to freeze.';
  if (!(number('gamma') >= 0)) return 'The surface tension is missing or below nought.';
  if (!(number('mu') >= 0)) return 'The viscosity is missing or below nought.';
  if (number('f_stop') > 1)
    return 'No more than all of the metal can be solid: the share where it stops is 100 % at most.';
  if (number('permeability') < 0) return 'The permeability cannot be below nought.';
  if (number('suction') >= number('ambient'))
    return 'No suction takes away more than the air pressure: the cavity would have none left.';
  if (number('flow') <= 0) return 'Nothing is poured: give a flow, or leave it open for a cup kept full.';
  const cells = orElse(number('cells'), 60);
  if (!(cells >= 3)) return 'At least three cells are needed along the way.';
  if (cells > mostCells)
    return `${cells.toPrecision(3)} cells are too many: ${mostCells} along the longest way are the most, and 60 do.`;
  if (rowsAt(given, 'sections').length > mostSections)
    return `At most ${mostSections} sections race at once.`;
  return undefined;
}

/** The inputs of the form as a pour that can be followed, or one sentence saying why not. */
export function pourOf(given: Values): Given {
  const why = wrong(given);
  if (why) return { ok: false, why };
  const tree = treeOf(rowsAt(given, 'sections').map(stretchOf));
  if (!tree.ok) return tree;
  const number = (name: string): number => numberAt(given, name);
  const b = orElse(number('b'), Math.sqrt(number('k') * number('rho_mould') * number('c_mould')));
  if (!(b > 0))
    return {
      ok: false,
      why: 'Give the mould a heat diffusivity, or conductivity, density and specific heat.',
    };
  const pour: Pour = {
    channels: tree.channels,
    metal: {
      rho: number('rho'),
      c: number('c'),
      latent: number('L'),
      solidus: number('solidus'),
      liquidus: number('liquidus'),
      gamma: number('gamma'),
      theta: orElse(number('theta'), Math.PI),
      mu: number('mu'),
      stop: number('f_stop'),
      gate: number('T_gate'),
    },
    mould: {
      temperature: number('T_mould'),
      b,
      h: number('h_interface'),
      permeability: number('permeability'),
      thickness: number('thickness'),
    },
    drive: {
      head: orElse(number('head'), 0),
      ambient: number('ambient'),
      suction: orElse(number('suction'), 0),
      gas: orElse(number('gas'), 0),
      flow: orElse(number('flow'), Number.POSITIVE_INFINITY),
    },
    cells: orElse(number('cells'), 60),
  };
  return { ok: true, pour };
}
