import { describe, expect, it } from 'vitest';
import { boil } from '../../calculators/models/boil.ts';
import { calibrate } from '../../calculators/models/calibrate.ts';
import { toleranceFor } from '../../calculators/models/casting-tolerances.ts';
import { compare } from '../../calculators/models/compare.ts';
import { grainFineness } from '../../calculators/models/grain-fineness.ts';
import { mix } from '../../calculators/models/mix.ts';
import { rawSizeOfCasting } from '../../calculators/models/raw-size.ts';
import { size } from '../../calculators/models/size.ts';
import { studentT } from '../../calculators/models/student.ts';
import { timeBudget } from '../../calculators/models/time-budget.ts';
import { tolerance } from '../../calculators/models/tolerance.ts';

const mm = 1e-3;

describe('tolerances of castings', () => {
  it('says when a web is smaller than its grade’s tolerance', () => {
    // 1.4 mm in DCTG 11: 2.8 mm (ISO 8062-3:2007, Table 2).
    const { values, checks } = tolerance.run({ size: 1.4 * mm, grade: '11', wall: false });
    expect(values.width).toBeCloseTo(2.8 * mm, 9);
    expect(checks[0]?.verdict).toBe('fails');
    expect(checks[0]?.why).toMatch(/cannot decide/);
  });

  it('gives no number where the standard gives none', () => {
    expect(toleranceFor(251 * mm, 8)).toMatch(/nothing is guessed/);
    expect(toleranceFor(9 * mm, 14)).toMatch(/no number/);
    expect(toleranceFor(200 * mm, 1)).toMatch(/no number/);
    expect(tolerance.run({ size: 0.3, grade: '8' }).values).toEqual({});
  });

  it('goes up by grade, and by size', () => {
    for (const size of [9, 15, 24, 39, 60, 99, 159, 249]) {
      for (let grade = 2; grade <= 12; grade += 1) {
        const [less, more] = [toleranceFor(size * mm, grade - 1), toleranceFor(size * mm, grade)];
        if (typeof less === 'number') expect(more).toBeGreaterThan(less);
      }
    }
  });

  it('takes stock and tolerance off a hole, and says when nothing is left', () => {
    // 20 mm bore in DCTG 9, 1 mm a side: 20 − 2 = 18 is in the row over 16 to 25: 1.7 mm. 18 − 0.85 = 17.15 mm.
    const bore = { finished: 20 * mm, feature: 'inside', sides: '2', allowance: 1 * mm, grade: '9' };
    expect(rawSizeOfCasting.run(bore).values.raw).toBeCloseTo(17.15 * mm, 9);
    const small = rawSizeOfCasting.run({ ...bore, finished: 2.5 * mm, grade: '12' });
    expect(small.values).toEqual({});
    expect(small.notes[0]).toMatch(/Nothing is left/);
  });

  it('allows a face with no stock half its tolerance', () => {
    // One side, 0.5 mm, 60 mm in DCTG 10: 2.8 mm. 60 + 0.5 + 1.4 = 61.9 mm.
    const face = { finished: 60 * mm, feature: 'outside', sides: '1', allowance: 0.5 * mm, grade: '10' };
    expect(rawSizeOfCasting.run(face).values.raw).toBeCloseTo(61.9 * mm, 9);
  });
});

describe('the gauge over a boiling slurry', () => {
  // Common practice, worked from the standard atmosphere and steam tables: gauge in inHg at 20 and 30 °C.
  it.each([
    [0, 29.2, 28.7],
    [1000, 25.9, 25.3],
    [1500, 24.3, 23.7],
    [2500, 21.4, 20.8],
  ])('stalls at %d m near %d inHg at 20 °C and %d at 30 °C', (z, cool, warm) => {
    const at = (T: number) => boil.run({ z, p_0: 101325, T: T + 273.15 }).values.stalls! / 3386.389;
    expect(Math.abs(at(20) - cool)).toBeLessThan(0.11);
    expect(Math.abs(at(30) - warm)).toBeLessThan(0.11);
  });

  it('says that 29 inHg cannot be had at 1500 m', () => {
    const { checks } = boil.run({ z: 1500, p_0: 101325, T: 298.15, hoped: 29 * 3386.389 });
    expect(checks[0]?.verdict).toBe('fails');
    expect(checks[0]?.why).toMatch(/24\.0 inHg/);
  });
});

describe('powder and water', () => {
  it('never goes below the least water of the sheet', () => {
    const given = {
      diameter: 0.075,
      height: 0.1,
      ratio: 0.36,
      sheet_least: 0.38,
      powder_density: 2600,
      wax_density: 960,
    };
    const { values, notes } = mix.run(given);
    expect(values).toEqual({});
    expect(notes[0]).toMatch(/sheet/);
  });
});

