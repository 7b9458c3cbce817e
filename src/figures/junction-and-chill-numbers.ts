import { drySilicaSand } from '../../calculators/materials/dry-silica-sand.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { siliconBronze } from '../../calculators/materials/silicon-bronze.ts';
import { freeze } from '../../calculators/models/conduction/freeze.ts';
import { indexOf, sizeOf } from '../../calculators/models/conduction/mesh.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { layOut } from '../../calculators/models/transient/layout.ts';
import { transient } from '../../calculators/models/transient.ts';
import { figures, type FigureTable } from './drawing.ts';

const books = resolvedMaterials({ [siliconBronze.id]: siliconBronze, [drySilicaSand.id]: drySilicaSand });

/** A web of 4 mm standing on a web of 4 mm, half of it, in metres; the rows of `freezing/transient`. */
const web = 0.004;
const arm = 0.014;
const rectangle = (what: string, x: number, y: number, width: number, height: number) => ({
  what,
  x,
  y,
  width,
  height,
});
const webs = [rectangle('metal', 0, 0, web / 2 + arm, web), rectangle('metal', 0, 0, web / 2, web + arm)];
const chill = rectangle('chill', 0, -0.006, web, 0.006);

/** When each half-millimetre of the junction is solid, s, bare and with a chill of iron under it. */
export function junctionNumbers() {
  const cases = [one('No chill', webs), one('A chill under the junction', [...webs, chill])];
  const table: FigureTable = {
    caption: 'Silicon bronze in dry sand at 20 °C, webs of 4 mm: seconds until solid',
    head: ['', 'Last of all', 'Where', 'Middle of an arm'],
    rows: cases.map(({ name, last, arm: middle }) => [
      name,
      `${figures(last.time, 3)} s`,
      `${last.x.toFixed(1)} mm from the middle, ${last.y.toFixed(1)} mm up`,
      `${figures(middle, 3)} s`,
    ]),
  };
  return { cases, table };
}

function one(name: string, rectangles: readonly ReturnType<typeof rectangle>[]) {
  const given = { geometry: 'section', turned: false, rectangles, 'mirror.y': false, cells: 8 };
  const { values, problems } = completeInputs(transient, given, books);
  const laid = layOut(values);
  if (!laid.ok || problems.length > 0)
    throw new Error(`junction figure: ${laid.ok ? problems[0] : laid.why}`);
  const { mesh } = laid.case;
  const found = freeze(laid.case);
  if (!found.ok || !found.last) throw new Error('junction figure: it did not freeze');
  const size = sizeOf(mesh);
  const cells = [...found.metal].map((cell, m) => {
    const [i, j] = indexOf(cell, size);
    const [x, y] = [mesh.axes[0].edges, mesh.axes[1].edges];
    return [
      tenth(x[i]! * 1000),
      tenth(y[j]! * 1000),
      tenth((x[i + 1]! - x[i]!) * 1000),
      tenth((y[j + 1]! - y[j]!) * 1000),
      tenth(found.solidus[m]!),
    ] as const;
  });
  const away = (cell: readonly number[]): number =>
    Math.hypot(cell[0]! - 1000 * (web / 2 + arm / 2), cell[1]! - 500 * web);
  const middle = cells.reduce((near, cell) => (away(cell) < away(near) ? cell : near));
  const [x, y] = found.last.place;
  return { name, cells, arm: middle[4], last: { x: 1000 * x, y: 1000 * y, time: found.last.time } };
}

const tenth = (value: number): number => Math.round(value * 100) / 100;
