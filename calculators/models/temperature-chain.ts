import { defineModel, type Input, type Result, type Values } from '../core/model.ts';
import { pourRate } from '../formulas/filling/pour-rate.ts';
import { known, noResult, notAboveNought, numberAt, rowsAt, textAt } from './given.ts';
import { alongRun, workChain } from './pour-plan/chain.ts';
import { borrow } from './pour-plan/borrow.ts';
import { metalInputs, mouldInputs } from './pour-plan/inputs-material.ts';
import { pourInputs } from './pour-plan/inputs-pour.ts';
import { shopInputs } from './pour-plan/inputs-shop.ts';
import { say } from './pour-plan/say.ts';
import { startWorking } from './pour-plan/working.ts';

const inputs = {
  ...borrow(shopInputs, 'melt.temperature'),
  'charge.mass': {
    kind: 'quantity',
    name: 'metal poured',
    note: 'The less there is, the faster it cools.',
    group: 'Melt',
    first: true,
    unit: 'kg',
    show: 'g',
    range: [0.001, 20],
    why: 'from a bead to what one person lifts',
    usual: 0.11,
  },
  ...borrow(shopInputs, 'melt.carry', 'melt.mouth', 'melt.air', 'melt.cup', 'room.temperature'),
  ...borrow(pourInputs, 'pour.seconds', 'sprue.diameter', 'sprue.length'),
  ...borrow(
    metalInputs,
    'metal',
    'metal.liquidus',
    'metal.density.liquid',
    'metal.heat.liquid',
    'metal.emissivity',
  ),
  ...borrow(mouldInputs, 'mould', 'mould.temperature', 'mould.interface'),
  runs: {
    kind: 'list',
    name: 'sections the metal runs through after the gate, in order',
    group: 'Part',
    first: true,
    most: 8,
    usual: [{ name: 'Frame', thickness: 0.0045, width: 0.0045, length: 0.045, speed: 0.3 }],
    item: {
      name: { kind: 'text', name: 'name', usual: '' },
      thickness: {
        kind: 'quantity',
        name: 'thickness',
        unit: 'm',
        show: 'mm',
        range: [0.0003, 0.05],
        why: 'thinner does not fill in practice; thicker is no small casting',
      },
      width: {
        kind: 'quantity',
        name: 'width',
        unit: 'm',
        show: 'mm',
        range: [0.0003, 0.3],
        why: 'from a web to a plate as wide as a bench flask',
      },
      length: {
        kind: 'quantity',
        name: 'length run',
        unit: 'm',
        show: 'mm',
        range: [0.001, 2],
        why: 'from a stud to the longest channel a small charge can fill',
      },
      speed: {
        kind: 'quantity',
        name: 'speed of the metal in it',
        unit: 'm/s',
        range: [0.01, 5],
        why: 'slower has stopped; faster is a jet',
      },
    },
  },
} as const satisfies Readonly<Record<string, Input>>;

/** Past this share of its temperature over the room the loss no longer goes at the rate it starts with. */
const mostLost = 0.2;

function run(given: Values): Result {
  const positive = [
    'melt.temperature',
    'charge.mass',
    'pour.seconds',
    'sprue.diameter',
    'metal.density.liquid',
    'metal.heat.liquid',
    'mould.temperature',
    'mould.interface',
  ] as const;
  const bad = notAboveNought(given, inputs, ...positive);
  if (bad !== undefined) return noResult(bad);
  const working = startWorking(given);
  const mass = numberAt(given, 'charge.mass');
  const pour = working.work('pour.flow', 'Flow as it is poured', pourRate, {
    m: mass,
    rho: numberAt(given, 'metal.density.liquid'),
    t: numberAt(given, 'pour.seconds'),
  });
  const gate = workChain(working, { mass }, { pour });
  const lost = working.kept.get('chain.carry') ?? Number.NaN;
  const over = numberAt(given, 'melt.temperature') - numberAt(given, 'room.temperature');
  if (!(lost <= mostLost * over))
    return noResult(
      `At the rate it starts with the metal would lose ${say(lost, 'Δ°C')} on the walk, more than a fifth of what it is above the room: it is no pour any more. Set the furnace beside the mould, cover the melt, or melt more.`,
    );
  let here = gate;
  rowsAt(given, 'runs').forEach((row, index) => {
    const name = textAt(row, 'name') || `Section ${index + 1}`;
    const [t, w, length, speed] = ['thickness', 'width', 'length', 'speed'].map((field) =>
      numberAt(row, field),
    );
    if (!(t! > 0 && w! > 0 && length! > 0 && speed! > 0)) {
      working.note(`${name} is left out: it needs a thickness, a width, a length and a speed above nought.`);
      return;
    }
    here = alongRun(working, `runs.${index + 1}`, `Temperature after ${name.toLowerCase()}`, {
      from: here,
      length: length!,
      modulus: (t! * w!) / (2 * (t! + w!)),
      speed: speed!,
    });
  });
  const left = here - numberAt(given, 'metal.liquidus');
  if (left < 0)
    working.note(
      'The metal is below its liquidus before the end: part of its latent heat is spent, so it is a little warmer than the line says, and thick.',
    );
  return {
    values: known({
      lost,
      cup: working.kept.get('chain.cup'),
      gate,
      end: here,
      superheat: left,
    }),
    steps: working.steps,
    checks: [],
    notes: working.notes,
  };
}

