import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url));

/** From the ground up: a file may import from its own layer and from those before it. */
const order = [
  'calculators/sources.ts',
  'calculators/core/',
  'calculators/meshes/',
  'calculators/materials/',
  'calculators/formulas/',
  'calculators/models/',
  'calculators/pour-log/',
  'calculators/exercises/',
  'calculators/index.ts',
  ['src/find/', 'src/offline/'],
  ['src/figures/', 'src/workers/'],
  'src/islands/',
  'src/lesson/',
  'src/layouts/',
  'src/pages/',
].map((layer) => [layer].flat());

/** Small pure libraries that calculations may use. */
const pure: readonly string[] = ['yalps', 'fflate'];

interface Import {
  readonly from: string;
  readonly to: string;
  readonly type: boolean;
}

const files = ['calculators', 'src', 'content']
  .filter((folder) => existsSync(root + folder))
  .flatMap((folder) =>
    readdirSync(root + folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)),
  )
  .filter((file) => /\.(?:ts|tsx|js|astro|mdx)$/.test(file))
  .map((file) => file.split(sep).join('/'));

const imports: Import[] = files.flatMap((file) => {
  const text = file.endsWith('.mdx') ? beforeTags(file) : readFileSync(root + file, 'utf8');
  const found = text.matchAll(
    /^\s*(?:import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|\bimport\('([^']+)'\)/gm,
  );
  return [...found].map(([, type, stated, dynamic]) => ({
    from: file,
    to: resolved(file, stated ?? dynamic ?? ''),
    type: type !== undefined,
  }));
});

function beforeTags(file: string): string {
  return readFileSync(root + file, 'utf8').replace(/```[\s\S]*?```/g, '');
}

function resolved(file: string, name: string): string {
  if (!name.startsWith('.')) return name;
  return relative(root, join(root, dirname(file), name.replace(/\?.*$/, '')))
    .split(sep)
    .join('/');
}

function layerOf(path: string): number {
  return order.findIndex((layers) => layers.some((layer) => path.startsWith(layer)));
}

const told = ({ from, to }: Import) => `${from} imports ${to}`;

describe('the layers', () => {
  it('import downwards only', () => {
    const upwards = imports.filter(({ from, to }) => {
      const [above, below] = [layerOf(from), layerOf(to)];
      return above >= 0 && below > above;
    });
    expect(upwards.map(told)).toEqual([]);
  });

  it('keep figures and workers apart', () => {
    const across = imports.filter(
      ({ from, to }) =>
        (from.startsWith('src/figures/') && to.startsWith('src/workers/')) ||
        (from.startsWith('src/workers/') && to.startsWith('src/figures/')),
    );
    expect(across.map(told)).toEqual([]);
  });

  it('leave the platform to workers, islands and the command line', () => {
    const allowed = ['src/platform/', 'src/workers/', 'src/islands/', 'src/cli/'];
    const others = imports.filter(
      ({ from, to }) => to.startsWith('src/platform/') && !allowed.some((folder) => from.startsWith(folder)),
    );
    expect(others.map(told)).toEqual([]);
    const upwards = imports.filter(
      ({ from, to }) => from.startsWith('src/platform/') && layerOf(to) > layerOf('src/workers/'),
    );
    expect(upwards.map(told)).toEqual([]);
  });

  it('keep the command line away from pages and islands', () => {
    const drawn = ['src/islands/', 'src/lesson/', 'src/layouts/', 'src/pages/', 'src/figures/'];
    const wrong = imports.filter(
      ({ from, to }) => from.startsWith('src/cli/') && drawn.some((folder) => to.startsWith(folder)),
    );
    expect(wrong.map(told)).toEqual([]);
  });

  it('let calculators import nothing but calculators', () => {
    const outside = imports.filter(
      ({ from, to }) =>
        from.startsWith('calculators/') && !to.startsWith('calculators/') && !pure.includes(to),
    );
    expect(outside.map(told)).toEqual([]);
  });

  it('send no index of everything and nothing of Node to a browser', () => {
    const stated = Map.groupBy(
      imports.filter(({ type }) => !type),
      ({ from }) => from,
    );
    // Whatever the islands and workers reach, through however many files.
    const reached = new Map<string, string>();
    // The kernel’s folder holds what compiles it at build, too; what a worker takes from it is reached from there.
    const queue = files.filter((file) => /^src\/(?:islands|workers)\/(?!kernel\/)/.test(file));
    for (let file = queue.pop(); file !== undefined; file = queue.pop())
      for (const { to } of stated.get(file) ?? [])
        if (!reached.has(to)) {
          reached.set(to, file);
          queue.push(to);
        }
    expect(reached.size).toBeGreaterThan(100);
    const wrong = [...reached].filter(([to]) =>
      /^calculators\/(?:.*\/)?index\.ts$|^node:|^js-yaml$/.test(to),
    );
    expect(wrong.map(([to, from]) => `${from} imports ${to}`)).toEqual([]);
  });

  it('let content import nothing', () => {
    expect(imports.filter(({ from }) => from.startsWith('content/')).map(told)).toEqual([]);
  });

  it('let only the evidence and its cards read tests, and of those only published values', () => {
    const tested = imports.filter(
      ({ from, to }) =>
        to.startsWith('tests/') && !(from === 'src/lesson/published.ts' && to.startsWith('tests/published/')),
    );
    expect(tested.map(told)).toEqual([]);
  });
});
