import { parseEquation, parseExpression } from '../core/expression.ts';
import { compile } from '../core/program.ts';
import type { SymbolSpec } from '../core/formula.ts';
import type { Input, Scalar, Values } from '../core/model.ts';
import { plainNumber, unitLabel } from '../core/print.ts';
import { constantsOf } from '../core/solve.ts';
import { equationUnit } from '../core/sum-units.ts';
import { fromSI, toSI, unit, type UnitSymbol } from '../core/units.ts';
import { answerOf, numbersOf, type Question } from './answer.ts';
import type { Mistake, Slip } from './definition.ts';

/** A value a recognised mistake leads to, in SI, with what to say about it. */
export interface WrongWay {
  readonly value: number;
  readonly says: string;
}

const atmosphere = 101325;

const led = new WeakMap<Question, WeakMap<readonly Mistake[], readonly WrongWay[]>>();

/** Where each mistake leads with these numbers: those the exercise names first, then the slips anyone can make. */
export function wrongWays(question: Question, mistakes: readonly Mistake[]): readonly WrongWay[] {
  const ofQuestion = led.get(question) ?? new WeakMap<readonly Mistake[], readonly WrongWay[]>();
  led.set(question, ofQuestion);
  const known = ofQuestion.get(mistakes) ?? [
    ...mistakes.flatMap((mistake) => authored(question, mistake)),
    ...common(question),
  ];
  ofQuestion.set(mistakes, known);
  return known;
}

/** The values one mistake of the file leads to. Throws a sentence when it does not fit the calculation. */
export function authored(question: Question, mistake: Mistake): WrongWay[] {
  const { says } = mistake;
  switch (mistake.kind) {
    case 'equation':
      return ways([byEquation(question, mistake.equation)], says);
    case 'change': {
      const values = { ...question.values };
      for (const [name, text] of Object.entries(mistake.change)) values[name] = changed(question, name, text);
      return ways([answerWith(question, values)], says);
    }
    case 'slip':
      return ways(bySlip(question, mistake.slip, mistake.of), says);
  }
}

const ways = (values: readonly (number | undefined)[], says: string): WrongWay[] =>
  values.flatMap((value) => (value === undefined || !Number.isFinite(value) ? [] : [{ value, says }]));

function answerWith(question: Question, values: Values): number | undefined {
  const answer = answerOf(question, values);
  return answer.ok ? answer.value : undefined;
}

const specsOf = ({ calculation }: Question): Readonly<Record<string, SymbolSpec | Input>> =>
  'formula' in calculation ? calculation.formula.symbols : calculation.model.inputs;

function specOf(
  question: Question,
  name: string,
): { name: string; unit: UnitSymbol; sign?: string } | undefined {
  const spec = name === question.find ? question.sought : specsOf(question)[name];
  return spec && 'unit' in spec ? spec : undefined;
}

/** An equation is in SI, or in its own units where the formula is empirical. */
function byEquation(question: Question, text: string): number {
  const { left, right } = parseEquation(text);
  if (left.kind !== 'name' || left.name !== question.find) {
    throw new Error(`the mistake "${text}" must have ${question.find} alone on its left`);
  }
  const empirical = 'formula' in question.calculation && question.calculation.formula.empirical === true;
  const value = compile(right)(environment(question));
  return empirical ? toSI(value, question.sought.unit) : value;
}

function environment(question: Question): Record<string, number> {
  const { calculation } = question;
  const si = {
    ...('formula' in calculation ? constantsOf(calculation.formula) : {}),
    ...numbersOf(question.values),
  };
  if (!('formula' in calculation) || !calculation.formula.empirical) return si;
  return Object.fromEntries(
    Object.entries(si).map(([name, value]) => [name, fromSI(value, specOf(question, name)?.unit ?? '1')]),
  );
}

function changed(question: Question, name: string, text: string): Scalar {
  if (!Object.hasOwn(specsOf(question), name))
    throw new Error(`the mistake changes "${name}", which is not an input`);
  const spec = specsOf(question)[name]!;
  if ('kind' in spec && spec.kind !== 'quantity') return text;
  return compile(parseExpression(text))(environment(question));
}

