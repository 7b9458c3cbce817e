import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { Case } from '../../calculators/models/conduction/case.ts';
import type { Engine } from '../../calculators/models/conduction/engine.ts';
import { exactEngine } from '../../calculators/models/conduction/exact-engine.ts';
import { freeze } from '../../calculators/models/conduction/freeze.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import { plainKernel, type VoxelKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { sizeOf } from '../../calculators/models/conduction/mesh.ts';
import { voxelMesh } from '../../calculators/models/conduction/voxels.ts';
import { cubesBy, type Cubes } from '../../src/workers/conduction-cubes.ts';
import type { FromSecond, ToSecond } from '../../src/workers/conduction-halves.ts';
import { solvePart, type Means } from '../../src/workers/conduction-work.ts';
import { compileKernel } from '../../src/workers/kernel/compile.ts';
import { wasmKernels } from '../../src/workers/kernel/wasm-kernel.ts';
import { wireOver } from '../../src/workers/wire.ts';
import { barOf, lineOf, partOf } from '../models/conduction/ways.ts';
import { voxelsOf } from './plate-with-boss.ts';

const simd = wasmKernels(await compileKernel());

const plateWithBoss = (spacing: number, wide = 0.008): Case => partOf(voxelMesh(voxelsOf(spacing, wide)));

/** The engine's own kernel, filled, and what its stages are told. */
function filled(given: Case, maker = simd) {
  let kernel: VoxelKernel | undefined;
  let told: Parameters<VoxelKernel['describe']>[0] | undefined;
  const engine = voxelEngine(given, (nx, ny, nz, region) => {
    const made = maker(nx, ny, nz, region);
    kernel = {
      ...made,
      describe: (substances) => {
        told = substances;
        made.describe(substances);
      },
    };
    return kernel;
  });
  if (!kernel || !told) throw new Error('the engine made no kernel');
  return { engine, kernel, told };
}

/** Least seconds of one stage, and the sum of the temperatures after the first two. */
function stages({ engine, kernel }: ReturnType<typeof filled>, rounds: number) {
  const seconds = 1 / engine.fastest;
  let best = Infinity;
  let sum = 0;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    kernel.stage(0, back, seconds);
    kernel.stage(1, back, seconds);
    best = Math.min(best, (performance.now() - start) / 2000);
    if (round === 0)
      for (const warm of kernel.temperature[0].subarray(kernel.guard, kernel.guard + kernel.region.length))
        sum += warm;
  }
  return { best, sum };
}

const back = -0.6;
const folder = mkdtempSync(join(tmpdir(), 'stage-'));
const source = fileURLToPath(new URL('./stage.c', import.meta.url));
/** With the usual rules for real numbers, and with those that let a compiler reorder sums. */
const programs = ['-O3 -march=native', '-O3 -march=native -ffast-math'].flatMap((flags, n) => {
  const program = join(folder, `stage-${n}`);
  const { status } = spawnSync('gcc', [...flags.split(' '), source, '-o', program]);
  return status === 0 ? [{ flags, program }] : [];
});

/** The same stages in C, from the same numbers. */
function stagesInC(
  program: string,
  { engine, kernel, told }: ReturnType<typeof filled>,
  size: readonly number[],
  rounds: number,
) {
  const file = join(folder, 'numbers');
  const { solidus, full, inRange, inLiquid } = told;
  const perHeat = Float32Array.from({ length: 8 }, (_, n) => told.perHeat[n] ?? 0);
  // In C every cell has a heat: elsewhere than in metal it is the temperature.
  const heats = ([0, 1] as const).map((n) => {
    const all = kernel.temperature[n].slice();
    engine.metal.forEach((cell, m) => (all[cell + kernel.guard] = kernel.heat[n][engine.places[m]!]!));
    return all;
  });
  writeFileSync(
    file,
    Buffer.concat(
      [
        Int32Array.from([...size, kernel.guard]),
        Float32Array.from([back, 1 / engine.fastest, solidus, full, inRange, inLiquid]),
        perHeat,
        ...heats,
        ...kernel.temperature,
        ...kernel.toNext,
        kernel.region,
      ].map((array) => new Uint8Array(array.buffer, array.byteOffset, array.byteLength)),
    ),
  );
  const done = spawnSync(program, [file, String(rounds)], { encoding: 'utf8' });
  const [best = Number.NaN, sum = Number.NaN] = done.stdout.trim().split(' ').map(Number);
  return { best, sum };
}

const row = (text: string, seconds: number, first: number, count: number): void => {
  const ratio = Number.isNaN(first) ? '    –' : (first / seconds).toFixed(2).padStart(5);
  const rate = (count / seconds / 1e6).toFixed(0).padStart(5);
  console.log(`  ${ratio} of C  ${rate} million cells a second  ${text}`);
};

