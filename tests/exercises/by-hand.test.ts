import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import type { Model } from '../../calculators/core/model.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import type { Library } from '../../calculators/exercises/answer.ts';
import type { Exercise, ExerciseKind, Givens, Variant } from '../../calculators/exercises/definition.ts';
import { markDesign } from '../../calculators/exercises/design.ts';
import {
  markChoice,
  markNumber,
  markOrder,
  markSteps,
  type Marked,
} from '../../calculators/exercises/marking.ts';
import { readExercise } from '../../calculators/exercises/reading.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';

/**
 * Exercises of the course worked on paper, right and wrong, with the marks each answer must get. The working
 * stands beside the numbers; no answer here was taken from the library.
 */
const library: Library = {
  formula: (id) => (formulas as Record<string, Formula>)[id],
  model: (id) => (models as Record<string, Model>)[id],
  materials: resolvedMaterials(materials),
};

function exercise<K extends ExerciseKind>(id: string, kind: K): Extract<Exercise, { kind: K }> {
  const file = new URL(`../../content/exercises/${id}.yaml`, import.meta.url);
  const read = readExercise(id, load(readFileSync(file, 'utf8')));
  if (read.kind !== kind) throw new Error(`${id} is a ${read.kind}`);
  return read as Extract<Exercise, { kind: K }>;
}

const variant = (given: Givens): Variant => ({ seed: 'by hand', given, order: [] });
const gets = ({ marks, verdict, says }: Marked, want: number, words?: RegExp): void => {
  expect({ marks, right: verdict === 'right' }).toMatchObject({ marks: want });
  if (words) expect(says.join(' ')).toMatch(words);
};

interface Tried {
  readonly answer: string;
  readonly marks: number;
  /** What the learner is told. */
  readonly says?: RegExp;
}
interface NumberByHand {
  readonly id: string;
  readonly given: Givens;
  readonly working: string;
  readonly tried: readonly Tried[];
}

const numbers: readonly NumberByHand[] = [
  {
    id: 'mass-of-the-clapper',
    given: { rho: '8700 kg/m³', V: '20.5 cm³' },
    working: '8.70 g/cm³ × 20.5 cm³ = 178.35 g',
    tried: [
      { answer: '178.35 g', marks: 3 },
      { answer: '178 g', marks: 3 },
      { answer: '0.178 kg', marks: 3 },
      { answer: '6.29 oz', marks: 3 },
      { answer: '178', marks: 2, says: /without its unit/ },
      { answer: '178 cm³', marks: 2, says: /unit does not fit/ },
      { answer: '178 000 g', marks: 1, says: /thousand times/ },
      // 20.5 ÷ 8.70, the division instead of the product
      { answer: '2.36 g', marks: 1, says: /divided/ },
      { answer: '20.5 g', marks: 1, says: /water/ },
      { answer: '190 g', marks: 1, says: /Close/ },
      { answer: 'about two hundred', marks: 0, says: /number/i },
    ],
  },
  {
    id: 'edge-from-head',
    given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '80 mm', dp: '15 kPa', p_gas: '0 kPa' },
    working: '7520 × 9.80665 × 0.080 = 5900 Pa; and 15 000 Pa make 20 900 Pa; 1.2 ÷ 20 900 = 5.74 × 10⁻⁵ m',
    tried: [
      { answer: '0.057 mm', marks: 3 },
      { answer: '57 µm', marks: 3 },
      { answer: '0.057', marks: 2, says: /without its unit/ },
      // 1.2 ÷ 5900
      { answer: '0.203 mm', marks: 1, says: /head alone/ },
      // 1.2 ÷ 15 000
      { answer: '0.080 mm', marks: 1, says: /suction alone/ },
      // 2 × 1.2 ÷ 20 900
      { answer: '0.115 mm', marks: 1, says: /three faces/ },
    ],
  },
  {
    id: 'contact-at-the-face',
    given: {
      b_1: '14000 J·s^-½/(m²·K)',
      T_1: '1080 °C',
      b_2: '1000 J·s^-½/(m²·K)',
      T_2: '20 °C',
    },
    working: '(14 000 × 1080 + 1000 × 20) ÷ 15 000 = 15 140 000 ÷ 15 000 = 1009.3 °C',
    tried: [
      { answer: '1009 °C', marks: 3 },
      { answer: '1282.5 K', marks: 3 },
      { answer: '1849 °F', marks: 3 },
      // (1080 + 20) ÷ 2
      { answer: '550 °C', marks: 1, says: /plain middle/ },
      // (1000 × 1080 + 14 000 × 20) ÷ 15 000
      { answer: '90.7 °C', marks: 1, says: /crossed/ },
    ],
  },
  {
    id: 'wax-into-bronze',
    given: { m_p: '4.50 g', rho_m: '8360 kg/m³', rho_p: '960 kg/m³', s: '2.0 %' },
    working: '4.50 ÷ 0.960 = 4.6875 cm³; ÷ 1.02³ = 1.061208 gives 4.41714 cm³; × 8.36 = 36.93 g',
    tried: [
      { answer: '36.9 g', marks: 3 },
      { answer: '37 g', marks: 3 },
      // 4.6875 × 8.36
      { answer: '39.19 g', marks: 1, says: /allowance is missing/ },
      // 39.1875 × 1.061208
      { answer: '41.59 g', marks: 1, says: /wrong way/ },
    ],
  },
  {
    id: 'how-high-it-throws',
    given: { p_gas: '12 kPa', h: '60 mm', dp: '0 kPa', rho: '7520 kg/m³' },
    working: '12 000 ÷ (7520 × 9.80665) = 0.1627 m; less 0.060 m leaves 0.103 m',
    tried: [
      { answer: '103 mm', marks: 3 },
      { answer: '0.103 m', marks: 3 },
      { answer: '163 mm', marks: 1, says: /Take off the head/ },
      // 12 000 ÷ (1000 × 9.80665) − 0.060
      { answer: '1164 mm', marks: 1, says: /water/ },
    ],
  },
  {
    id: 'modulus-of-a-bar',
    given: { V: '308 mm³', A: '860 mm²' },
    working: '308 ÷ 860 = 0.358 mm',
    tried: [
      { answer: '0.358 mm', marks: 2 },
      { answer: '0.36 mm', marks: 2 },
      { answer: '0.179 mm', marks: 1, says: /halved/ },
      { answer: '0.358', marks: 1, says: /without its unit/ },
    ],
  },
];

