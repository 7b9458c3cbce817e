import { describe, expect, it } from 'vitest';
import { heatCurve } from '../../../calculators/models/conduction/enthalpy.ts';
import { bronze } from './ways.ts';

const copper = 1357.77;
const { solidus, liquidus, latent, c } = bronze;

describe('heat and temperature', () => {
  it.each([
    ['evenly', bronze],
    ['by the lever rule', { ...bronze, base: copper }],
    ['at one temperature', { ...bronze, solidus: liquidus }],
  ])('go both ways, freezing %s', (_name, metal) => {
    const curve = heatCurve(metal, 293.15);
    let before = -Infinity;
    for (let kelvin = 400; kelvin < 1500; kelvin += 7.3) {
      const heat = curve.heatOf(kelvin - 293.15);
      expect(curve.temperatureOf(heat) + 293.15).toBeCloseTo(kelvin, 8);
      expect(heat).toBeGreaterThan(before);
      before = heat;
    }
  });

  it('hold the latent heat and the sensible heat between solidus and liquidus', () => {
    for (const metal of [bronze, { ...bronze, base: copper }]) {
      const curve = heatCurve(metal, 0);
      const between = (curve.heatOf(liquidus) - curve.heatOf(solidus)) * c.solid;
      expect(between).toBeCloseTo(latent + ((c.solid + c.liquid) / 2) * (liquidus - solidus), 4);
    }
  });

  it('share out solid by the lever between straight lines of the diagram', () => {
    const curve = heatCurve({ ...bronze, base: copper }, 0);
    // Both lines begin at the base metal. Partition ratio: composition of the solid to that of the liquid.
    const partition = (copper - liquidus) / (copper - solidus);
    for (const kelvin of [1140, 1180, 1220, 1240]) {
      const lever = (liquidus - kelvin) / (copper - kelvin) / (1 - partition);
      expect(curve.solidOf(curve.heatOf(kelvin))).toBeCloseTo(lever, 9);
    }
  });

  it('share out solid evenly where no base metal is given', () => {
    const curve = heatCurve(bronze, 0);
    expect(curve.solidOf(curve.heatOf((solidus + liquidus) / 2))).toBeCloseTo(0.5, 9);
  });
});
