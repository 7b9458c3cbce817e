import { defineFormula } from '../../core/formula.ts';

export const pumpDown = defineFormula({
  id: 'vacuum/pump-down',
  title: 'Time to pump a chamber down',
  answers: 'How long does the pump need to bring this chamber down to that pressure?',
  equation: 't = V / S * ln((p_1 - p_u) / (p_2 - p_u))',
  symbols: {
    t: { name: 'time', unit: 's', range: [0.01, 36000], why: 'bench chambers and a working day' },
    V: {
      name: 'volume to be emptied',
      unit: 'm³',
      show: 'L',
      range: [0.00001, 10],
      why: 'from a hose to a large tank',
      usual: 0.01,
      note: 'Chamber, hose, trap and the pores of sand or investment.',
    },
    S: {
      name: 'pumping speed',
      unit: 'm³/s',
      show: 'L/min',
      range: [0.00001, 1],
      why: 'from a hand pump to a works pump',
      usual: 0.001667,
      note: 'What reaches the chamber: a thin hose takes its share.',
    },
    p_1: {
      name: 'pressure at the start, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [100, 110000],
      why: 'no more than the air outside',
      usual: 101325,
    },
    p_2: {
      name: 'pressure at the end, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [100, 110000],
      why: 'below this, gas from walls and seals rules',
      usual: 10000,
    },
    p_u: {
      name: 'lowest pressure the pump holds here, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 90000],
      why: 'from a good pump on a tight chamber to a weak one on a leaky one',
      usual: 1000,
      note: 'Where the gauge stands at last, leaks and wet slurry included. At 20 °C water alone holds 2.3 kPa.',
    },
  },
  where: [
    { test: 'p_1 > p_2', why: 'The pressure has to start above the pressure it ends at.' },
    {
      test: 'p_2 > p_u',
      why: 'This pump on this chamber never gets so low: mend the leak or settle for less.',
    },
  ],
  assumes: [
    'one pumping speed all the way; near its lowest pressure a pump slows',
    'no water boiling off: while slurry boils, the gauge hangs',
  ],
  source: { key: 'esposito', at: 'ch. 14, time to reach a vacuum', how: 'read' },
  alsoSee: [{ key: 'umrath-vacuum', at: 'pump-down in the rough-vacuum range', how: 'memory' }],
  examples: [
    {
      title: 'A 2 L chamber, 100 L/min, from the air to 10 kPa',
      given: { V: '2 L', S: '100 L/min', p_1: '101.3 kPa', p_2: '10 kPa', p_u: '2 kPa' },
      expect: { t: '3.02 s' },
      from: {
        byHand:
          '99.3 ÷ 8 = 12.4125, its natural logarithm 2.5187; 2 L ÷ (100 ÷ 60) L/s = 1.2 s; product 3.022 s.',
      },
    },
  ],
  caution: [
    'Shown to teach; the maker’s rating of the chamber and local codes decide. Look for scratches and stars before pumping, shield it, and keep faces off the lid.',
  ],
  words: ['evacuation time', 'pump', 'chamber', 'degassing'],
});
