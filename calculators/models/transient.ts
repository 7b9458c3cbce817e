import { defineModel, type Result, type Step, type Values, type Watch } from '../core/model.ts';
import { solve } from '../core/solve.ts';
import { timeBoth } from '../formulas/freezing/time-both.ts';
import { exactEngine, startOf } from './conduction/exact-engine.ts';
import { freeze, type Freezing } from './conduction/freeze.ts';
import { sizeOf, volumeOf } from './conduction/mesh.ts';
import { metalArea } from './conduction/pace.ts';
import { noMemory } from './conduction/refuse.ts';
import { statedError } from './conduction/stated-error.ts';
import { metalRegion } from './conduction/substance.ts';
import { voxelEngine } from './conduction/voxel-engine.ts';
import { known, noResult, numberAt } from './given.ts';
import { say } from './pour-plan/say.ts';
import { inputs } from './transient/inputs.ts';
import { layOut, type Layout } from './transient/layout.ts';

type Laid = Extract<Layout, { ok: true }>;

/** (K·s)^½/m as the steel criterion is written, (°C·min)^½ for each centimetre. */
const perCentimetre = 0.01 / Math.sqrt(60);

/** Lays it out and freezes it; a sentence where it cannot be. */
function frozen(
  given: Values,
  watch: Watch | undefined,
): string | { readonly laid: Laid; readonly found: Freezing } {
  try {
    const laid = layOut(given);
    if (!laid.ok) return laid.why;
    const even = laid.case.metal.base === undefined;
    const found = freeze(laid.case, watch, laid.solid && even ? voxelEngine : exactEngine);
    return found.ok ? { laid, found } : found.why;
  } catch (error) {
    if (error instanceof RangeError) return noMemory;
    throw error;
  }
}

function run(given: Values, watch?: Watch): Result {
  const ended = frozen(given, watch);
  if (typeof ended === 'string') return noResult(ended);
  const { laid, found } = ended;
  const line = given['geometry'] !== 'section' && given['geometry'] !== 'voxels';
  const middle = line ? 0 : found.metal.indexOf(found.last?.cell ?? -1);
  const error = statedError(laid.case, laid.across);
  const feeding = [...found.feeding].filter((value) => Number.isFinite(value));
  const values = known({
    'centre.liquidus': found.liquidus[middle],
    'centre.solidus': found.solidus[middle],
    'last.time': found.last?.time,
    'last.x': found.last?.place[0],
    'last.y': line ? undefined : found.last?.place[1],
    'last.z': laid.solid ? found.last?.place[2] : undefined,
    face: found.hottest[1],
    feeding: feeding.length === 0 ? undefined : Math.min(...feeding) * perCentimetre,
    across: laid.across.cells,
    error,
    drift: found.drift,
    cells: found.cells,
    steps: found.steps,
    stages: found.stages,
  });
  return { values, steps: working(given, laid, found), checks: [], notes: notesOf(laid, found, error) };
}

function working(given: Values, laid: Laid, found: Freezing): Step[] {
  const { mesh, metal, others } = laid.case;
  const volume = found.metal.reduce((sum, cell) => sum + volumeOf(mesh, cell), 0);
  const area = metalArea(mesh);
  const steps: Step[] = [];
  if (area > 0) {
    steps.push({ id: 'modulus', title: 'Modulus of the metal', value: volume / area, unit: 'mm' });
    const [mould] = others;
    const symbols = {
      rho: metal.rho,
      M: volume / area,
      L: metal.latent,
      c: metal.c.liquid,
      dT: Math.max(0, numberAt(given, 'metal.initial') - metal.liquidus),
      b: Math.sqrt(mould!.k * mould!.rhoc),
      h: mould!.h,
      T_f: (metal.solidus + metal.liquidus) / 2,
      T_m: numberAt(given, 'mould.initial'),
    };
    const rule = solve(timeBoth, symbols, 't');
    if (rule.ok && Number.isFinite(rule.value))
      steps.push({
        id: 'rule',
        title: 'The rule, to compare',
        formula: timeBoth.id,
        given: symbols,
        find: 't',
        value: rule.value,
        unit: 's',
        note: 'The rule takes flat faces and one freezing temperature: a round part is solid sooner, and a long freezing range, whose heat it leaves out, later.',
      });
  }
  if (found.last) steps.push({ id: 'last', title: 'All solid, solved', value: found.last.time, unit: 's' });
  steps.push({ id: 'face', title: 'Hottest the mould has been', value: found.hottest[1]!, unit: '°C' });
  return steps.filter(({ value }) => value === undefined || Number.isFinite(value));
}

/**
 * How much the mould warmed where it ends and keeps its heat, K, if that is more than three tenths of its hottest: at a
 * quarter the time of a plate is off by a part in a thousand.
 */
function warmedAtEnd({ case: given }: Laid, found: Freezing): number | undefined {
  const { mesh, sides = [], outside } = given;
  if (outside && outside.kind !== 'insulated') return undefined;
  const [nx, ny] = sizeOf(mesh);
  const ends = sides.map((side) => {
    const d = 'xyz'.indexOf(side.charAt(1));
    return [d, side.startsWith('+') ? sizeOf(mesh)[d]! - 1 : 0] as const;
  });
  let warmed = 0;
  let most = 0;
  mesh.region.forEach((region, cell) => {
    if (region === metalRegion) return;
    const at = [cell % nx, Math.floor(cell / nx) % ny, Math.floor(cell / (nx * ny))];
    const rise = found.temperature[cell]! - startOf(given, mesh, cell);
    most = Math.max(most, rise);
    if (ends.some(([d, place]) => at[d] === place)) warmed = Math.max(warmed, rise);
  });
  return warmed > 0.3 * most ? warmed : undefined;
}

