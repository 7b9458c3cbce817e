import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldDiffusivity,
  solidShareAtStop,
  superheatOnArrival,
} from '../symbols.ts';

export const preheatNeeded = defineFormula({
  id: 'filling/preheat-needed',
  title: 'Mould temperature that wins the race',
  answers: 'How warm must the mould be, so that the section keeps flowing long enough to fill?',
  equation:
    'T_m = T_f - rho * M * (f * L + c * dT) / (b * (2 * sqrt(k * t / pi) - b / h * (1 - erfcx(h * sqrt(k * t) / b))))',
  symbols: {
    T_m: {
      name: 'mould temperature needed',
      unit: 'K',
      show: '°C',
      range: [253.15, 1023.15],
      why: 'below a cold workshop no preheat is needed',
      limit: {
        above: 1023.15,
        why: 'Gypsum-bonded investment breaks down from about 750 °C and gives off sulphur dioxide (trade practice, recalled). No preheat will do: fill faster or thicken the section.',
      },
    },
    t: {
      name: 'time to fill the section',
      unit: 's',
      range: [0.005, 60],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
      usual: 0.3,
      note: 'Length of run over speed.',
    },
    k: {
      name: 'margin',
      unit: '1',
      range: [1, 5],
      why: 'less than 1 loses the race',
      usual: 2,
      note: 'Flow time wanted for each second of filling.',
    },
    rho: liquidDensity,
    M: modulusOfSection,
    f: solidShareAtStop,
    L: latentHeat,
    c: liquidHeat,
    dT: superheatOnArrival,
    b: mouldDiffusivity,
    h: interfaceCoefficient,
    T_f: freezingTemperature,
  },
  where: [
    {
      test: 'T_m < 0.92 * T_f',
      why: 'No preheat will do: the mould would have to be nearly as hot as the freezing metal. Fill faster, thicken the section, or raise the head.',
    },
    {
      test: 'T_m > 250',
      why: 'No preheat is needed: even a frosty mould keeps this section flowing long enough. Warm it for dryness all the same.',
    },
  ],
  assumes: [
    'a dry mould of sand, plaster or investment, thick enough that its outside stays cool',
    'the race of flow time against fill time, flow time with both resistances; the tip of the stream has less, so keep a margin of 1.5 to 2',
    'warming sand buys little: pressure at the cavity buys far more',
  ],
  source: { key: 'carslaw-jaeger', at: '§2.7, rearranged for the mould temperature', how: 'memory' },
  alsoSee: [{ key: 'flemings', at: 'ch. 7, fluidity', how: 'memory' }],
  examples: [
    {
      title: 'Web of the lamp shield that takes 0.3 s to fill, margin 2',
      given: {
        t: '0.3 s',
        k: '2 1',
        rho: '7520 kg/m³',
        M: '0.428 mm',
        f: '30 %',
        L: '200 kJ/kg',
        c: '520 J/(kg·K)',
        dT: '40 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        h: '1000 W/(m²·K)',
        T_f: '915 °C',
      },
      expect: { T_m: '216 °C' },
      from: {
        byHand:
          'kt = 0.6, √ = 0.774597. 2√(0.6/π) = 0.874039; erfcx(0.774597) = 0.498025; bracket 0.874039 − 0.501975 = 0.372063. 260 060 / 372.063 = 698.97. 915 − 698.97 = 216.',
      },
    },
  ],
  caution: [
    'Oil-bonded sand is never baked, and gypsum must not pass its limit: both give off fumes that harm.',
  ],
  words: ['preheat', 'warm mould', 'race', 'margin', 'flask temperature'],
});
