import { describe, expect, it } from 'vitest';
import type { Marked } from '../../calculators/exercises/marking.ts';
import { markChoice, markNumber, markOrder, markSteps } from '../../calculators/exercises/marking.ts';
import { readExercise } from '../../calculators/exercises/reading.ts';
import type { Exercise } from '../../calculators/exercises/definition.ts';
import { drawVariant } from '../../calculators/exercises/variants.ts';
import { choiceFile, fallFile, library, orderFile, stepsFile } from './bench-formulas.ts';

function as<K extends Exercise['kind']>(kind: K, data: unknown): Extract<Exercise, { kind: K }> {
  const exercise = readExercise('x', data);
  if (exercise.kind !== kind) throw new Error(exercise.kind);
  return exercise as Extract<Exercise, { kind: K }>;
}

const fixed = { ...fallFile, vary: {} };

function mark(text: string, data: object = fixed): Marked {
  const exercise = as('number', data);
  return markNumber(exercise, drawVariant(exercise, '1'), text, library);
}

/**
 * By hand: h = 200 mm = 0.2 m, 2 g h = 2 × 9.80665 × 0.2 = 3.92266, v = 1.98057 m/s. Two per cent of it is
 * 0.0396; three figures are allowed by 200 mm, and half of the third is 0.005, so 2 % decides:
 * right from 1.9410 to 2.0202.
 */
