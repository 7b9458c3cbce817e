import { describe, expect, it } from 'vitest';
import { quantityFigures } from '../../calculators/core/quantity.ts';
import type { Result } from '../../calculators/core/model.ts';
import type { Quantity } from '../../calculators/core/units.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { sheet } from './lamp-shield-sheet.ts';

/**
 * The lamp shield worked by hand from textbook physics, line by line, before the plan was run on it. Times
 * with the interface come from the flux q(t) = hΘ·e^τ·erfc √τ, τ = h²t/b², added up with Simpson's rule and
 * stopped where the sum reaches the heat to be given off. The written digits are the tolerance.
 */
function planned(changes: Readonly<Record<string, unknown>> = {}): Result {
  const { values, problems } = completeInputs(pourPlan, { ...sheet, ...changes }, {});
  expect(problems).toEqual([]);
  return pourPlan.run(values);
}

type Hand = Readonly<Record<string, Quantity>>;

function agree(result: Result, hand: Hand): void {
  for (const [output, text] of Object.entries(hand)) {
    const { value, halfDigit } = quantityFigures(text);
    const found = result.values[output];
    expect(found, `${output} is worked`).toBeDefined();
    expect(Math.abs(found! - value), `${output}: by hand ${text}, by the plan ${found}`).toBeLessThanOrEqual(
      halfDigit * (1 + 1e-9),
    );
  }
}

describe('the lamp shield by hand: pattern, charge, crucible', () => {
  it('agrees', () => {
    agree(planned(), {
      // 60 × 1.0208 = 61.248
      'pattern.length': '61.25 mm',
      // Frame 174 × 4.5² = 3523.5; webs 240 × 1.4 × 2.2 = 739.2; lugs 2 × 12 × 8 × 7 = 1344; sum 5606.7 mm³
      'part.volume': '5.6067 cm³',
      // 5.6067 × 8.360 = 46.872
      'part.mass': '46.872 g',
      // 6 × 8.360
      'sprue.mass': '50.16 g',
      // (46.872 + 50.16 + 3) / 0.985 = 100.032 / 0.985
      charge: '101.56 g',
      // 46.872 / 101.555
      yield: '46.15 %',
      // 30 × 7.700 × 0.75
      'crucible.holds': '173.25 g',
    });
  });
});

describe('the lamp shield by hand: moduli and freezing', () => {
  it('gives the moduli', () => {
    agree(planned(), {
      // 1.4 × 2.2 / (2 (1.4 + 2.2)) = 3.08 / 7.2
      'sections.1.modulus': '0.428 mm',
      // 4.5² / (4 × 4.5) = 20.25 / 18
      'sections.2.modulus': '1.125 mm',
      // 672 / (2 (12·8 + 12·7 + 8·7)) = 672 / 472
      'sections.3.modulus': '1.424 mm',
    });
  });

  // b = √(0.625 × 1600 × 1000) = 1000; T_f = (860 + 970) / 2 = 915 °C.
  // Heat of the webs 7700 × 0.42778e-3 × (200e3 + 480 × 130) = 3.29389 × 262 400 = 864 316 J/m².
  // Planar sand: (π/4) (864 316 / (1000 Θ))²; Θ = 895, 795, 765, 735.
  const webs: readonly [mould: string, sand: Quantity, both: Quantity][] = [
    ['20 °C', '0.732 s', '2.10 s'],
    ['120 °C', '0.928 s', '2.48 s'],
    ['150 °C', '1.00 s', '2.62 s'],
    ['180 °C', '1.09 s', '2.77 s'],
  ];
  it.each(webs)('freezes the webs in a mould at %s', (mould, sand, both) => {
    agree(planned({ 'mould.temperature': mould }), {
      'sections.1.freeze.sand': sand,
      'sections.1.freeze.latest': both,
    });
  });

  it('counts the curvature of a bar, R = 2M, and of a block, R = 3M', () => {
    agree(planned(), {
      // 765 (2·1000·√(t/π) + 365.3 t) = 864 316, with n k / 2R = 0.625 / (4 × 0.42778e-3) = 365.3:
      // x = √t from 365.26 x² + 1128.38 x − 1129.83 = 0, x = (−1128.38 + √(1 273 240 + 1 650 730)) / 730.52 = 0.7961
      'sections.1.freeze.soonest': '0.634 s',
      // flux hΘ [h_R/(h+h_R) + h/(h+h_R)·e^σ erfc √σ], σ = (h+h_R)² t/b², summed until 864 316
      'sections.1.freeze': '2.06 s',
      // heat 7700 × 1.125e-3 × 262 400 = 2 273 040; (π/4)(2 273 040 / 765 000)² = 0.7854 × 8.8286
      'sections.2.freeze.sand': '6.93 s',
      'sections.2.freeze.soonest': '4.38 s',
      'sections.2.freeze.latest': '11.41 s',
      // n k / 2R = 0.625 / (4 × 1.125e-3) = 138.9
      'sections.2.freeze': '8.37 s',
      // n k / 2R = 2 × 0.625 / (6 × 1.42373e-3) = 146.3; heat 7700 × 1.42373e-3 × 262 400 = 2 876 616
      'sections.3.freeze.soonest': '6.32 s',
      'sections.3.freeze.latest': '16.81 s',
      'sections.3.freeze': '11.30 s',
      // gate: √18 / 4 = 1.0607 mm, longer than the webs, shorter than the frame
      release: '7.64 s',
    });
  });
});

