import { defineFormula } from '../../core/formula.ts';
import { stefanBoltzmann } from '../symbols.ts';

export const surfaceLoss = defineFormula({
  id: 'melting/surface-loss',
  title: 'Heat leaving a hot surface',
  answers: 'How fast does each square metre of a hot surface lose heat?',
  equation: 'q = eps * sigma * (T^4 - T_a^4) + h * (T - T_a)',
  symbols: {
    q: {
      name: 'heat lost from each area',
      unit: 'W/m²',
      show: 'kW/m²',
      range: [0, 500000],
      why: 'surfaces up to about 1450 °C',
    },
    eps: {
      name: 'emissivity',
      sign: 'ε',
      unit: '1',
      range: [0.02, 1],
      why: 'from bright silver to soot',
      usual: 0.4,
      note: 'Clean bright metal 0.05 to 0.2, oxide skin 0.3 to 0.8, crucible 0.8 to 0.9.',
    },
    sigma: stefanBoltzmann,
    T: {
      name: 'temperature of the surface',
      unit: 'K',
      show: '°C',
      range: [293.15, 1723.15],
      why: 'from the bench to the hottest of small melts',
      usual: 1393.15,
    },
    T_a: {
      name: 'temperature of the room',
      unit: 'K',
      show: '°C',
      range: [263.15, 323.15],
      why: 'a workshop',
      usual: 293.15,
    },
    h: {
      name: 'heat carried off by the air',
      unit: 'W/(m²·K)',
      range: [2, 60],
      why: 'from still air to a strong draught',
      usual: 15,
    },
  },
  noSolve: { T_a: 'a hot surface hardly feels the temperature of the room' },
  assumes: ['the surface sees only the room, and the room’s walls are as warm as its air'],
  source: { key: 'incropera', at: 'section 1.2, radiation and convection', how: 'memory' },
  examples: [
    {
      title: 'the face of a bronze melt at 1120 °C',
      given: { eps: '0.4 1', T: '1120 °C', T_a: '20 °C', h: '15 W/(m²·K)' },
      expect: { q: '101.8 kW/m²' },
      from: {
        byHand:
          '1393.15 squared is 1 940 867, squared again 3.766 96 × 10¹²; the room’s 293.15⁴ is 7.385 × 10⁹. Difference 3.759 58 × 10¹² × 5.670 374 × 10⁻⁸ = 213 182; × 0.4 = 85 273 W/m²; the air 15 × 1100 = 16 500; sum 101 773 W/m²',
      },
    },
  ],
  caution: [
    'At this heat a bare hand hurts in seconds and dry cloth can light: shield, gloves and distance.',
  ],
  words: ['radiation', 'convection', 'emissivity'],
});
