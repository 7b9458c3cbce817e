import type { Formula } from '../../../core/formula.ts';
import { unitLabel } from '../../../core/print.ts';
import type {
  ChoiceExercise,
  DiagnoseExercise,
  Exercise,
  Givens,
  NumberExercise,
  OrderExercise,
  StepsExercise,
  TextExercise,
} from '../../definition.ts';
import { partNumbers, withNumbers } from '../../question-text.ts';
import { marksOf } from '../set-file.ts';
import { Unsayable, float, minus, operator, variable } from './expressions.ts';
import {
  allowanceOf,
  askedIn,
  carriedOn,
  fixed,
  safe,
  templateFor,
  type Known,
  type Template,
} from './numbers.ts';
import { element, escaped } from './xml.ts';

const namespace = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const paragraph = (...inner: string[]): string => element('p', {}, ...inner);

/** One exercise as a QTI 3.0 item. Throws `Unsayable` with the reason where QTI has no words for it. */
export function itemFor(exercise: Exercise, formulas: Readonly<Record<string, Formula>>): string {
  switch (exercise.kind) {
    case 'number':
      return numberItem(exercise, formulas);
    case 'steps':
      return stepsItem(exercise, formulas);
    case 'choice':
    case 'diagnose':
      return choiceItem(exercise);
    case 'order':
      return orderItem(exercise);
    case 'text':
      return textItem(exercise);
    case 'design':
      throw new Unsayable('a plan is judged by a model, which QTI cannot compute');
  }
}

interface Parts {
  readonly declarations?: readonly string[];
  readonly outcomes?: readonly string[];
  readonly template?: Template;
  readonly computed?: readonly string[];
  readonly body: readonly string[];
  readonly processing?: readonly string[];
  readonly byHand?: boolean;
}