/**
 * The temperature of the metal at each step of its way: furnace, walk, cup, sprue, gate and the sections after
 * it. Losses in the open by radiation and air, in the mould through the interface coefficient. Temperatures K.
 */
export const temperatureChain = defineModel({
  id: 'filling/temperature-chain',
  title: 'Temperature of the metal along its way',
  answers: 'How hot is the metal when it reaches the section that matters?',
  inputs,
  outputs: {
    lost: { name: 'lost on the walk', unit: 'ΔK', show: 'Δ°C' },
    cup: { name: 'in the cup', unit: 'K', show: '°C' },
    gate: { name: 'at the gate', unit: 'K', show: '°C' },
    end: { name: 'after the last section', unit: 'K', show: '°C' },
    superheat: { name: 'superheat left at the end', unit: 'ΔK', show: 'Δ°C' },
  },
  run,
  assumes: [
    'the rate of loss on the walk is the one it starts with: a little too high for a long walk',
    'every run is already full and takes heat through the interface coefficient alone',
    'the cup and the stream take a number you give: an estimate',
    'no latent heat: below the liquidus the line is the cold side',
  ],
  source: {
    key: 'trade-practice',
    at: 'losses added in order; each line has its own source',
    how: 'common practice',
  },
  examples: [
    {
      title: '50 g of bronze, five seconds, an 8 mm sprue and the frame of the lamp shield',
      given: {
        'melt.temperature': '1135 °C',
        'charge.mass': '50 g',
        'melt.carry': '5 s',
        'melt.mouth': '10 cm²',
        'melt.air': '15 W/(m²·K)',
        'melt.cup': '15 Δ°C',
        'room.temperature': '20 °C',
        'pour.seconds': '1.5 s',
        'sprue.diameter': '8 mm',
        'sprue.length': '40 mm',
        'metal.density.liquid': '7500 kg/m³',
        'metal.heat.liquid': '500 J/(kg·K)',
        'metal.emissivity': '0.2',
        'mould.temperature': '150 °C',
        'mould.interface': '1000 W/(m²·K)',
      },
      expect: { lost: '12.2 Δ°C', gate: '1052 °C', end: '1020 °C' },
      from: {
        byHand:
          'Walk: 0.2 × 5.6704e-8 × (1408.15⁴ − 293.15⁴) = 44 506 and 15 × 1115 = 16 725 W/m²; × 0.001 m² × 5 s = 306.2 J; 0.05 × 500 = 25 J/K; 306.2 ÷ 25 = 12.25 K. Cup: 1135 − 12.25 − 15 = 1107.75 °C. Sprue: 0.05/7500/1.5 = 4.444e-6 m³/s through 50.27 mm² is 0.0884 m/s; 1000 × 0.04 / (7500 × 500 × 0.002 × 0.0884) = 0.0603; 150 + 957.75 × 0.9415 = 1051.7 °C. Frame: 1000 × 0.045 / (7500 × 500 × 0.001125 × 0.3) = 0.0356; 150 + 901.7 × 0.9651 = 1020.2 °C.',
      },
    },
  ],
  caution: ['Hotter metal buys seconds and brings gas, fume and burnt-in sand: shorten the way first.'],
  monotone: [
    { input: 'melt.temperature', output: 'gate', sense: '+' },
    { input: 'melt.carry', output: 'gate', sense: '-' },
    { input: 'sprue.length', output: 'gate', sense: '-' },
    { input: 'mould.interface', output: 'end', sense: '-' },
  ],
  words: ['temperature loss', 'superheat', 'cup', 'sprue', 'cold metal', 'arrives'],
});