describe('the lamp shield by hand: pressure, flow and the race, suction 35 kPa', () => {
  it('agrees on what pushes and what pushes back', () => {
    agree(planned(), {
      // equal sand above and below: half of 35
      suction: '17.50 kPa',
      // 101 325 − 35 000
      'gauge.absolute': '66.325 kPa',
      // 35 000 / 3386.39
      'gauge.reading': '10.34 inHg',
      // 7700 × 9.80665 × 0.040 = 3020.4; + 17 500
      pressure: '20.52 kPa',
      // 17 500 / (7700 × 9.80665)
      'suction.as-head': '231.8 mm',
      // 0.6 √(2 (0.392266 + 17 500 / 7700)) = 0.6 √(2 × 2.664994)
      'gate.speed': '1.385 m/s',
      // 2 (1.2 × 9.80665 / 7700)^¼ = 2 × 0.19772
      'gate.critical': '0.395 m/s',
      // 0.101555 / (7700 × 1.5); the gate would pass 1.385 × 18 = 24.9
      flow: '8.793 cm³/s',
      // area of it all: 174·18 + 240·7.2 + 2·472 = 5804 mm²; × 3 mm × 1600 × 0.002
      'steam.water': '55.72 mg',
      // 55.72e-6 × 8.31446 × 373.15 / (0.01801528 × 101 325)
      'steam.volume': '0.0947 L',
      // dry at 150 °C, so air only: 8.793e-6 × 1.8e-5 × 0.025 / (3.0591e-12 × 5.804e-3)
      gas: '0.223 kPa',
      // with the steam in a second: 103.49e-6 in the same sum
      'gas.worst': '2.62 kPa',
      // 1.2 / 20 520 and 2.4 / 20 520
      edge: '0.0585 mm',
      corner: '0.117 mm',
    });
  });

  it('agrees on the temperature on the way', () => {
    agree(planned(), {
      // 0.3 σ (1373.15⁴ − 293.15⁴) + 15 × 1080 = 60 353 + 16 200 = 76.55 kW/m²; × 1e-3 m² × 5 s / (0.101555 × 480)
      'chain.carry': '7.85 Δ°C',
      // 1100 − 7.85 − 15
      'chain.cup': '1077.1 °C',
      // speed in the sprue 8.793e-6 / (π/4 × 0.008²) = 0.17493; M = 2 mm;
      // 150 + 927.15 e^(−1000 × 0.04 / (7700 × 480 × 0.002 × 0.17493)) = 150 + 927.15 × 0.96954
      'chain.gate': '1048.9 °C',
      // frame 8.793e-6 / (2 × 20.25e-6) = 0.2171 m/s, over 45 mm: 150 + 898.91 e^(−45 / 902.7)
      'sections.1.arrives': '1005.2 °C',
      'sections.2.arrives': '1048.9 °C',
      // over 60 mm: 150 + 898.91 e^(−60 / 902.7)
      'sections.3.arrives': '991.1 °C',
    });
  });

  it('agrees on the race', () => {
    agree(planned(), {
      // 1.2 (2 / 1.4e-3 + 2 / 2.2e-3) = 1.2 × 2337.66
      'sections.1.resists': '2.805 kPa',
      // 1.2 × 4 / 4.5e-3
      'sections.2.resists': '1.067 kPa',
      // shared 8.793e-6 / (8 × 3.08e-6), less than 0.6 √(2 (0.39227 + (17 500 − 2805 − 223) / 7700)) = 1.279
      'sections.1.speed': '0.357 m/s',
      // 30 mm at that speed
      'sections.1.fills': '0.0841 s',
      // 7700 × 0.42778e-3 × (0.3 × 200e3 + 480 × 35.19) / (1000 × 765) = 3.29389 × 76 893 / 765 000
      'sections.1.flows': '0.331 s',
      'sections.1.margin': '3.94 1',
      // 87 / 217.1
      'sections.2.fills': '0.401 s',
      // 7700 × 1.125e-3 × (60 000 + 480 × 78.91) / 765 000
      'sections.2.flows': '1.108 s',
      'sections.2.margin': '2.77 1',
      // 8.793e-6 / (2 × 56e-6) = 0.0785 m/s; 7 mm
      'sections.3.fills': '0.0892 s',
      'sections.3.flows': '1.005 s',
    });
  });

  it('does not let the webs in without suction', () => {
    const result = planned({ 'suction.gauge': '0 kPa' });
    agree(result, {
      pressure: '3.020 kPa',
      // 0.6 √(2 × 0.392266)
      'gate.speed': '0.531 m/s',
      // 2805 + 223 = 3028 Pa stand against 3020
      'sections.1.resists': '2.805 kPa',
      gas: '0.223 kPa',
      edge: '0.397 mm',
    });
    expect(result.values['sections.1.fills']).toBeUndefined();
  });

  it('lets them in at 10 kPa in the cavity, as fast as they are poured', () => {
    agree(planned({ 'suction.gauge': '20 kPa' }), {
      suction: '10.00 kPa',
      pressure: '13.02 kPa',
      // 0.6 √(2 (0.392266 + 1.298701))
      'gate.speed': '1.103 m/s',
      'sections.1.speed': '0.357 m/s',
      edge: '0.0922 mm',
    });
  });
});