describe('a number', () => {
  it.each(['1.98 m/s', '1,98 m/s', '1.9411 m/s', '2.02 m/s', '1980 mm/s', '6.5 ft/s', '1.98m/s'])(
    '%s within the tolerance has every mark',
    (text) => {
      expect(mark(text)).toMatchObject({ verdict: 'right', unit: 'right', marks: 3, of: 3 });
    },
  );

  it.each(['1.94 m/s', '2.03 m/s'])('%s outside it keeps the mark of its unit only', (text) => {
    expect(mark(text)).toMatchObject({ verdict: 'wrong', unit: 'right', marks: 1 });
  });

  it('without its unit loses one mark, the unit’s', () => {
    expect(mark('1.98')).toMatchObject({ verdict: 'right', unit: 'missing', marks: 2 });
    expect(mark('1.98').says.join()).toMatch(/without its unit/);
  });

  it.each(['1.98 kg', '1.98 mm/s', '1.98 furlongs', '1.98 s'])(
    '%s has the wrong unit and the right number',
    (text) => {
      expect(mark(text)).toMatchObject({ verdict: 'right', unit: 'wrong', marks: 2 });
    },
  );

  it('that is wrong and bare has no mark', () => {
    expect(mark('5')).toMatchObject({ verdict: 'wrong', unit: 'missing', marks: 0 });
  });

  it.each(['', '  ', 'about two', '1.2.3 m/s', '1,234 m/s', '−', '±'])(
    '“%s” is not marked at all',
    (text) => {
      const marked = mark(text);
      expect(marked).toMatchObject({ verdict: 'unread', marks: 0 });
      expect(marked.says[0]).toMatch(/\.$/);
    },
  );

  it('of one mark has no separate mark for its unit', () => {
    expect(mark('1.98', { ...fixed, marks: 1 })).toMatchObject({
      verdict: 'right',
      marks: 1,
      unit: 'missing',
    });
  });

  it('may be off by half of the last figure the givens allow, where that is more than the tolerance', () => {
    // h = 0.20 m has two figures, so v = 2.0 ± 0.05 although the tolerance is 0.1 %: 1.98057 − 0.05 = 1.9306.
    const coarse = { ...fixed, given: { h: '0.20 m' }, tolerance: '0.1 %' };
    expect(mark('1.94 m/s', coarse).verdict).toBe('right');
    expect(mark('2.0 m/s', coarse).verdict).toBe('right');
    expect(mark('1.92 m/s', coarse).verdict).toBe('wrong');
  });

  it('counts at least two figures even where a given has one', () => {
    // h = 0.2 m has one figure; half of the first figure of 1.98 would be 0.5. Two count: ± 0.05.
    const one = { ...fixed, given: { h: '0.2 m' }, tolerance: '0.1 %' };
    expect(mark('2.2 m/s', one).verdict).toBe('wrong');
    expect(mark('1.95 m/s', one).verdict).toBe('right');
  });

  const sum = (find: string, given: Record<string, string>, text: string, formula = 'test/stack') =>
    mark(text, { ...fixed, formula, find, given, tolerance: '0.01 %', mistakes: untaken(find) }).verdict;
  const untaken = (find: string) => [
    { equation: `${find} = 1000`, says: 'Not that.' },
    { equation: `${find} = 2000`, says: 'Nor that.' },
  ];

  it('of a sum counts decimal places, not figures', () => {
    // 1200 + 5 = 1205: both known to the millimetre, so half of one may be lost. One figure of 5 would allow 50.
    const given = { a: '1200 mm', b: '5 mm' };
    expect(sum('H', given, '1205 mm')).toBe('right');
    expect(sum('H', given, '1205.4 mm')).toBe('right');
    expect(sum('H', given, '1206 mm')).toBe('wrong');
    expect(sum('H', given, '1200 mm')).toBe('wrong');
    // 12.34 + 5.6 = 17.94, known to the tenth: 17.9.
    expect(sum('H', { a: '12.34 mm', b: '5.6 mm' }, '17.9 mm')).toBe('right');
    expect(sum('H', { a: '12.34 mm', b: '5.6 mm' }, '17.8 mm')).toBe('wrong');
    // The place is that of the coarser term, whatever its unit: 1.2 m is known to 100 mm, 2 figures count.
    expect(sum('H', { a: '1.2 m', b: '5 mm' }, '1200 mm')).toBe('right');
  });

  it('of a difference has what its places leave, never fewer than two figures', () => {
    // 97.8 − 95.2 = 2.6, known to the tenth: three figures of the givens would ask for 2.60.
    expect(sum('b', { H: '97.8 mm', a: '95.2 mm' }, '2.6 mm')).toBe('right');
    expect(sum('b', { H: '97.8 mm', a: '95.2 mm' }, '2.64 mm')).toBe('right');
    expect(sum('b', { H: '97.8 mm', a: '95.2 mm' }, '2.66 mm')).toBe('wrong');
    // 97.8 − 97.2 = 0.6 has one figure left; two count, so 0.60 ± 0.005.
    expect(sum('b', { H: '97.8 mm', a: '97.2 mm' }, '0.6 mm')).toBe('right');
    expect(sum('b', { H: '97.8 mm', a: '97.2 mm' }, '0.62 mm')).toBe('wrong');
  });

  it('of a product of sums has the fewest figures after each sum has its own', () => {
    // 99.6 + 5 = 104.6, known to 1: three figures, 105. Times 2.000: 209.2 to three figures, ± 0.5.
    const given = { p: '99.6 N', q: '5 N', l: '2.000 m' };
    expect(sum('M', given, '209 J', 'test/pair')).toBe('right');
    expect(sum('M', given, '209.6 J', 'test/pair')).toBe('right');
    expect(sum('M', given, '210 J', 'test/pair')).toBe('wrong');
  });

  it('does not lose figures to a written nought', () => {
    // 12.34 + 0 = 12.34: nothing stands on it, and that is exact.
    expect(sum('H', { a: '12.34 mm', b: '0 mm' }, '12.34 mm')).toBe('right');
    expect(sum('H', { a: '12.34 mm', b: '0 mm' }, '12.4 mm')).toBe('wrong');
  });

  it('written with one figure too few is told so', () => {
    // h = 75 mm: v = √(2 × 9.80665 × 0.075) = 1.21285 m/s, which one figure makes 1.
    const marked = mark('1 m/s', { ...fixed, given: { h: '75 mm' } });
    expect(marked).toMatchObject({ verdict: 'wrong' });
    expect(marked.says[0]).toMatch(/at least two figures/);
  });

  it('of a temperature has its tolerance on the scale it is asked in', () => {
    // 100 mL at 20 °C doubles at 2 × 293.15 K = 586.30 K = 313.15 °C; 2 % of 313 is 6.3, not 2 % of 586.
    const warm = {
      ...fixed,
      formula: 'test/gas',
      find: 'T2',
      given: { V1: '100 mL', V2: '200 mL', T1: '20 °C', p1: '100 kPa', p2: '100 kPa' },
      mistakes: [
        { equation: 'T2 = T1', says: 'a' },
        { slip: 'celsius-for-kelvin', of: 'T1', says: 'Kelvin first.' },
      ],
    };
    expect(mark('319 °C', warm).verdict).toBe('right');
    expect(mark('321 °C', warm).verdict).toBe('wrong');
    expect(mark('586 K', warm)).toMatchObject({ verdict: 'right', unit: 'right', marks: 3 });
    expect(mark('313', warm)).toMatchObject({ verdict: 'right', unit: 'missing', marks: 2 });
    // 20 in place of 293.15 makes 40 K = −233.15 °C.
    expect(mark('−233.15 °C', warm).says[0]).toBe('Kelvin first.');
  });
});

