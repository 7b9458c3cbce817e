/**
 * What the largest part takes, in a process of its own: `npm exec -- node tests/bench/mesh-memory.bench.ts`. The file is
 * written first by another process, so that only reading and checking it is measured.
 */
import { spawnSync } from 'node:child_process';
import { open } from 'node:fs/promises';
import { rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkMesh } from '../../calculators/meshes/check.ts';
import { ball } from '../../calculators/meshes/forms.ts';
import { readMeshInPieces } from '../../calculators/meshes/read.ts';
import { writeStl } from '../../calculators/meshes/write.ts';

const [what, path] = process.argv.slice(2);
const self = fileURLToPath(import.meta.url);
const megabytes = (): number => process.resourceUsage().maxRSS / 1000;
const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

if (what === 'write') writeFileSync(path!, writeStl(ball(20, 1118)));
else if (what === 'read') {
  const start = megabytes();
  const file = await open(path!);
  const { size } = statSync(path!);
  const begun = cpu();
  const read = await readMeshInPieces(size, 'a.stl', async (from, to) => {
    const bytes = new Uint8Array(to - from);
    await file.read(bytes, 0, to - from, from);
    return bytes;
  });
  await file.close();
  if (!read.ok) throw new Error(read.why);
  const after = cpu();
  const held = megabytes();
  const { measures } = checkMesh(read.mesh);
  const faces = read.mesh.corners.length / 3;
  console.log(
    `  ${faces.toLocaleString('en-GB')} triangles, ${Math.round(size / 1e6)} MB: read ${(after - begun).toFixed(1)} s of processor, check ${(cpu() - after).toFixed(1)} s; ` +
      `at most ${Math.round(held)} MB while reading, ${Math.round(megabytes())} MB in all, of which ${Math.round(start)} MB before it began (volume ${measures.volume.toFixed(1)} mm³)`,
  );
} else {
  console.log('\nThe largest part, in a process of its own');
  const made = join(tmpdir(), `largest-part-${process.pid}.stl`);
  for (const step of ['write', 'read']) spawnSync(process.execPath, [self, step, made], { stdio: 'inherit' });
  rmSync(made, { force: true });
}
