import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../calculators/core/solve.ts';
import { backPressure } from '../../../calculators/formulas/filling/back-pressure.ts';
import { follow } from '../../../calculators/models/front/follow.ts';
import { beyondEach, pocketAhead, pocketPressure } from '../../../calculators/models/front/gas.ts';
import { gasViscosity } from '../../../calculators/models/front/pour.ts';
import { afs10, bronze, pour, push, sand } from './pour.ts';

const thin = { ...bronze, mu: 0, gamma: 0 };
const airtight = { ...sand, h: 1e-3, permeability: 0 };

describe('gas ahead of the front', () => {
  it('stops it in an airtight channel where Boyle’s law says, though it surges past', () => {
    // 50 kPa more than the air in it: the air gives way to 101.325/151.325 of its length.
    const [front] = follow(
      pour([{ length: 0.1 }], { metal: thin, mould: airtight, drive: push({ gas: -50_000 }) }),
    ).fronts;
    expect(front!.ended).toBe('gas');
    expect(front!.reached / 0.1).toBeCloseTo(50 / 151.325, 3);
  });

  it('presses back, in a wide cavity, as filling/back-pressure says', () => {
    // Sand so near on every side that the gas goes straight through it; its spread counts for a hundredth.
    const given = pour([{ length: 0.5, width: 0.4, thickness: 0.01 }], {
      mould: { ...sand, thickness: 0.002 },
    });
    const [channel] = given.channels;
    const pocket = pocketAhead(given, channel!, beyondEach(given)[0]!, 0);
    const surface = 0.5 * 0.82 + 0.4 * 0.01;
    const [Q, outside] = [2e-4, 101_325];
    // Steady: what is in the pocket is what was; a long step forgets how it began.
    const [pressure] = pocketPressure({ ...pocket, volume: 1 }, outside, outside, Q, 1e-3);
    const wanted = evaluate(backPressure, { Q, mu: gasViscosity, l: 0.002, K: afs10, A: surface });
    const steady = pocketPressure({ ...pocket, volume: 1 }, outside + wanted, outside, Q, 1)[0] - outside;
    expect(pressure).toBeGreaterThan(outside);
    expect(Math.abs(steady / wanted - 1)).toBeLessThan(0.05);
  });

  it('lets the metal fill the more slowly the tighter the sand, and a vent makes up for it', () => {
    const drive = push({ head: 0.04, suction: 15_000 });
    const time = (permeability: number, vent = 0): number =>
      follow(pour([{ vent }], { mould: { ...sand, permeability }, drive })).fronts[0]!.time;
    const [loose, fine, tight] = [afs10 * 10, afs10, afs10 / 20].map((K) => time(K)) as [
      number,
      number,
      number,
    ];
    expect(loose).toBeLessThan(fine);
    expect(fine).toBeLessThan(tight);
    // A vent of 1 mm passes more than all that sand does.
    expect(time(afs10 / 20, 0.001) - loose).toBeLessThan(0.1 * (tight - loose));
  });

  it('rises with the flow and never falls below the pressure outside it', () => {
    const pocket = { volume: 2e-7, conductance: 1e-8 };
    let before = 0;
    for (let Q = 0; Q < 1e-4; Q += 1e-6) {
      const [pressure, slope] = pocketPressure(pocket, 90_000, 86_000, Q, 1e-3);
      expect(pressure).toBeGreaterThan(Math.max(before, 86_000));
      expect(slope).toBeGreaterThan(0);
      before = pressure;
    }
  });
});
