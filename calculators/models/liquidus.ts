import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { diagrams } from './diagrams/diagrams.ts';
import { leverAt, liquidusOf, scheilAt, solidusOf } from './diagrams/freezing.ts';
import { known, noResult, numberAt, textAt } from './given.ts';
import { celsius } from './pour-plan/say.ts';

const zero = 273.15;

const inputs = {
  system: {
    kind: 'choice',
    name: 'the two metals',
    options: Object.fromEntries(
      Object.entries(diagrams).map(([id, { name, second }]) => [id, `${name}, by % ${second}`]),
    ),
    usual: 'ag-cu',
    first: true,
  },
  share: {
    kind: 'quantity',
    name: 'share of the second metal, by mass',
    sign: 'w',
    unit: '1',
    show: '%',
    range: [0, 1],
    why: 'a share of the whole; each diagram has its own end',
    usual: 0.075,
    first: true,
  },
  T: {
    kind: 'quantity',
    name: 'temperature to look at',
    unit: 'K',
    show: '°C',
    range: [800, 1400],
    why: 'from below the lowest freezing range here to above the highest',
    note: 'Leave it open for the two ends of freezing only.',
  },
} as const;

function run(given: Values): Result {
  const diagram = diagrams[textAt(given, 'system')];
  if (!diagram) return noResult('Choose one of the diagrams.');
  const percent = numberAt(given, 'share') * 100;
  const [least, most] = diagram.range;
  if (!(percent >= least - 1e-9 && percent <= most + 1e-9))
    return noResult(
      `The diagram of ${diagram.name} here goes from ${least} to ${most} % ${diagram.second}; nothing is guessed outside it. Use the data sheet of the alloy.`,
    );
  const top = liquidusOf(diagram, percent);
  const bottom = solidusOf(diagram, percent);
  if (!top) return noResult(`There is no liquidus for ${percent} % ${diagram.second} in the table.`);
  const steps: Step[] = [
    {
      id: 'liquidus',
      title: `Freezing begins, as ${top.branch.solid}`,
      value: top.celsius + zero,
      unit: '°C',
    },
  ];
  const notes: string[] = diagram.note === undefined ? [] : [diagram.note];
  if (bottom !== undefined)
    steps.push({ id: 'solidus', title: 'All solid, if it freezes slowly', value: bottom + zero, unit: '°C' });
  const pure = top.celsius - (bottom ?? 0) < 1e-6;

  /** Liquid left for the last reaction by Scheil's rule. */
  let rest: number | undefined;
  if (diagram.scheil && diagram.last && !pure && top.celsius > diagram.last.celsius + 1e-6) {
    const solid = scheilAt(top.branch, percent, diagram.last.celsius);
    if (solid !== undefined) {
      rest = 1 - solid;
      steps.push({
        id: 'rest',
        title: `Liquid left at ${Math.round(diagram.last.celsius)} °C when nothing spreads in the solid: it freezes by the ${diagram.last.kind}`,
        value: rest,
        unit: '%',
      });
    }
  }

  let lever: number | undefined;
  let scheil: number | undefined;
  const T = numberAt(given, 'T') - zero;
  if (Number.isFinite(T)) {
    const all = T >= top.celsius ? 0 : bottom !== undefined && T < bottom ? 1 : undefined;
    lever = all ?? leverAt(diagram, percent, T);
    if (lever === undefined)
      notes.push(
        `At ${celsius(T + zero)} the liquid is outside the diagram’s table, so the solid share is not known.`,
      );
    if (diagram.scheil) {
      if (all === 0) scheil = 0;
      else if (pure) scheil = T < top.celsius ? 1 : 0;
      else if (diagram.last?.kind === 'eutectic' && T < diagram.last.celsius) scheil = 1;
      else scheil = scheilAt(top.branch, percent, T);
      if (scheil === undefined)
        notes.push(
          'Scheil’s rule cannot be followed to this temperature: the last liquid goes on by reactions that are not in the table.',
        );
    }
    if (lever !== undefined)
      steps.push({
        id: 'solid',
        title: `Solid at ${celsius(T + zero)}, lever rule`,
        value: lever,
        unit: '%',
      });
    if (scheil !== undefined)
      steps.push({
        id: 'scheil',
        title: `Solid at ${celsius(T + zero)}, Scheil’s rule`,
        value: scheil,
        unit: '%',
      });
  }
  return {
    values: known({
      liquidus: top.celsius + zero,
      solidus: bottom === undefined ? undefined : bottom + zero,
      solid: lever,
      scheil,
      rest,
    }),
    steps,
    checks: [],
    notes,
  };
}

/**
 * Liquidus and solidus (K) of a two-metal alloy from its diagram's table, and the solid share at a temperature
 * by the lever rule (all has time to even out) and by Scheil's (nothing does). Refuses outside the table.
 */
export const liquidus = defineModel({
  id: 'charge/liquidus',
  title: 'Where an alloy of two metals begins and ends to freeze',
  answers:
    'At what temperature does this alloy begin to freeze, when is it solid, and how much is solid between?',
  inputs,
  outputs: {
    liquidus: { name: 'freezing begins', sign: 'T_liq', unit: 'K', show: '°C' },
    solidus: { name: 'all solid, frozen slowly', sign: 'T_sol', unit: 'K', show: '°C' },
    solid: { name: 'solid share, lever rule', sign: 'f_s', unit: '1', show: '%' },
    scheil: { name: 'solid share, Scheil’s rule', unit: '1', show: '%' },
    rest: { name: 'last liquid, Scheil’s rule', unit: '1', show: '%' },
  },
  run,
  assumes: [
    'two metals only: a third, even 1 %, moves the lines by some degrees',
    'straight lines between the table’s points',
    'the casting lies between the two rules, nearer Scheil’s',
  ],
  source: {
    key: 'massalski',
    at: 'assessed binary diagrams; each table names its own source',
    how: 'memory',
  },
  alsoSee: [
    { key: 'hayes-ag-cu', at: 'silver–copper', how: 'read' },
    { key: 'cost-507', at: 'aluminium–silicon, copper–zinc, copper–silicon', how: 'read' },
    { key: 'flemings', at: 'ch. 2 and 5, lever rule and Scheil’s equation', how: 'memory' },
  ],
  examples: [
    {
      title: 'Sterling at 850 °C, lever rule',
      given: { share: '7.5 %', T: '850 °C' },
      expect: { solid: '76.7 %' },
      from: {
        byHand:
          'Liquidus line between 10 % (877.3) and 15 % (843.5): 10 + 5 × 27.3/33.8 = 14.04 %. Solidus line between 5 % (862) and 7.5 % (803): 5 + 2.5 × 12/59 = 5.508 %. (14.04 − 7.5)/(14.04 − 5.508) = 6.538/8.530 = 0.7665',
      },
    },
  ],
  caution: [
    'Hotter than it needs to be costs gas, zinc fume and the mould: pour by the sheet, not by the liquidus alone.',
  ],
  monotone: [
    { input: 'T', output: 'solid', sense: '-' },
    { input: 'T', output: 'scheil', sense: '-' },
  ],
  words: ['phase diagram', 'solidus', 'freezing range', 'eutectic', 'Scheil', 'lever rule', 'fraction solid'],
});