describe('a mistake', () => {
  it('stated as an equation is named', () => {
    // √(9.80665 × 0.2) = √1.96133 = 1.40047
    expect(mark('1.4 m/s').says[0]).toBe('The 2 under the root is missing.');
  });

  it('stated as a change is named', () => {
    // √(2 × 9.80665 × 0.4) = √7.84532 = 2.80095
    expect(mark('2.80 m/s').says[0]).toBe('That is twice the height.');
  });

  it('of millimetres put in for metres is named without being written', () => {
    // √(2 × 9.80665 × 200) = √3922.66 = 62.631
    expect(mark('62.6 m/s').says[0]).toBe(
      'That is what comes out when h goes in as 200, its number in mm. The equation needs it in m.',
    );
  });

  it('of a thousand is named without being written', () => {
    expect(mark('1980 m/s').says[0]).toMatch(/thousand times too large/);
    expect(mark('0.00198 m/s').says[0]).toMatch(/thousand times too small/);
  });

  it('of °C for K is named without being written', () => {
    // 100 mL from 20 °C to 200 °C: right 100 × 473.15/293.15 = 161.40; with °C 100 × 200/20 = 1000.
    const gas = {
      ...fixed,
      formula: 'test/gas',
      find: 'V2',
      given: { V1: '100 mL', T1: '20 °C', T2: '200 °C', p1: '100 kPa', p2: '100 kPa' },
      mistakes: [
        { equation: 'V2 = V1', says: 'a' },
        { equation: 'V2 = 3*V1', says: 'b' },
      ],
    };
    expect(mark('161.4 mL', gas)).toMatchObject({ verdict: 'right', marks: 3 });
    expect(mark('1000 mL', gas).says[0]).toMatch(/needs kelvin/);
  });

  it('of a gauge reading for an absolute pressure is named without being written', () => {
    // p2 = 41.325 kPa absolute, 60 kPa below 101.325: right 100 × 100/41.325 = 241.98; with the gauge 166.67.
    const gas = {
      ...fixed,
      formula: 'test/gas',
      find: 'V2',
      given: { V1: '100 mL', T1: '20 °C', T2: '20 °C', p1: '100 kPa', p2: '41.325 kPa' },
      mistakes: [
        { equation: 'V2 = V1', says: 'a' },
        { equation: 'V2 = 9*V1', says: 'b' },
      ],
    };
    expect(mark('242 mL', gas).verdict).toBe('right');
    expect(mark('166.7 mL', gas).says[0]).toMatch(/gauge reading/);
    const named = [{ slip: 'gauge-for-absolute', of: 'p2', says: 'Mind the gauge.' }, gas.mistakes[0]];
    expect(mark('166.7 mL', { ...gas, mistakes: named }).says[0]).toBe('Mind the gauge.');
  });

  it('of a diameter for a radius is named without being written', () => {
    // r = 10 mm: π × 100 = 314.16 mm²; with 20 mm 1256.6 mm².
    const disc = {
      ...fixed,
      formula: 'test/disc',
      find: 'A',
      given: { r: '10 mm' },
      mistakes: [
        { equation: 'A = 2*pi*r*0.001', says: 'a' },
        { equation: 'A = r^2', says: 'b' },
      ],
    };
    expect(mark('314 mm²', disc).verdict).toBe('right');
    expect(mark('3.14 cm2', disc).verdict).toBe('right');
    expect(mark('1257 mm²', disc).says[0]).toMatch(/diameter in place of radius/);
  });

  it('of a diameter taken for a radius is named, written or not, and so is a radius put in for it', () => {
    // 30 kPa on 80 mm: 30 000 × π × 0.0016 = 150.8 N; with 80 mm as the radius 603.2 N; with 40 mm for d 37.7 N.
    const round = {
      ...fixed,
      formula: 'test/lid',
      find: 'F',
      given: { p: '30 kPa', d: '80 mm' },
      mistakes: [
        { equation: 'F = p * d^2', says: 'a' },
        { equation: 'F = p * d', says: 'b' },
      ],
    };
    expect(mark('151 N', round).verdict).toBe('right');
    expect(mark('0,1508 kN', round)).toMatchObject({ verdict: 'right', marks: 3 });
    expect(mark('603 N', round).says[0]).toMatch(/diameter taken for a radius/);
    expect(mark('37.7 N', round).says[0]).toMatch(/radius in place of diameter/);
    const named = [
      { slip: 'diameter-for-radius', of: 'd', says: 'Four times too large.' },
      round.mistakes[0],
    ];
    expect(mark('603 N', { ...round, mistakes: named }).says[0]).toBe('Four times too large.');
  });

  it('that fits nothing known says which way it is off', () => {
    expect(mark('9 m/s').says[0]).toMatch(/^Too large/);
    expect(mark('0.3 m/s').says[0]).toMatch(/^Too small/);
    expect(mark('-1.98 m/s').says[0]).toMatch(/wrong sign/);
    expect(mark('2.1 m/s').says[0]).toMatch(/^Close/);
  });
});

