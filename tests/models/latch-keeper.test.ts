import { describe, it } from 'vitest';
import { agree, judged, planned, type Sheet } from './by-hand.ts';

/**
 * The latch keeper of the tide mill, in leaded gunmetal, standing in dried clay-bonded sand with a feeder on
 * its nose and no suction. Worked by hand from textbook physics, line by line. The numbers of metal and sand are
 * rounded figures of the right size, chosen to keep the sums short. The written digits are the tolerance.
 */
const sheet: Sheet = {
  sections: [
    {
      name: 'Plate',
      shape: 'plate',
      thickness: '4 mm',
      width: '24 mm',
      length: '56 mm',
      pieces: '1',
      run: '56 mm',
      before: '0 mm',
      through: '',
      fronts: '1',
    },
    {
      name: 'Nose',
      shape: 'bar',
      thickness: '9 mm',
      width: '12 mm',
      length: '20 mm',
      pieces: '1',
      run: '76 mm',
      before: '56 mm',
      through: 'Plate',
      fronts: '1',
    },
    {
      name: 'Pads',
      shape: 'block',
      thickness: '10 mm',
      width: '14 mm',
      length: '18 mm',
      pieces: '2',
      run: '48 mm',
      before: '30 mm',
      through: 'Plate',
      fronts: '2',
    },
  ],
  'part.length': '70 mm',
  'part.height': '40 mm',
  'part.shadow': '18 cm²',
  'edge.wanted': '0.5 mm',
  orientation: 'standing',
  'metal.density.solid': '8800 kg/m³',
  'metal.density.liquid': '8000 kg/m³',
  'metal.heat.solid': '400 J/(kg·K)',
  'metal.heat.liquid': '460 J/(kg·K)',
  'metal.latent': '190 kJ/kg',
  'metal.solidus': '850 °C',
  'metal.liquidus': '1000 °C',
  'metal.surface-tension': '1.1 N/m',
  'metal.contact-angle': '130 deg',
  'metal.shrinkage.freezing': '4.5 %',
  'metal.contraction.liquid': '1.0 %',
  'metal.contraction.pattern': '1.5 %',
  'metal.pour.lowest': '1060 °C',
  'metal.pour.highest': '1180 °C',
  'metal.critical-solid': '30 %',
  'metal.loss.melting': '2 %',
  'metal.emissivity': '0.3',
  'metal.zinc': '5 %',
  'metal.lead': '5 %',
  'mould.temperature': '150 °C',
  'mould.dried': 'held',
  'mould.conductivity': '0.64 W/(m·K)',
  'mould.density.bulk': '1600 kg/m³',
  'mould.heat': '1000 J/(kg·K)',
  'mould.interface': '800 W/(m²·K)',
  'mould.permeability': '20 AFS',
  'mould.grain-size': '0.15 mm',
  'mould.moisture': '0.2 %',
  'mould.strength.tensile': '60 kPa',
  'mould.strength.shear': '100 kPa',
  'mould.temperature.limit': '300 °C',
  'mould.temperature.metal': '1600 °C',
  head: '80 mm',
  'gate.area': '36 mm²',
  'gate.discharge': '0.6',
  'entry.angle': '140 deg',
  'pour.seconds': '2.5 s',
  'sprue.diameter': '10 mm',
  'sprue.length': '80 mm',
  'sprue.volume': '9 cm³',
  'suction.gauge': '0 kPa',
  'sand.cope': '30 mm',
  'sand.drag': '30 mm',
  'flask.diameter': '120 mm',
  'cope.weight': '2 kg',
  feeder: 'cylinder',
  'feeder.volume': '10.86 cm³',
  'feeder.modulus': '4 mm',
  'feeder.gives': '14 %',
  'melt.temperature': '1120 °C',
  'melt.carry': '6 s',
  'melt.mouth': '15 cm²',
  'melt.air': '15 W/(m²·K)',
  'melt.cup': '15 Δ°C',
  'melt.heel': '4 g',
  'crucible.volume': '50 mL',
  'crucible.fill': '80 %',
  'crucible.mass': '400 g',
  'crucible.heat': '1080 J/(kg·K)',
  'crucible.temperature.limit': '1400 °C',
  'room.temperature': '20 °C',
  'site.altitude': '0 m',
  'steam.layer': '3 mm',
  'steam.seconds': '1 s',
};

