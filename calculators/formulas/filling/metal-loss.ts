import { defineFormula } from '../../core/formula.ts';
import { liquidHeat, stefanBoltzmann } from '../symbols.ts';

export const metalLoss = defineFormula({
  id: 'filling/metal-loss',
  title: 'Temperature a small melt loses on the way',
  answers: 'How many degrees are gone between the furnace and the sprue?',
  equation: 'dT = (epsilon * sigma * (T^4 - T_a^4) + h * (T - T_a)) * A * t / (m * c)',
  symbols: {
    dT: {
      name: 'temperature lost',
      sign: 'ΔT',
      unit: 'ΔK',
      show: 'Δ°C',
      range: [0, 150],
      why: 'a larger loss changes the temperature it is worked from: take it in two steps',
    },
    T: {
      name: 'temperature of the metal',
      unit: 'K',
      show: '°C',
      range: [450, 2000],
      why: 'from tin to iron',
      usual: 1423.15,
    },
    T_a: {
      name: 'temperature of the surroundings',
      unit: 'K',
      show: '°C',
      range: [250, 400],
      why: 'from a cold workshop to red heat',
      usual: 293.15,
    },
    epsilon: {
      name: 'emissivity of the surface',
      sign: 'ε',
      unit: '1',
      range: [0.03, 1],
      why: 'nothing radiates more than a black body',
      usual: 0.3,
      note: 'Bright silver 0.05, bare bronze 0.3, a skin of slag or charcoal up to 0.8.',
    },
    h: {
      name: 'air coefficient',
      unit: 'W/(m²·K)',
      range: [0, 100],
      why: 'from still air to a strong draught',
      usual: 15,
    },
    A: {
      name: 'surface that loses heat',
      unit: 'm²',
      show: 'cm²',
      range: [0.00001, 0.05],
      why: 'small crucibles and streams',
      usual: 0.000707,
      note: 'The open mouth for a hot crucible, the whole skin of the stream while it falls.',
    },
    t: {
      name: 'time',
      unit: 's',
      range: [0, 120],
      why: 'shorter than can be seen, or longer than matters',
      usual: 8,
    },
    m: {
      name: 'mass of metal',
      unit: 'kg',
      show: 'g',
      range: [0.001, 5],
      why: 'small charges, from a gram',
      usual: 0.05,
    },
    c: liquidHeat,
    sigma: stefanBoltzmann,
  },
  where: [{ test: 'T > T_a', why: 'The metal is no hotter than the room.' }],
  assumes: [
    'a loss small beside the temperature itself',
    'a crucible as hot as the metal: a colder one takes far more than the air does',
    'all liquid: once it starts to freeze the latent heat holds it',
  ],
  source: { key: 'incropera', at: '§1.2, convection and radiation from a surface', how: 'memory' },
  examples: [
    {
      title: '50 g of silicon bronze at 1150 °C, mouth of 30 mm, 8 seconds',
      given: {
        T: '1150 °C',
        T_a: '20 °C',
        epsilon: '0.3 1',
        h: '15 W/(m²·K)',
        A: '7.07 cm²',
        t: '8 s',
        m: '50 g',
        c: '520 J/(kg·K)',
      },
      expect: { dT: '18.8 Δ°C' },
      from: {
        byHand:
          '1423.15⁴ = 4.1021e12, less 293.15⁴ = 7.39e9 leaves 4.0947e12; times 0.3 × 5.6704e-8 is 69 655 W/m². Air 15 × 1130 = 16 950. Sum 86 605 × 0.000707 × 8 = 489.8 J, over 0.05 × 520 = 26 J/K is 18.8.',
      },
    },
  ],
  caution: [
    'Seconds decide with tens of grams. Set the mould where the crucible can reach it without a step, and keep the path clear.',
  ],
  words: ['radiation', 'pour window', 'temperature drop', 'crucible', 'stream'],
});
