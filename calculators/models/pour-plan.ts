import { defineModel } from '../core/model.ts';
import { crucibleInputs, metalInputs, mouldInputs } from './pour-plan/inputs-material.ts';
import { ownInputs } from './pour-plan/inputs-own.ts';
import { partInputs } from './pour-plan/inputs-part.ts';
import { pourInputs } from './pour-plan/inputs-pour.ts';
import { shopInputs } from './pour-plan/inputs-shop.ts';
import { outputs } from './pour-plan/outputs.ts';
import { runPlan } from './pour-plan/run.ts';

/** The whole of one pour: what each formula of the course says about the part you want to cast this afternoon. */
export const pourPlan = defineModel({
  id: 'pour-plan',
  title: 'Pour plan',
  answers:
    'Will this part fill, be sharp, stay out of the sand and come out sound, and what would have to change?',
  inputs: {
    ...partInputs,
    ...metalInputs,
    ...mouldInputs,
    ...pourInputs,
    ...crucibleInputs,
    ...shopInputs,
    ...ownInputs,
  },
  outputs,
  run: (inputs) => runPlan(inputs, { warming: true }),
  assumes: [
    'each line is one formula with its own assumptions; press it to read them',
    'the front of the metal meets fresh sand, so the interface form of the flow time leads',
    'the sprue is full before the thin sections are asked to fill',
    'sections reached through another share its flow; joints are not taken off the cooled surface',
    'a margin of 1.5 on filling and entering, 3 on the strength of sand: starting values',
  ],
  source: {
    key: 'trade-practice',
    at: 'the order of the decisions; each formula has its own source',
    how: 'common practice',
  },
  examples: [],
  caution: [
    'A plan that holds is no promise. Wear the kit, keep water away, pour over dry sand, and follow your local rules.',
    'Starting values marked as estimates are there to be replaced by what your own pours show.',
  ],
  monotone: [
    { input: 'mould.temperature', output: 'sections.1.freeze', sense: '+' },
    { input: 'head', output: 'gate.speed', sense: '+' },
    { input: 'suction.gauge', output: 'edge', sense: '-' },
    { input: 'sand.span', output: 'sand.bending', sense: '+' },
  ],
  words: ['lamp shield', 'plan', 'will it fill', 'checklist'],
});