describe('the latch keeper by hand: charge and feeder', () => {
  it('agrees on what is weighed out', () => {
    const result = planned(sheet);
    agree(result, {
      // Plate 4 × 24 × 56 = 5376; nose 9 × 12 × 20 = 2160; pads 2 × 10 × 14 × 18 = 5040; sum 12 576 mm³
      'part.volume': '12.576 cm³',
      // 12.576 × 8.8
      'part.mass': '110.67 g',
      // (110.669 + 9 × 8.8 + 10.86 × 8.8 + 4) / 0.98 = (110.669 + 79.2 + 95.568 + 4) / 0.98 = 289.437 / 0.98
      charge: '295.34 g',
      // 110.669 / 295.344
      yield: '37.47 %',
      // 50 × 8.0 × 0.8
      'crucible.holds': '320.0 g',
    });
    // 320 / 295.3 = 1.08, over 1 and under 1.2
    judged(result, { crucible: 'close' });
  });

  it('agrees on the feeder', () => {
    const result = planned(sheet);
    agree(result, {
      // 4 / 2; 9 × 12 / (2 (9 + 12)) = 108 / 42; 2520 / (2 (140 + 180 + 252)) = 2520 / 1144
      'sections.1.modulus': '2.000 mm',
      'sections.2.modulus': '2.571 mm',
      'sections.3.modulus': '2.203 mm',
      // the nose is the heaviest: 1.2 × 2.5714
      'feeder.modulus-needed': '3.086 mm',
      // it makes up its own loss too: 0.14 V = 0.045 (V + 12.576), V = 0.045 × 12.576 / 0.095 = 0.56592 / 0.095
      'feeder.volume-needed': '5.957 cm³',
    });
    // 24 mm wide and high: 4.00 / 3.086 = 1.30, 10.86 / 5.957 = 1.82
    judged(result, { feeding: 'holds' });
  });

  it('judges smaller feeders, cylinders cooled all round', () => {
    // 20 × 20: π/4 × 20³ = 6283 mm³, modulus 20 / 6 = 3.333; 6.283 / 5.957 = 1.055, 3.333 / 3.086 = 1.080
    judged(planned(sheet, { 'feeder.volume': '6.283 cm³', 'feeder.modulus': '3.333 mm' }), {
      feeding: 'close',
    });
    // 16 × 16: 3217 mm³, 16 / 6 = 2.667; both too small
    judged(planned(sheet, { 'feeder.volume': '3.217 cm³', 'feeder.modulus': '2.667 mm' }), {
      feeding: 'fails',
    });
    // 30 wide, 9 high: 6362 mm³ is enough, but 6362 / (1413.7 + 848.2) = 2.81 mm freezes too soon
    judged(planned(sheet, { 'feeder.volume': '6.362 cm³', 'feeder.modulus': '2.81 mm' }), {
      feeding: 'fails',
    });
    // tall, 14 wide, 40 high: 6158 mm³ is enough; 6158 / (307.9 + 1759.3) = 2.98 mm is not
    judged(planned(sheet, { 'feeder.volume': '6.158 cm³', 'feeder.modulus': '2.98 mm' }), {
      feeding: 'fails',
    });
  });
});

describe('the latch keeper by hand: freezing', () => {
  // b = √(0.64 × 1600 × 1000) = 1011.93; T_f = 925 °C; Θ = 775; heat 8000 M (190e3 + 460 × 120) = 1.9616e9 M
  it('agrees', () => {
    agree(planned(sheet), {
      // 3 923 200 J/m²: (π/4) (3 923 200 / (1011.93 × 775))² = 0.7854 × 25.025; a flat face has no curvature
      'sections.1.freeze.sand': '19.65 s',
      'sections.1.freeze.soonest': '19.65 s',
      // bΘ [2√(t/π) − (b/h)(1 − e^τ erfc √τ)], τ = h²t/b², b/h = 1.26491, until 3 923 200
      'sections.1.freeze': '29.27 s',
      // heat 5 044 114: 0.7854 (5 044 114 / 784 245)²
      'sections.2.freeze.sand': '32.49 s',
      // n k / 2R = 0.64 / (4 × 2.5714e-3) = 62.22: 62.22 x² + 1141.84 x − 6508.5 = 0, x = √t = 4.5646
      'sections.2.freeze.soonest': '20.84 s',
      // flux hΘ [h_R/(h+h_R) + h/(h+h_R)·e^σ erfc √σ], σ = (h+h_R)² t/b², summed by Simpson's rule in √t
      'sections.2.freeze': '32.04 s',
      // 2 × 0.64 / (6 × 2.2028e-3) = 96.85; heat 4 321 007
      'sections.3.freeze': '23.12 s',
    });
  });
});

