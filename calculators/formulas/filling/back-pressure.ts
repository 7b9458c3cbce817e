import { defineFormula } from '../../core/formula.ts';

export const backPressure = defineFormula({
  id: 'filling/back-pressure',
  title: 'Gas pressing back',
  answers: 'What pressure does the gas need to leave through the sand as fast as it is made?',
  equation: 'p_gas = Q * mu * l / (K * A)',
  symbols: {
    p_gas: {
      name: 'gas pressure in the cavity',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 50000],
      why: 'above that the sand lifts before the gas passes',
    },
    Q: {
      name: 'gas to be passed',
      unit: 'm³/s',
      show: 'cm³/s',
      range: [1e-8, 0.01],
      why: 'small parts; more gas than this has to find a vent',
      usual: 0.00019,
      note: 'The air pushed out, at the flow of the metal, and the steam and smoke the sand gives off, which is often far more.',
    },
    mu: {
      name: 'viscosity of the gas',
      sign: 'μ',
      unit: 'Pa·s',
      show: 'mPa·s',
      range: [0.000009, 0.00006],
      why: 'from steam to air at the heat of bronze',
      usual: 0.000018,
      note: 'Air at 20 °C 0.018, steam at 100 °C 0.012; hot gas is thicker.',
    },
    l: {
      name: 'way through the sand',
      unit: 'm',
      show: 'mm',
      range: [0.002, 0.3],
      why: 'bench flasks',
      usual: 0.025,
    },
    K: {
      name: 'permeability of the sand',
      unit: 'AFS',
      range: [0.1, 500],
      why: 'from investment to coarse sand',
      usual: 10,
    },
    A: {
      name: 'surface it leaves by',
      unit: 'm²',
      show: 'cm²',
      range: [0.00001, 0.1],
      why: 'the surface of a small casting',
      usual: 0.0046,
      note: 'The surface of the cavity. A vent takes more than the sand does.',
    },
  },
  assumes: [
    'the gas creeps through the pores, as air does in the permeability test',
    'it leaves over the whole surface and none condenses on the way: wet, cold sand takes some of the steam back',
    'the path keeps one width, so the pressure is the high end for a small part in a wide flask',
  ],
  source: { key: 'poirier-geiger', at: 'flow through porous media, Darcy’s law', how: 'memory' },
  examples: [
    {
      title: 'Half a per cent of water under the lamp shield',
      given: {
        Q: '190 cm³/s',
        mu: '0.018 mPa·s',
        l: '25 mm',
        K: '10 AFS',
        A: '46 cm²',
      },
      expect: { p_gas: '6.08 kPa' },
      from: {
        byHand:
          'One AFS unit is 1 cm³/min through 1 cm² and 1 cm under 1 cm of water: 1e-8 / (98.0665 × 1e-4 × 60) × 1.8e-5 = 3.0591e-13 m², so K = 3.0591e-12 m². Q μ l = 1.9e-4 × 1.8e-5 × 0.025 = 8.55e-11; K A = 3.0591e-12 × 46e-4 = 1.40719e-14; the quotient is 6076 Pa.',
      },
    },
  ],
  caution: [
    'If the gas presses harder than the metal, the mould spits metal back up the sprue. Dry the mould until its mass stands still, vent it, and keep your face away from the sprue.',
  ],
  words: ['blow', 'blow-back', 'vent', 'gas', 'steam', 'Darcy'],
});
