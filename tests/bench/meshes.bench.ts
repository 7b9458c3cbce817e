import { analyse, cellBudgets, fromGate, gridFor, heaviestPlace } from '../../calculators/meshes/analyse.ts';
import { fillWithCells } from '../../calculators/meshes/cells.ts';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { fittings } from '../../calculators/meshes/fittings.ts';
import { ball } from '../../calculators/meshes/forms.ts';
import { readMesh } from '../../calculators/meshes/read.ts';
import type { Read } from '../../calculators/meshes/mesh-file.ts';
import { solverCells } from '../../calculators/meshes/solver-cells.ts';
import { writeObj, writeStl, writeTextStl } from '../../calculators/meshes/write.ts';

/** Seconds of the processor, the least of so many rounds: what else the machine does counts little. */
function timed<T>(rounds: number, work: () => T): { readonly seconds: number; readonly last: T } {
  let seconds = Infinity;
  let last: T | undefined;
  for (let round = 0; round < rounds; round += 1) {
    const start = process.cpuUsage();
    last = work();
    const { user, system } = process.cpuUsage(start);
    seconds = Math.min(seconds, (user + system) / 1e6);
  }
  return { seconds, last: last! };
}

const row = (seconds: number, text: string): void =>
  console.log(`  ${seconds.toFixed(2).padStart(6)} s  ${text}`);
const peak = (): string => `${Math.round(process.resourceUsage().maxRSS / 1000)} MB at most so far`;

console.log('\nFrom the bytes of a file to a checked surface');
const million = ball(20, 500);
for (const [name, write, rounds] of [
  ['binary STL', writeStl, 3],
  ['text STL', writeTextStl, 2],
  ['OBJ', writeObj, 2],
] as const) {
  const bytes = write(million);
  const { seconds, last } = timed(rounds, () => readMesh(bytes, name === 'OBJ' ? 'a.obj' : 'a.stl') as Read);
  const faces = last.mesh.corners.length / 3;
  const checked = timed(rounds, () => checkMesh(last.mesh));
  row(
    seconds + checked.seconds,
    `${name}, ${faces.toLocaleString('en-GB')} triangles: read ${seconds.toFixed(2)} s, check ${checked.seconds.toFixed(2)} s, ${(faces / (seconds + checked.seconds) / 1e6).toFixed(2)} million a second`,
  );
}
console.log(`  ${peak()}`);

console.log('\nFilling with cells');
{
  const checked = checkMesh(million);
  for (const cells of [1e6, 4e6]) {
    const grid = gridFor(checked, cells);
    const { seconds, last } = timed(2, () => fillWithCells(checked.mesh, grid));
    row(
      seconds,
      `a million triangles into ${last.metal.length.toLocaleString('en-GB')} cells: ${(last.metal.length / seconds / 1e6).toFixed(1)} million a second`,
    );
  }
}
for (const fitting of fittings) {
  const checked = checkMesh(fitting.mesh());
  const grid = gridFor(checked, cellBudgets.usual);
  const whole = timed(2, () => analyse(checked, grid));
  const gate = timed(2, () => fromGate(whole.last, heaviestPlace(whole.last), 2));
  row(
    whole.seconds + gate.seconds,
    `${fitting.name}: all maps of ${whole.last.filled.cells.toLocaleString('en-GB')} metal cells ${whole.seconds.toFixed(2)} s, from the gate ${gate.seconds.toFixed(2)} s`,
  );
}
console.log(`  ${peak()}`);

console.log('\nOne part with its gate, from cells to the solver');
{
  const mesh = fittings[0]!.mesh();
  const { seconds, last } = timed(2, () => solverCells(mesh, mesh, 0.4, 6));
  row(
    seconds,
    `${fittings[0]!.name}: ${last.cells.region.length.toLocaleString('en-GB')} cells with their mould, ${(last.cells.region.length / seconds / 1e6).toFixed(1)} million a second`,
  );
}