/** By hand: v = 1.98057 m/s as above, t = 0.075 / 1.98057 = 0.037868 s. */
describe('steps', () => {
  const exercise = as('steps', stepsFile);
  const variant = drawVariant(exercise, '1');

  it('right from start to end have every mark', () => {
    const marked = markSteps(exercise, variant, { speed: '1.98 m/s', time: '0.0379 s' }, library);
    expect(marked).toMatchObject({ speed: { marks: 2 }, time: { marks: 2, verdict: 'right' } });
  });

  it('carry an error forward: a later part is right on the learner’s own number', () => {
    // 1.40 m/s is wrong; 0.075 / 1.40 = 0.05357 s follows from it.
    const marked = markSteps(exercise, variant, { speed: '1.40 m/s', time: '0.0536 s' }, library);
    expect(marked['speed']).toMatchObject({ verdict: 'wrong', marks: 1 });
    expect(marked['time']).toMatchObject({ verdict: 'right', marks: 2 });
    expect(marked['time']?.says).toContain('It follows from your own earlier answer.');
  });

  it('accept the true answer of a later part after a wrong one', () => {
    const marked = markSteps(exercise, variant, { speed: '1.40 m/s', time: '0.0379 s' }, library);
    expect(marked['time']).toMatchObject({ verdict: 'right', says: [] });
  });

  it('leave an empty part unmarked and mark the next on the true value', () => {
    const marked = markSteps(exercise, variant, { time: '38 ms' }, library);
    expect(marked['speed']).toMatchObject({ verdict: 'unread', marks: 0 });
    expect(marked['time']).toMatchObject({ verdict: 'right', marks: 2 });
  });
});

describe('a key', () => {
  it('of a choice wants every right option and no other, and says why each chosen one is or is not', () => {
    const exercise = as('choice', choiceFile);
    expect(markChoice(exercise, [2, 0])).toMatchObject({ verdict: 'right', marks: 2 });
    expect(markChoice(exercise, [0])).toMatchObject({
      verdict: 'wrong',
      marks: 0,
      says: ['It gives time.', 'There is more to find.'],
    });
    expect(markChoice(exercise, [0, 1, 2])).toMatchObject({ verdict: 'wrong' });
    expect(markChoice(exercise, [])).toMatchObject({ verdict: 'wrong' });
  });

  it('of an order gives part marks for neighbours that are kept', () => {
    const exercise = as('order', orderFile);
    expect(markOrder(exercise, [0, 1, 2, 3])).toMatchObject({ verdict: 'right', marks: 3 });
    // weigh, melt, pour, skim keeps one pair of three: 3 marks × 1/3.
    expect(markOrder(exercise, [0, 1, 3, 2])).toMatchObject({ verdict: 'wrong', marks: 1 });
    expect(markOrder(exercise, [0, 1, 3, 2]).says[0]).toMatch(/^Place 3/);
    expect(markOrder(exercise, [3, 2, 1, 0])).toMatchObject({ marks: 0 });
  });
});