describe.each(numbers.map((row) => [row.id, row] as const))(
  '%s, worked by hand',
  (id, { given, tried, working }) => {
    it.each(tried.map((row) => [row.answer, row] as const))(
      `${working}: answered %s`,
      (answer, { marks, says }) => {
        gets(markNumber(exercise(id, 'number'), variant(given), answer, library), marks, says);
      },
    );
  },
);

describe('steps worked by hand', () => {
  it('what is left: 856.0 hPa at 1400 m in the table of the standard atmosphere, less 60.0 kPa', () => {
    const asked = exercise('what-is-left', 'steps');
    const given = variant({ p_g: '60.0 kPa', z: '1400 m' });
    const mark = (air: string, left: string) => markSteps(asked, given, { air, left }, library);
    const right = mark('85.60 kPa', '25.60 kPa');
    gets(right['air']!, 2);
    gets(right['left']!, 2);
    gets(mark('856 mbar', '256 mbar')['left']!, 2);
    // the sea’s air by mistake, and carried on: 101.325 − 60.0 = 41.3
    const carried = mark('101.3 kPa', '41.3 kPa');
    gets(carried['air']!, 1, /sea/);
    gets(carried['left']!, 2, /own earlier answer/);
    // At 300 m, 97.77 kPa by the table. Without the power 101.325 × (1 − 300 ÷ 44 331) = 100.64, and the sea has
    // 101.325: each lies within 1 % of the other, and the nearest is named.
    const low = variant({ p_g: '60.0 kPa', z: '300 m' });
    const air = (text: string) => markSteps(asked, low, { air: text, left: '' }, library)['air']!;
    gets(air('97.77 kPa'), 2);
    gets(air('101.3 kPa'), 1, /sea/);
    gets(air('100.6 kPa'), 1, /power is missing/);
    // the gauge added: 85.60 + 60.0
    gets(mark('85.60 kPa', '145.6 kPa')['left']!, 1, /downwards/);
  });

  it('the seal from wax to charge, with an early slip carried on at full marks', () => {
    const asked = exercise('seal-from-wax-to-charge', 'steps');
    const given = variant({ m_p: '2.80 g', m_sprue: '18.0 g', w: '1.5 %' });
    const mark = (part: string, charge: string, share: string) =>
      markSteps(asked, given, { part, charge, share }, library);
    // 2.80 ÷ 0.960 ÷ 1.018³ × 10.36 = 28.64 g; (28.64 + 18.0 + 3.0) ÷ 0.985 = 50.40 g; 28.64 ÷ 50.40 = 56.8 %
    const right = mark('28.64 g', '50.4 g', '56.8 %');
    expect(Object.values(right).map(({ marks }) => marks)).toEqual([3, 2, 2]);
    // without the allowance 30.22 g; (30.22 + 21.0) ÷ 0.985 = 52.00 g; 30.22 ÷ 52.00 = 58.1 %
    const slipped = mark('30.2 g', '52.0 g', '58.1 %');
    expect(Object.values(slipped).map(({ marks }) => marks)).toEqual([1, 2, 2]);
    expect(slipped['part']!.says.join(' ')).toMatch(/allowance/);
    // a blank first part takes nothing from the others
    const blank = mark('', '50.4 g', '56.8 %');
    expect(Object.values(blank).map(({ marks }) => marks)).toEqual([0, 2, 2]);
  });

  it('holes in the keeper: 998.2 × 92.40 ÷ 10.90 = 8462 kg/m³, and 1 − 8462 ÷ 8720 = 2.96 %', () => {
    const asked = exercise('holes-in-the-keeper', 'steps');
    const given = variant({ m_a: '92.40 g', m_w: '81.50 g' });
    const mark = (dense: string, holes: string) => markSteps(asked, given, { dense, holes }, library);
    const right = mark('8.462 g/cm³', '2.96 %');
    expect([right['dense']!.marks, right['holes']!.marks]).toEqual([3, 2]);
    gets(mark('8462 kg/m³', '97.0 %')['holes']!, 1, /share of metal/);
    // 998.2 × 81.50 ÷ 10.90
    gets(mark('7464 kg/m³', '')['dense']!, 1, /reading in water/);
  });
});