function item(exercise: Exercise, parts: Parts): string {
  const {
    declarations = [],
    outcomes = [],
    template,
    computed = [],
    body,
    processing,
    byHand = false,
  } = parts;
  const marks = marksOf(exercise);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element(
    'qti-assessment-item',
    {
      xmlns: namespace,
      identifier: exercise.id,
      title: exercise.title,
      adaptive: false,
      'time-dependent': false,
      'xml:lang': 'en-GB',
    },
    ...declarations,
    element(
      'qti-outcome-declaration',
      {
        identifier: 'SCORE',
        cardinality: 'single',
        'base-type': 'float',
        'normal-maximum': marks,
        'normal-minimum': 0,
        ...(byHand && { 'external-scored': 'human' }),
      },
      element('qti-default-value', {}, element('qti-value', {}, '0')),
    ),
    ...outcomes,
    ...(template?.declarations ?? []),
    ...(template && template.processing.length + computed.length > 0
      ? [element('qti-template-processing', {}, ...template.processing, ...computed)]
      : []),
    element('qti-item-body', {}, ...body),
    ...(processing ? [element('qti-response-processing', {}, ...processing)] : []),
  )}\n`;
}

/** The wording with varied numbers as the item draws them, and the others as they stand. */
function wording(text: string, given: Givens, template: Template): string[] {
  return text.split(/\n\s*\n/).map((block) =>
    paragraph(
      ...block.split(/(\{\w+(?:\.\w+)*\})/).map((piece) => {
        const name = /^\{(.+)\}$/.exec(piece)?.[1];
        const drawn = name === undefined ? undefined : template.printed[name];
        if (drawn !== undefined) return element('qti-printed-variable', { identifier: drawn });
        return escaped(withNumbers(piece, given));
      }),
    ),
  );
}

/** A given as it stands in a sentence. */
const shown = (text: string): string => withNumbers('{x}', { x: text });

const response = (identifier: string): string =>
  element('qti-response-declaration', { identifier, cardinality: 'single', 'base-type': 'float' });
const entry = (identifier: string, name: string, unitText: string): string =>
  paragraph(
    escaped(`${name.charAt(0).toUpperCase()}${name.slice(1)}: `),
    element('qti-text-entry-interaction', { 'response-identifier': identifier, 'expected-length': 12 }),
    escaped(` ${unitText}`),
  );

const templateFloat = (identifier: string): string =>
  element('qti-template-declaration', { identifier, cardinality: 'single', 'base-type': 'float' });
const setTemplate = (identifier: string, value: string): string =>
  element('qti-set-template-value', { identifier }, value);

const within = (given: string, answer: string, allow: string): string =>
  element('qti-lte', {}, operator('abs', minus(given, answer)), allow);
const scored = (test: string, outcome: string, marks: number): string =>
  element(
    'qti-response-condition',
    {},
    element(
      'qti-response-if',
      {},
      test,
      element('qti-set-outcome-value', { identifier: outcome }, float(marks)),
    ),
    element('qti-response-else', {}, element('qti-set-outcome-value', { identifier: outcome }, float(0))),
  );
const answered = (identifier: string): string =>
  element('qti-not', {}, element('qti-is-null', {}, variable(identifier)));

function formulaOf(id: string | undefined, formulas: Readonly<Record<string, Formula>>): Formula {
  if (id === undefined) throw new Unsayable('it is computed by a model, which QTI cannot compute');
  const formula = formulas[id];
  if (!formula) throw new Unsayable(`there is no formula "${id}"`);
  return formula;
}

function numberItem(exercise: NumberExercise, formulas: Readonly<Record<string, Formula>>): string {
  const formula = formulaOf(exercise.formula, formulas);
  const template = templateFor(exercise.vary, shown);
  const asked = askedIn(
    exercise,
    formula,
    (name, text, unitOf) => template.known(name, unitOf) ?? fixed(text, unitOf, name),
    exercise.given,
  );
  const allow = allowanceOf(exercise.tolerance, asked.answerUnit, variable('ANSWER'), asked.figures);
  const sought = formula.symbols[exercise.find]!;
  return item(exercise, {
    declarations: [response('RESPONSE')],
    template: {
      ...template,
      declarations: [...template.declarations, templateFloat('ANSWER'), templateFloat('ALLOWED')],
    },
    computed: [setTemplate('ANSWER', asked.answer), setTemplate('ALLOWED', allow)],
    body: [
      ...wording(exercise.question, exercise.given, template),
      entry('RESPONSE', sought.name, unitLabel(asked.answerUnit)),
    ],
    processing: [
      scored(
        element(
          'qti-and',
          {},
          answered('RESPONSE'),
          within(variable('RESPONSE'), variable('ANSWER'), variable('ALLOWED')),
        ),
        'SCORE',
        exercise.marks,
      ),
    ],
  });
}

/** Each part is right with the true earlier answers, or with the learner's own. */
function stepsItem(exercise: StepsExercise, formulas: Readonly<Record<string, Formula>>): string {
  const template = templateFor(exercise.vary, shown);
  const truth: Record<string, Known> = {};
  const own: Record<string, Known> = {};
  const declarations: string[] = [];
  const outcomes: string[] = [];
  const computed: string[] = [];
  const templates: string[] = [];
  const body = wording(exercise.question, exercise.given, template);
  const processing: string[] = [];
  for (const part of exercise.parts) {
    const formula = formulaOf(part.formula, formulas);
    const tag = safe(part.id);
    const givenBy =
      (earlier: Readonly<Record<string, Known>>) =>
      (name: string, text: string, unitOf: Parameters<typeof fixed>[1]): Known => {
        const reference = text.slice(1);
        if (text.startsWith('$')) return earlier[reference]!;
        if (text.startsWith('='))
          return template.known(reference, unitOf) ?? fixed(exercise.given[reference]!, unitOf, reference);
        return fixed(text, unitOf, name);
      };
    const asked = askedIn(part, formula, givenBy(truth), part.given);
    const allow = allowanceOf(exercise.tolerance, asked.answerUnit, variable(`ANSWER_${tag}`), asked.figures);
    templates.push(templateFloat(`ANSWER_${tag}`), templateFloat(`ALLOWED_${tag}`));
    computed.push(setTemplate(`ANSWER_${tag}`, asked.answer), setTemplate(`ALLOWED_${tag}`, allow));
    declarations.push(response(`RESPONSE_${tag}`));
    const carried = Object.values(part.given).some((text) => text.startsWith('$'));
    const mine = `OWN_ANSWER_${tag}`;
    const outcome = (identifier: string): string =>
      element('qti-outcome-declaration', { identifier, cardinality: 'single', 'base-type': 'float' });
    outcomes.push(outcome(`SCORE_${tag}`), outcome(`OWN_${tag}`), ...(carried ? [outcome(mine)] : []));
    const given = variable(`RESPONSE_${tag}`);
    const tests = [within(given, variable(`ANSWER_${tag}`), variable(`ALLOWED_${tag}`))];
    if (carried) {
      const followed = askedIn(part, formula, givenBy(own), part.given);
      processing.push(element('qti-set-outcome-value', { identifier: mine }, followed.answer));
      const ownAllow = allowanceOf(exercise.tolerance, asked.answerUnit, variable(mine), asked.figures);
      tests.push(element('qti-and', {}, answered(mine), within(given, variable(mine), ownAllow)));
    }
    processing.push(
      scored(
        element(
          'qti-and',
          {},
          answered(`RESPONSE_${tag}`),
          tests.length > 1 ? element('qti-or', {}, ...tests) : tests[0]!,
        ),
        `SCORE_${tag}`,
        part.marks,
      ),
      // What a later part carries on with: the learner's own number, or the true one where there is none.
      element(
        'qti-response-condition',
        {},
        element(
          'qti-response-if',
          {},
          answered(`RESPONSE_${tag}`),
          element('qti-set-outcome-value', { identifier: `OWN_${tag}` }, given),
        ),
        element(
          'qti-response-else',
          {},
          element('qti-set-outcome-value', { identifier: `OWN_${tag}` }, variable(`ANSWER_${tag}`)),
        ),
      ),
    );
    truth[part.id] = carriedOn(`ANSWER_${tag}`, asked);
    own[part.id] = carriedOn(`OWN_${tag}`, asked);
    body.push(
      ...wording(part.question, partNumbers(exercise.given, part.given), template),
      entry(`RESPONSE_${tag}`, formula.symbols[part.find]!.name, unitLabel(asked.answerUnit)),
    );
  }
  const total = element('qti-sum', {}, ...exercise.parts.map(({ id }) => variable(`SCORE_${safe(id)}`)));
  processing.push(element('qti-set-outcome-value', { identifier: 'SCORE' }, total));
  return item(exercise, {
    declarations,
    outcomes,
    template: { ...template, declarations: [...template.declarations, ...templates] },
    computed,
    body,
    processing,
  });
}

const correct = (values: readonly string[]): string =>
  element('qti-correct-response', {}, ...values.map((value) => element('qti-value', {}, value)));
const matched = (marks: number): string =>
  scored(
    element('qti-match', {}, variable('RESPONSE'), element('qti-correct', { identifier: 'RESPONSE' })),
    'SCORE',
    marks,
  );

function choiceItem(exercise: ChoiceExercise | DiagnoseExercise): string {
  const right = exercise.options.flatMap((option, at) => (option.right ? [`option-${at + 1}`] : []));
  const many = right.length > 1;
  return item(exercise, {
    declarations: [
      element(
        'qti-response-declaration',
        { identifier: 'RESPONSE', cardinality: many ? 'multiple' : 'single', 'base-type': 'identifier' },
        correct(right),
      ),
    ],
    body: [
      paragraph(escaped(exercise.question)),
      ...(exercise.kind === 'diagnose'
        ? [element('ul', {}, ...exercise.evidence.map((text) => element('li', {}, escaped(text))))]
        : []),
      element(
        'qti-choice-interaction',
        {
          'response-identifier': 'RESPONSE',
          shuffle: true,
          'max-choices': many ? exercise.options.length : 1,
        },
        element('qti-prompt', {}, many ? 'Choose every one that fits.' : 'Choose one.'),
        ...exercise.options.map(({ text }, at) =>
          element('qti-simple-choice', { identifier: `option-${at + 1}` }, escaped(text)),
        ),
      ),
    ],
    processing: [matched(exercise.marks)],
  });
}

function orderItem(exercise: OrderExercise): string {
  const ids = exercise.items.map((_, at) => `item-${at + 1}`);
  return item(exercise, {
    declarations: [
      element(
        'qti-response-declaration',
        { identifier: 'RESPONSE', cardinality: 'ordered', 'base-type': 'identifier' },
        correct(ids),
      ),
    ],
    body: [
      paragraph(escaped(exercise.question)),
      element(
        'qti-order-interaction',
        { 'response-identifier': 'RESPONSE', shuffle: true },
        ...exercise.items.map((text, at) =>
          element('qti-simple-choice', { identifier: ids[at]! }, escaped(text)),
        ),
      ),
    ],
    processing: [matched(exercise.marks)],
  });
}

function textItem(exercise: TextExercise): string {
  return item(exercise, {
    declarations: [
      element('qti-response-declaration', {
        identifier: 'RESPONSE',
        cardinality: 'single',
        'base-type': 'string',
      }),
    ],
    body: [
      paragraph(escaped(exercise.question)),
      element('qti-extended-text-interaction', { 'response-identifier': 'RESPONSE', 'expected-lines': 6 }),
      element(
        'qti-rubric-block',
        { use: 'scoring', view: 'scorer' },
        element(
          'qti-content-body',
          {},
          element('ul', {}, ...exercise.rubric.map((text) => element('li', {}, escaped(text)))),
        ),
      ),
    ],
    byHand: true,
  });
}