function notesOf(laid: Laid, found: Freezing, error: number): string[] {
  const { across } = laid;
  const cells = `${across.cells} cells span the thinnest section: the mesh puts the times off by up to ${say(error, '%')}.`;
  const few = across.cells < 4 ? ' Ask for four or more before you trust them.' : '';
  const notes = [cells + few, 'The interface coefficient and the latent heat are less certain than that.'];
  const warmed = warmedAtEnd(laid, found);
  if (warmed !== undefined)
    notes.push(
      `Where the mould ends, and keeps its heat, it had warmed by ${say(warmed, 'Δ°C')}: its size counts, and a larger one freezes this sooner.`,
    );
  if (found.ended === 'time') notes.unshift(`Stopped after ${say(found.time, 's')}, before all was solid.`);
  if (found.ended === 'steps')
    notes.unshift('It was not solid after very many steps: mould and metal even out near the solidus.');
  return notes;
}

/**
 * Conduction in metal and mould with freezing, cell by cell in time: heat is conserved in every cell, the
 * latent heat leaves between liquidus and solidus. Temperatures K, lengths m, times s. Refuses in words.
 */
export const transient = defineModel({
  id: 'freezing/transient',
  title: 'Freezing, solved cell by cell',
  answers: 'When is it solid, and where last?',
  inputs,
  outputs: {
    'last.time': { name: 'all solid after', sign: 't', unit: 's' },
    'last.x': { name: 'last to freeze, x', unit: 'm', show: 'mm' },
    'last.y': { name: 'last to freeze, y', unit: 'm', show: 'mm' },
    'last.z': { name: 'last to freeze, z', unit: 'm', show: 'mm' },
    'centre.liquidus': { name: 'the middle, or the last place, begins to freeze after', unit: 's' },
    'centre.solidus': { name: 'it is solid after', unit: 's' },
    face: { name: 'hottest the mould has been', unit: 'K', show: '°C' },
    feeding: {
      name: 'least gradient over root of cooling rate, in (°C·min)^½ for each centimetre',
      unit: '1',
    },
    across: { name: 'cells across the thinnest section', unit: '1' },
    error: { name: 'error of the mesh, at most', unit: '1', show: '%' },
    drift: { name: 'heat made or lost by arithmetic, of what the metal had', unit: '1' },
    cells: { name: 'cells', unit: '1' },
    steps: { name: 'steps', unit: '1' },
    stages: { name: 'stages in them', unit: '1' },
  },
  run,
  assumes: [
    'the cavity is full at once and nothing flows in it',
    'numbers of metal and mould that do not change with temperature, but for solid and liquid',
    'one interface coefficient all the time: no gap opens as the metal shrinks',
    'a dry mould: water in it takes up far more heat',
    'gradient over root of cooling rate is a criterion born in steel: a weak hint for bronze and silver that freeze over a long range',
  ],
  source: {
    key: 'meyer-balsara-aslam',
    at: 'eq. 16 to 19, first-order Runge–Kutta–Legendre steps; heat as the unknown',
    how: 'memory',
  },
  alsoSee: [
    { key: 'carslaw-jaeger', at: '§11.2, Neumann’s solution, which it is held to', how: 'memory' },
    { key: 'niyama', at: 'critical value of G/√Ṫ', how: 'memory' },
  ],
  examples: [
    {
      title: 'Plate of 4 mm that gives its latent heat through its faces alone, at one temperature',
      given: {
        'half-thickness': '2 mm',
        'metal.k': '400 W/(m·K)',
        'metal.rho': '8000 kg/m³',
        'metal.c': '400 J/(kg·K)',
        'metal.L': '200 kJ/kg',
        'metal.solidus': '1020 °C',
        'metal.liquidus': '1020 °C',
        'metal.initial': '1020 °C',
        'mould.k': '10000 W/(m·K)',
        'mould.rhoc': '1e10 J/(m³·K)',
        'mould.initial': '20 °C',
        h_interface: '100 W/(m²·K)',
      },
      expect: { 'centre.solidus': '32.0 s' },
      from: {
        byHand:
          'A boundless mould stays at 20 °C. Heat 8000 × 200 000 × 0.002 = 3.2 MJ/m² leaves at 100 × 1000 = 0.1 MW/m²: 32 s. The way through the metal adds h·half/(2k) = 0.025 %, the mould, of b = 10⁷, nothing that shows.',
      },
    },
  ],
  caution: ['Solid in the sum is not safe to touch: a casting is at the solidus when it has just frozen.'],
  monotone: [
    { input: 'mould.initial', output: 'last.time', sense: '+' },
    { input: 'metal.L', output: 'last.time', sense: '+' },
  ],
  words: ['conduction', 'solidification', 'finite volume', 'enthalpy', 'hot spot', 'chill', 'freeze order'],
});