describe('the clock of investing', () => {
  it('names the step that comes too late', () => {
    const { values, checks } = timeBudget.run({
      working: 300,
      still: 45,
      steps: [
        { name: 'mix', time: 200 },
        { name: 'vacuum on the flask', time: 90 },
      ],
    });
    expect(values.left).toBe(-35);
    expect(checks[0]?.why).toMatch(/vacuum on the flask/);
  });
});

describe('the sieves', () => {
  it('gives a sand that all lies on one sieve the number of that sieve', () => {
    // AFS: all on the 70 sieve (passed the 50) is number 50; all in the pan is 300.
    expect(
      grainFineness.run({ sample: 0.05, kept: [{ sieve: '70', kept: 0.05 }] }).values.number,
    ).toBeCloseTo(50, 9);
    expect(
      grainFineness.run({ sample: 0.05, kept: [{ sieve: 'pan', kept: 0.05 }] }).values.number,
    ).toBeCloseTo(300, 9);
  });

  it('notices sand that went astray and a sieve named twice', () => {
    expect(grainFineness.run({ sample: 0.05, kept: [{ sieve: '70', kept: 0.04 }] }).notes.join()).toMatch(
      /20 %/,
    );
    const twice = [
      { sieve: '70', kept: 0.02 },
      { sieve: '70', kept: 0.02 },
    ];
    expect(grainFineness.run({ kept: twice }).notes.join()).toMatch(/twice/);
  });
});

describe('measuring against limits', () => {
  const drawn = { nominal: 60 * mm, up: 0.5 * mm, down: 0.5 * mm, doubt: 0.05 * mm };
  it.each([
    [60.3, 'holds'],
    [60.47, 'close'],
    [60.52, 'close'],
    [60.6, 'fails'],
    [59.4, 'fails'],
  ])('calls %d mm on 60 ± 0.5 mm: %s', (measured, verdict) => {
    expect(size.run({ ...drawn, measured: measured * mm }).checks[0]?.verdict).toBe(verdict);
  });

  it('says that it cannot tell, near a limit', () => {
    expect(size.run({ ...drawn, measured: 60.47 * mm }).checks[0]?.why).toMatch(/Cannot tell/);
  });
});

describe('the plan against the log', () => {
  it('calls them apart only when both doubts together are passed', () => {
    // 3 and 4 make 5 (ISO 13528, E_n: root of the sum of squares).
    const line = (found: number) => ({
      lines: [{ name: 'time', predicted: 100, doubt: 3, found, doubt_found: 4 }],
    });
    expect(compare.run(line(104.9)).checks[0]?.verdict).not.toBe('fails');
    expect(compare.run(line(105.1)).checks[0]?.verdict).toBe('fails');
    expect(compare.run(line(110)).values.worst).toBeCloseTo(2, 9);
  });

  it('refuses to compare what has no doubt', () => {
    expect(compare.run({ lines: [{ name: 'mass', predicted: 1, found: 2 }] }).values).toEqual({});
  });
});

describe('constants from own pours', () => {
  it('will not be precise on two points', () => {
    const two = [
      { x: 1, y: 2.41 },
      { x: 2, y: 9.73 },
    ];
    const { values, checks } = calibrate.run({ what: 'mould', scatter: 'share', pours: two });
    expect(values.constant).toBe(2);
    expect(values.low).toBeUndefined();
    expect(values.high).toBeUndefined();
    expect(checks[0]?.why).toMatch(/Cannot tell/);
  });

  it('finds a constant that was put in, and covers it 95 times in 100', async () => {
    const { createRandom } = await import('../../calculators/core/random.ts');
    const random = createRandom('pours');
    const normal = () =>
      Math.sqrt(-2 * Math.log(1 - random.uniform())) * Math.cos(2 * Math.PI * random.uniform());
    let covered = 0;
    const runs = 600;
    for (let i = 0; i < runs; i += 1) {
      const pours = [0.5, 0.8, 1.1, 1.5, 2].map((x) => ({ x, y: 2.5 * x * x * Math.exp(0.1 * normal()) }));
      const { low, high } = calibrate.run({ what: 'mould', scatter: 'share', pours }).values;
      if (low! <= 2.5 && high! >= 2.5) covered += 1;
    }
    // Two standard errors of a share of 0.95 over 600 are 0.018.
    expect(covered / runs).toBeGreaterThan(0.93);
    expect(covered / runs).toBeLessThan(0.97);
  });

  it.each([
    // Abramowitz & Stegun, Table 26.10; memory.
    [1, 12.706],
    [10, 2.228],
    [30, 2.042],
    [40, 2.021],
    [60, 2.0],
    [120, 1.98],
  ])('has t of %d degrees of freedom', (freedom, t) => {
    expect(studentT(freedom)).toBeCloseTo(t, 3);
  });
});
