import { drySilicaSand } from '../../calculators/materials/dry-silica-sand.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { siliconBronze } from '../../calculators/materials/silicon-bronze.ts';
import { exactEngine } from '../../calculators/models/conduction/exact-engine.ts';
import { freezing } from '../../calculators/models/conduction/freeze.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { layOut } from '../../calculators/models/transient/layout.ts';
import { transient } from '../../calculators/models/transient.ts';
import { figures, type FigureTable } from './drawing.ts';

/** Of plate and bar: half the thickness is the radius. */
const half = 0.003;
const cells = 10;
const shots = 24;

const books = resolvedMaterials({ [siliconBronze.id]: siliconBronze, [drySilicaSand.id]: drySilicaSand });

/** A plate and a round bar as thick, in dry sand: what each cell is at evenly spaced times, beside the rule. */
export function freezeInTimeNumbers() {
  const solved = [one('plate', 'Plate, 6 mm thick'), one('cylinder', 'Round bar, 6 mm thick')];
  const end = Math.max(...solved.map(({ time }) => time));
  const times = Array.from({ length: shots + 1 }, (_, n) => (end * n) / shots);
  const parts = solved.map(({ name, rule, time, frames }) => ({
    name,
    rule: short(rule),
    time: short(time),
    /** °C by time and cell, from the middle out; metal first, then as wide a layer of mould. */
    shots: times.map((at) => {
      // Once it is solid its picture stands still: how it cools on is another question.
      const found = frames.findIndex((frame) => frame.time >= at);
      const later = found < 0 ? frames.length - 1 : Math.max(1, found);
      const [a, b] = [frames[later - 1]!, frames[later] ?? frames.at(-1)!];
      const part = b.time > a.time ? Math.min(1, (at - a.time) / (b.time - a.time)) : 0;
      return a.celsius.map((warm, n) => Math.round(warm + (b.celsius[n]! - warm) * part));
    }),
  }));
  const melt = completeInputs(transient, {}, books).values;
  const celsius = (name: string): number => Math.round(Number(melt[name]) - 273.15);
  const table: FigureTable = {
    caption: `Silicon bronze in dry sand at 20 °C: seconds until the middle is solid`,
    head: ['', 'By the rule', 'Solved', 'Solved against the rule'],
    rows: parts.map(({ name, rule, time }) => [
      name,
      `${figures(rule, 3)} s`,
      `${figures(time, 3)} s`,
      `${time > rule ? '+' : '−'}${Math.round(100 * Math.abs(time / rule - 1))} %`,
    ]),
  };
  return {
    times: times.map(short),
    parts,
    cells,
    solidus: celsius('metal.solidus'),
    liquidus: celsius('metal.liquidus'),
    table,
  };
}

const short = (value: number): number => Number(value.toPrecision(3));

function one(geometry: 'plate' | 'cylinder', name: string) {
  const given = { geometry, 'half-thickness': half, radius: half, cells };
  const { values } = completeInputs(transient, given, books);
  const laid = layOut(values);
  if (!laid.ok) throw new Error(`freeze-in-time figure: ${laid.why}`);
  const engine = exactEngine(laid.case);
  const { centres } = laid.case.mesh.axes[0];
  const seen = [...centres.keys()].filter((n) => centres[n]! < 2 * half);
  const picture = (time: number, newest: 0 | 1) => ({
    time,
    celsius: seen.map((n) => engine.temperature[newest][n + engine.guard]! + engine.zero - 273.15),
  });
  const frames = [picture(0, 0)];
  const way = freezing(laid.case, engine);
  for (let next = way.next(); !next.done; next = way.next())
    frames.push(picture(next.value.time, next.value.newest));
  const { steps, values: found } = transient.run(values);
  const rule = steps.find(({ id }) => id === 'rule')?.value;
  const time = found['last.time'];
  if (typeof rule !== 'number' || typeof time !== 'number')
    throw new Error('freeze-in-time figure: rule or solver gave no time');
  return { name, rule, time, frames, edges: seen };
}
