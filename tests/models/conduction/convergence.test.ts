import { describe, expect, it } from 'vitest';
import { studies } from '../../../src/lesson/convergence.ts';

describe('finer cells and steps', () => {
  it('come nearer to the truth as steeply as the method promises', { timeout: 60_000 }, () => {
    const [mesh, step, bar] = studies();
    expect(mesh!.order).toBeGreaterThan(1.8);
    expect(mesh!.order).toBeLessThan(2.4);
    expect(step!.order).toBeGreaterThan(0.9);
    expect(step!.order).toBeLessThan(1.1);
    for (const { error, stated } of bar!.points) expect(error).toBeLessThan(stated!);
  });
});