describe('judgement marked by hand', () => {
  it('a choice of two right ones is all or nothing, and says there is more', () => {
    const asked = exercise('gauge-that-stalls', 'choice');
    gets(markChoice(asked, [3, 0]), 2);
    gets(markChoice(asked, [0]), 0, /more to find/);
    gets(markChoice(asked, [0, 1, 3]), 0, /29 inHg is not there/);
  });

  it('a diagnosis wants cause and remedy', () => {
    const asked = exercise('a-path-that-closed', 'diagnose');
    gets(markChoice(asked, [0, 3]), 4);
    gets(markChoice(asked, [1]), 0, /Behind a solid plate/);
  });

  it('an order keeps the marks of the neighbours that are right', () => {
    const asked = exercise('dressing-in-order', 'order');
    gets(markOrder(asked, [0, 1, 2, 3, 4]), 2);
    // rehearse, boots, then lift before the gloves: two of four neighbours stand, one mark of two
    gets(markOrder(asked, [0, 1, 4, 2, 3]), 1, /Place 3/);
    gets(markOrder(asked, [4, 3, 2, 1, 0]), 0, /Place 1/);
  });

  it('a design is marked by computing the plan, and more than one answer is right', () => {
    const asked = exercise('shield-that-fills', 'design');
    const mark = (changes: Givens) =>
      markDesign(asked, changes, library.model('pour-plan')!, library.materials);
    expect(mark({ 'suction.gauge': '15 kPa', head: '60 mm' })).toMatchObject({ verdict: 'right', marks: 4 });
    expect(mark({ 'suction.gauge': '20 kPa', head: '60 mm' })).toMatchObject({ verdict: 'right', marks: 4 });
    expect(mark({})).toMatchObject({ verdict: 'wrong' });
    expect(mark({ metal: 'sterling' })).toMatchObject({ verdict: 'wrong', marks: 0 });
    expect(mark({ head: 'a hand' })).toMatchObject({ verdict: 'unread', marks: 0 });
  });
});