function bySlip(question: Question, slip: Slip, of: string | undefined): (number | undefined)[] {
  const answer = answerWith(question, question.values);
  if (answer === undefined) return [];
  const onAnswer = of === undefined || of === question.find;
  const value = of === undefined ? undefined : question.values[of];
  if (!onAnswer && typeof value !== 'number')
    throw new Error(`the slip ${slip} is of "${of}", which is not given`);
  const withChange = (change: (x: number) => number): number | undefined =>
    typeof value === 'number'
      ? answerWith(question, { ...question.values, [of!]: change(value) })
      : undefined;
  switch (slip) {
    case 'factor-1000':
      return onAnswer
        ? [answer * 1000, answer / 1000]
        : [withChange((x) => x * 1000), withChange((x) => x / 1000)];
    case 'diameter-for-radius':
      if (onAnswer) return [answer * 2, answer / 2];
      // A radius given as the whole width, or a whole width taken for a radius: either way twice as wide.
      return [withChange((x) => x * 2)];
    case 'celsius-for-kelvin':
      if (!onAnswer) return [withChange((x) => x - 273.15)];
      if (isScale(question.sought.unit)) return [answer + 273.15, answer - 273.15];
      return [
        answerWith(question, {
          ...question.values,
          ...Object.fromEntries(temperaturesOf(question).map(([name, x]) => [name, x - 273.15])),
        }),
      ];
    case 'gauge-for-absolute':
      if (!onAnswer) return [withChange((p) => Math.abs(p - atmosphere))];
      return [Math.abs(answer - atmosphere), answer + atmosphere];
  }
}

const isScale = (symbol: string): boolean => unit(symbol).kind === 'temperature';

const temperaturesOf = (question: Question): [string, number][] =>
  Object.entries(numbersOf(question.values)).filter(([name]) => isScale(specOf(question, name)?.unit ?? '1'));

/** Slips the symbols themselves allow: a number not converted, a diameter, a gauge reading, a factor of a thousand. */
function common(question: Question): WrongWay[] {
  const found: WrongWay[] = [];
  const with_ = (name: string, x: number): number | undefined =>
    answerWith(question, { ...question.values, [name]: x });
  for (const [name, value] of Object.entries(numbersOf(question.values))) {
    const spec = specOf(question, name);
    if (!spec) continue;
    const sign = spec.sign ?? name;
    const as = question.written[name];
    const home =
      'formula' in question.calculation ? equationUnit(question.calculation.formula, name) : spec.unit;
    if (as && as.unit !== home) {
      found.push(
        ...ways(
          [with_(name, toSI(as.written, home))],
          `That is what comes out when ${sign} goes in as ${plainNumber(as.written)}, its number in ${unitLabel(as.unit)}. The equation needs it in ${unitLabel(home) || 'plain numbers'}.`,
        ),
      );
    }
    if (/\bradius\b/i.test(spec.name)) {
      found.push(
        ...ways(
          [with_(name, value * 2)],
          `That is what comes out with the diameter in place of ${spec.name}.`,
        ),
      );
    }
    if (/\bdiameter\b/i.test(spec.name)) {
      found.push(
        ...ways([with_(name, value / 2)], `That is what comes out with the radius in place of ${spec.name}.`),
        ...ways([with_(name, value * 2)], `That is what comes out with ${spec.name} taken for a radius.`),
      );
    }
    if (/\babsolute\b/i.test(spec.name) && unit(spec.unit).dimension.join() === unit('Pa').dimension.join()) {
      found.push(
        ...ways(
          [with_(name, Math.abs(value - atmosphere))],
          `That is what comes out with the gauge reading in place of ${spec.name}. A gauge reads the difference from the air outside.`,
        ),
      );
    }
  }
  const scales = temperaturesOf(question);
  if (scales.length > 1) {
    const cold = Object.fromEntries(scales.map(([name, x]) => [name, x - 273.15]));
    found.push(
      ...ways(
        [answerWith(question, { ...question.values, ...cold })],
        'That is what comes out with the temperatures in °C. This equation needs kelvin: add 273.15.',
      ),
    );
  }
  const answer = answerWith(question, question.values);
  if (answer === undefined) return found;
  if (isScale(question.sought.unit)) {
    found.push(
      ...ways([answer + 273.15], 'That is the number in kelvin. Take off 273.15 for °C.'),
      ...ways([answer - 273.15], 'Your answer is 273 degrees low: the number is already in °C.'),
    );
  } else {
    found.push(
      ...ways(
        [answer * 1000],
        'Your answer is a thousand times too large. Look at each step from milli or to kilo.',
      ),
      ...ways(
        [answer / 1000],
        'Your answer is a thousand times too small. Look at each step from milli or to kilo.',
      ),
    );
  }
  return found;
}