describe('the latch keeper by hand: pressure, flow and the race', () => {
  it('agrees on what pushes and what pushes back', () => {
    const result = planned(sheet);
    agree(result, {
      // standing: 80 − 40
      'head.left': '40.0 mm',
      // 8000 × 9.80665 × 0.040
      pressure: '3.138 kPa',
      // 0.6 √(2 × 9.80665 × 0.080) = 0.6 × 1.25262
      'gate.speed': '0.752 m/s',
      // 2 (1.1 × 9.80665 / 8000)^¼ = 2 × 0.19163
      'gate.critical': '0.383 m/s',
      // 0.295344 / (8000 × 2.5); the gate would pass 0.7516 × 36 = 27.06
      flow: '14.77 cm³/s',
      // 14.767e-6 × 1.8e-5 × 0.030 / (6.1183e-12 × 5.816e-3); area 2688 + 840 + 2288 mm²; dry at 150 °C
      gas: '0.224 kPa',
      // 1.1 / 3138.1
      edge: '0.351 mm',
      // 1.1 × 0.76604 (2 / 4e-3 + 2 / 24e-3) = 0.842649 × 583.33
      'sections.1.resists': '0.492 kPa',
    });
    judged(result, {
      // 3138 against 1.5 (492 + 224) = 1073
      entry: 'holds',
      edge: 'holds',
      // 0.752 is above 0.383
      'gate-speed': 'fails',
    });
    // lying under 20 mm: 0.6 √(2 × 9.80665 × 0.020) = 0.376, just under 0.383; the edge 1.1 / 1569 = 0.70 mm
    judged(planned(sheet, { head: '20 mm', orientation: 'flat' }), { 'gate-speed': 'close', edge: 'fails' });
  });

  it('agrees on the temperature on the way and the race', () => {
    const result = planned(sheet);
    agree(result, {
      // 0.3 σ (1393.15⁴ − 293.15⁴) + 15 × 1100 = 63 955 + 16 500 = 80.45 kW/m²; × 1.5e-3 × 6 / (0.295344 × 460)
      'chain.carry': '5.33 Δ°C',
      // sprue 14.767e-6 / (π/4 × 0.01²) = 0.18802 m/s, M = 2.5 mm; cup 1099.67;
      // 150 + 949.67 e^(−800 × 0.08 / (8000 × 460 × 0.0025 × 0.18802)) = 150 + 949.67 × 0.96368
      'chain.gate': '1065.2 °C',
      // 14.767e-6 / 96e-6, less than the pressure gives, 0.6 √(2 (0.39227 − 716 / 8000)) = 0.467
      'sections.1.speed': '0.154 m/s',
      // 56 mm at that speed
      'sections.1.fills': '0.364 s',
      // 8000 × 2.0e-3 × (0.3 × 190e3 + 460 × 65.18) / (800 × 775) = 16 × 86 981 / 620 000
      'sections.1.flows': '2.245 s',
      'sections.1.margin': '6.17 1',
      // after 56 mm of plate: 150 + 915.18 e^(−800 × 0.056 / (8000 × 460 × 0.002 × 0.15382)) = 150 + 915.18 × 0.96120
      'sections.2.arrives': '1029.7 °C',
      // 14.767e-6 / (2 × 140e-6) = 0.05274 m/s; 18 mm
      'sections.3.fills': '0.341 s',
    });
    judged(result, { 'sections.1': 'holds', 'sections.2': 'holds', 'sections.3': 'holds' });
  });
});

describe('the latch keeper by hand: cope, sand, melt, fume', () => {
  it('agrees', () => {
    const result = planned(sheet);
    agree(result, {
      // 8000 × 9.80665 × 0.080 × 18e-4
      lift: '11.30 N',
      // 1.5 × 8000 × 0.08 × 18e-4 − 1600 × π/4 × 0.12² × 0.030 = 1.728 − 0.543
      'cope.needed': '1.185 kg',
      // 2 × 1.1 × 0.64279 / (0.2 × 0.15e-3)
      penetration: '47.1 kPa',
      // 12 576 (0.045 + 1.0e-4 × 65.18)
      shrinkage: '647.9 mm³',
      // 0.295344 (400 × 980 + 190 000 + 460 × 120) = 188.2; crucible 0.4 × 1080 × 1100 = 475.2
      'melt.energy': '663.4 kJ',
      // at 1090 °C, the middle: 0.3 σ (1363.15⁴ − 293.15⁴) + 15 × 1070 = 74.66 kW/m²; 0.295344 × 460 × 60 / (1.5e-3 × 74 661)
      'melt.window': '72.8 s',
    });
    judged(result, { lift: 'holds', penetration: 'holds', 'pour-temperature': 'holds', seconds: 'holds' });
    // 1 + 0.543 kg against 1.728
    judged(planned(sheet, { 'cope.weight': '1 kg' }), { lift: 'fails' });
  });

  it('flags the lead, and without it the zinc', () => {
    judged(planned(sheet), { fume: 'fails' });
    judged(planned(sheet, { 'metal.lead': '0 %' }), { fume: 'close' });
  });
});
