/** One way of doing a thing, timed. The result is kept so that the work cannot be dropped. */
export interface Way {
  readonly name: string;
  readonly run: () => number;
}

let kept = 0;

/** Nanoseconds a call, the best of several rounds: the least disturbed by whatever else the machine does. */
function time(run: () => number): number {
  let calls = 1;
  while (round(run, calls) < 20) calls *= 2;
  const rounds = Array.from({ length: 7 }, () => round(run, calls));
  return (Math.min(...rounds) * 1e6) / calls;
}

/** Milliseconds that many calls take. */
function round(run: () => number, calls: number): number {
  const start = performance.now();
  for (let i = 0; i < calls; i += 1) kept += run();
  return performance.now() - start;
}

/** Times each way and prints it as a multiple of the first, which says more from machine to machine than seconds. */
export function compare(title: string, ways: readonly [Way, ...Way[]]): void {
  console.log(`\n${title}`);
  let first: number | undefined;
  for (const { name, run } of ways) {
    const each = time(run);
    first ??= each;
    console.log(`  ${(each / first).toFixed(2).padStart(9)} ×  ${each.toFixed(0).padStart(9)} ns  ${name}`);
  }
  if (Number.isNaN(kept)) console.log('  (one of these gave no number)');
}