describe('the lamp shield by hand: sand, feeding, melt, after', () => {
  it('agrees', () => {
    agree(planned(), {
      // 35 000 × π/4 × 0.1²
      'suction.force': '274.9 N',
      // round, resting, ν = 0.3: 3 (3 + 0.3) / 32 = 0.31; 0.31 × 35 × (40 / 25)²
      'sand.bending': '27.8 kPa',
      // 35 × 40 / (4 × 25)
      'sand.shear': '14.0 kPa',
      // 7700 × 9.80665 × 0.04 × 15e-4
      lift: '4.53 N',
      // 1.5 × 4.53 / 9.80665 − 1600 × π/4 × 0.1² × 0.025
      'cope.needed': '0.379 kg',
      // 2 × 1.2 × 0.64279 / (0.2 × 0.11e-3)
      penetration: '70.1 kPa',
      // 5606.7 × (0.045 + 1.02e-4 × 78.9)
      shrinkage: '297.4 mm³',
      // (6 × 0.045 × 672 / π)^(1/3)
      pore: '3.87 mm',
      // 0.101555 (440 × 950 + 200 000 + 480 × 130) = 69.1; crucible 0.15 × 1080 × (1100 − 20) = 175.0
      'melt.energy': '244.1 kJ',
      // 244.1 / (0.35 × 1.5) / 60
      'melt.time': '7.75 min',
      // at 1075 °C, the middle: 0.3 σ (1348.15⁴ − 293.15⁴) + 15 × 1055 = 71.90 kW/m²; 0.101555 × 480 × 50 / 71.90
      'melt.window': '33.9 s',
      // 46.872 (1 − 998.2 / 8360)
      'weigh.water': '41.28 g',
    });
  });
});
