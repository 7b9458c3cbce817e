import { centreOfCell, type Filled } from './cells.ts';
import type { Point } from './triangles.ts';

/**
 * How far the metal has to run from the gate to each cell, staying inside the part: fast marching of the first
 * order (Sethian, J. A., Proc. Natl. Acad. Sci. 93, 1996). Cells within the gate's radius, or three cells, are
 * given their straight distance. Infinite where no metal joins.
 */
export function runsFrom({ grid, metal }: Filled, gate: Point, radius: number): Float32Array {
  const { size, spacing: h } = grid;
  const [nx, ny] = size;
  const run = new Float32Array(metal.length).fill(Infinity);
  const done = new Uint8Array(metal.length);
  const heap = makeHeap(run);
  const near = nearestMetal(grid, metal, gate);
  if (near < 0) return run;
  // Straight only while the metal is joined: out from the first cell to its neighbours.
  const straight = Math.max(radius, 3 * h);
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  const start = [near];
  done[near] = 1;
  for (let head = 0; head < start.length; head += 1) {
    const cell = start[head]!;
    const at = centreOfCell(grid, cell);
    const far = Math.hypot(at[0] - gate[0], at[1] - gate[1], at[2] - gate[2]);
    run[cell] = Math.max(0, far - radius);
    if (far > straight && head > 0) continue;
    for (const step of steps) {
      const other = cell + step;
      if (metal[other] === 1 && done[other] === 0) {
        done[other] = 1;
        start.push(other);
      }
    }
  }
  done.fill(0);
  for (const cell of start) heap.push(cell);
  for (let cell = heap.pop(); cell >= 0; cell = heap.pop()) {
    if (done[cell] === 1) continue;
    done[cell] = 1;
    for (const step of steps) {
      const other = cell + step;
      if (metal[other] !== 1 || done[other] === 1) continue;
      const x = Math.min(run[other - 1]!, run[other + 1]!);
      const y = Math.min(run[other - nx]!, run[other + nx]!);
      const z = Math.min(run[other - nx * ny]!, run[other + nx * ny]!);
      const then = arrival(x, y, z, h);
      if (then < run[other]!) {
        run[other] = then;
        heap.push(other);
      }
    }
  }
  return run;
}

/** The first-order arrival from the earliest neighbour along each axis. */
function arrival(x: number, y: number, z: number, h: number): number {
  const [a, b, c] =
    x < y
      ? y < z
        ? [x, y, z]
        : x < z
          ? [x, z, y]
          : [z, x, y]
      : x < z
        ? [y, x, z]
        : y < z
          ? [y, z, x]
          : [z, y, x];
  if (b - a >= h) return a + h;
  const two = (a + b + Math.sqrt(2 * h * h - (a - b) ** 2)) / 2;
  if (two <= c) return two;
  const sum = a + b + c;
  const inside = sum * sum - 3 * (a * a + b * b + c * c - h * h);
  return inside < 0 ? two : (sum + Math.sqrt(inside)) / 3;
}

/** The metal cell whose middle is nearest to a place. */
export function nearestMetal(grid: Filled['grid'], metal: Uint8Array, [x, y, z]: Point): number {
  let best = Infinity;
  let found = -1;
  for (let cell = 0; cell < metal.length; cell += 1) {
    if (metal[cell] === 0) continue;
    const at = centreOfCell(grid, cell);
    const far = (at[0] - x) ** 2 + (at[1] - y) ** 2 + (at[2] - z) ** 2;
    if (far < best) {
      best = far;
      found = cell;
    }
  }
  return found;
}

/** Cells by their run, the shortest first; a cell may stand in it more than once. */
function makeHeap(run: Float32Array): { push: (cell: number) => void; pop: () => number } {
  const cells: number[] = [];
  const keys: number[] = [];
  return {
    push: (cell) => {
      const key = run[cell]!;
      let at = cells.length;
      cells.push(cell);
      keys.push(key);
      while (at > 0) {
        const up = (at - 1) >> 1;
        if (keys[up]! <= key) break;
        cells[at] = cells[up]!;
        keys[at] = keys[up]!;
        at = up;
      }
      cells[at] = cell;
      keys[at] = key;
    },
    pop: () => {
      const first = cells[0] ?? -1;
      const cell = cells.pop();
      const key = keys.pop();
      const n = cells.length;
      if (cell === undefined || key === undefined || n === 0) return first;
      let at = 0;
      for (;;) {
        let down = 2 * at + 1;
        if (down >= n) break;
        if (down + 1 < n && keys[down + 1]! < keys[down]!) down += 1;
        if (keys[down]! >= key) break;
        cells[at] = cells[down]!;
        keys[at] = keys[down]!;
        at = down;
      }
      cells[at] = cell;
      keys[at] = key;
      return first;
    },
  };
}