for (const [spacing, rounds] of [
  [0.0005, 60],
  [0.00025, 12],
] as const) {
  const given = plateWithBoss(spacing);
  const size = sizeOf(given.mesh);
  const count = given.mesh.region.length;
  console.log(`\nOne stage over ${size.join(' × ')} = ${count.toLocaleString('en-GB')} cells`);
  const ready = filled(given);
  if (programs.length === 0) console.log('  No gcc here, so nothing in C to compare with.');
  const inC = programs.map(({ flags, program }) => ({ flags, ...stagesInC(program, ready, size, rounds) }));
  const compiled = stages(ready, rounds);
  const plain = stages(filled(given, plainKernel), Math.ceil(rounds / 4));
  const c = inC[0]?.best ?? Number.NaN;
  for (const { flags, best } of inC) row(`C, gcc ${flags}`, best, c, count);
  row('compiled, four lanes, hand-written', compiled.best, c, count);
  row('TypeScript, the reference', plain.best, c, count);
  const off = (sum: number): string => Math.abs(sum / plain.sum - 1).toExponential(0);
  console.log(
    `  What stands after two stages is off the reference by a part of ${off(compiled.sum)} compiled${inC[0] ? `, ${off(inC[0].sum)} in C` : ''}.`,
  );
}
rmSync(folder, { recursive: true });

function whole(title: string, given: Case, engineOf: (given: Case) => Engine, rounds: number): void {
  let best = Infinity;
  let found = freeze(given, {}, engineOf);
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    found = freeze(given, {}, engineOf);
    best = Math.min(best, performance.now() - start);
  }
  if (!found.ok) throw new Error(found.why);
  const { steps, stages: all, cells, last, drift, bytesPerCell } = found;
  console.log(
    `  ${best.toFixed(best < 100 ? 1 : 0).padStart(7)} ms  ${title}: ${cells.toLocaleString('en-GB')} cells, ${steps} steps, ${all} stages, solid after ${last?.time.toFixed(2)} s, drift ${drift.toExponential(0)}, ${bytesPerCell.toFixed(1)} bytes a cell`,
  );
}

console.log('\nUntil the last place is solid, on one thread');
const withBoss = plateWithBoss(0.0005);
whole('plate with a boss, compiled', withBoss, (it) => voxelEngine(it, simd), 3);
whole('the same with a boss of 18 mm', plateWithBoss(0.0005, 0.018), (it) => voxelEngine(it, simd), 3);
whole('plate with a boss, first coarse answer', plateWithBoss(0.001), (it) => voxelEngine(it, simd), 3);
whole('plate with a boss, TypeScript', withBoss, (it) => voxelEngine(it), 1);
whole('bar of 8 by 16 mm, turned, 0.5 mm', partOf(barOf(0.0005)), exactEngine, 3);
whole('bar of 8 by 16 mm, turned, 0.25 mm', partOf(barOf(0.00025)), exactEngine, 3);
whole('plate of 6 mm in a line of 8 cells', partOf(lineOf('straight', 8)), exactEngine, 20);

/** Both cores are needed for this, so the two ways take turns and the ratio counts. */
async function byWorkers(rounds: number): Promise<void> {
  const worker = new Worker(new URL('./second-half.ts', import.meta.url));
  await new Promise((resolve) => worker.once('message', resolve));
  const ask: NonNullable<Means['second']>['ask'] = (job) => {
    const wire = wireOver<ToSecond, FromSecond>((message, moved) => worker.postMessage(message, moved));
    worker.removeAllListeners('message');
    worker.on('message', (message: FromSecond) => wire.heard(message));
    worker.postMessage(job);
    return wire;
  };
  const cubes = (): Promise<Cubes> => Promise.resolve(cubesBy('simd', simd));
  const now = (): number => performance.now();
  const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
  const alone: Means = { cubes, now, turn, stopped: () => false };
  const together: Means = { ...alone, second: { wake: () => undefined, ask } };
  for (const wide of [0.008, 0.018]) {
    const { metal, others } = plateWithBoss(0.002);
    const shape = { kind: 'voxels', voxels: voxelsOf(0.0005, wide) } as const;
    const part = { shape, metal, others, start: [1373.15, 293.15, 293.15], most: 1e6 };
    const took: [number[], number[]] = [[], []];
    let bytes = 0;
    for (let round = 0; round < rounds; round += 1)
      for (const [n, means] of [alone, together].entries())
        for await (const reply of solvePart(1, part, means))
          if (reply.kind === 'frozen' && reply.done) {
            took[n as 0 | 1].push(reply.took);
            bytes = reply.result.bytesPerCell;
          }
    const middle = took.map((all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!);
    const least = took.map((all) => Math.min(...all));
    for (const [n, name] of ['one worker', 'two workers'].entries())
      console.log(
        `  ${least[n]!.toFixed(0).padStart(7)} ms  boss of ${(1000 * wide).toFixed(0)} mm, ${name}: the middle of ${rounds} runs ${middle[n]!.toFixed(0)} ms${n === 0 ? '' : `, ${(middle[1]! / middle[0]!).toFixed(2)} of one worker’s, ${bytes.toFixed(1)} bytes a cell`}`,
      );
  }
  await worker.terminate();
}

console.log('\nThe same with what a worker does besides: laying out, checking, pictures');
await byWorkers(7);
