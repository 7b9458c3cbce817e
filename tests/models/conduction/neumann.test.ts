import { describe, expect, it } from 'vitest';
import { exact, onChill, onChillOverRange, onMesh, onSand } from './half-space.ts';

/** Relative to the 1000 °C or so that the temperatures range over. */
const kelvinClose = (found: number, wanted: number, within: number) => {
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThan(within);
};
const close = (found: number, wanted: number, part: number) => {
  expect(Math.abs(found / wanted - 1), `${found} for ${wanted}`).toBeLessThan(part);
};

describe('Neumann’s closed form, derived again', () => {
  // Worked out apart from this code, from the same closed form.
  it('agrees with the numbers worked out before for a chill', () => {
    const one = exact(onChill);
    kelvinClose(one.contact, 812.973, 6e-4);
    close(one.solidus, 2.881486e-3, 2e-7);
    kelvinClose(one.at(0.5e-3, 1), 846.788, 6e-4);
    kelvinClose(one.at(-1e-3, 1), 678.88, 6e-4);
    const range = exact(onChillOverRange);
    kelvinClose(range.contact, 792.155, 6e-4);
    close(range.solidus, 0.884251e-3, 7e-7);
    close(range.liquidus, 4.190617e-3, 2e-7);
    kelvinClose(range.at(0.5e-3, 1), 824.954, 6e-4);
    kelvinClose(range.at(2e-3, 1), 916.575, 6e-4);
    kelvinClose(range.at(-1e-3, 1), 662.09, 6e-4);
  });

  it('agrees with the numbers worked out before for sand', () => {
    const one = exact(onSand);
    close(one.solidus, 0.644687e-3, 1e-6);
    kelvinClose(one.contact, 994.316, 6e-4);
  });

  // ExactFieldSolutions.jl, documentation of Diffusion1D_StefanProblem (read): a face held at 0, freezing at
  // 1050, L 4e5, c 1e3, α 7e-6, printed to sixteen figures. A mould of boundless effusivity holds the face.
  it('is Stefan’s problem, as published to sixteen figures, when the mould holds its face', () => {
    const stefan = exact({
      k: 7e-3,
      rho: 1,
      c: 1e3,
      latent: 4e5,
      solidus: 1050,
      liquidus: 1050,
      poured: 1050,
      mould: { k: 1e15, rhoc: 1e15, start: 0 },
    });
    close(stefan.solidus * Math.sqrt(1e5), 1.465974602531472, 1e-12);
    close(stefan.at(1, 1e5), 805.5540353379434, 1e-12);
    close(stefan.at(0.1, 1e5), 90.13122886071284, 1e-12);
  });
});

describe('the solver on a half-space', () => {
  it('keeps to it on a chill, freezing at one temperature', () => {
    const one = exact(onChill);
    const found = onMesh(onChill, 1, 0.03, 5e-5, 0.005);
    kelvinClose(found.contact, one.contact, 0.4);
    close(found.solid, one.solidus, 0.001);
    kelvinClose(found.at(0.5e-3), one.at(0.5e-3, 1), 0.4);
    kelvinClose(found.at(-1e-3), one.at(-1e-3, 1), 0.4);
    expect(found.result.drift).toBeLessThan(1e-9);
  });

  it('keeps to it on a chill, freezing over a range', () => {
    const one = exact(onChillOverRange);
    const found = onMesh(onChillOverRange, 1, 0.03, 5e-5, 0.005);
    kelvinClose(found.contact, one.contact, 0.2);
    kelvinClose(found.at(0.5e-3), one.at(0.5e-3, 1), 0.2);
    kelvinClose(found.at(2e-3), one.at(2e-3, 1), 0.2);
    kelvinClose(found.at(-1e-3), one.at(-1e-3, 1), 0.2);
    close(found.reaches(850), one.solidus, 0.001);
    close(found.reaches(1000), one.liquidus, 0.001);
    expect(found.result.drift).toBeLessThan(1e-9);
  });

  it('keeps to it on sand', () => {
    const one = exact(onSand);
    const found = onMesh(onSand, 4, 0.03, 5e-5, 0.005);
    kelvinClose(found.contact, one.contact, 0.1);
    close(found.solid, 2 * one.solidus, 0.001);
    expect(found.result.drift).toBeLessThan(1e-9);
  });

  it('keeps to Stefan’s published front where the face is held', () => {
    // The published metal, its lengths and times divided so that k, ρ and c are a metal’s: α t is the same.
    const stefan = {
      ...onChill,
      k: 7e-6 * 1e3 * 8600,
      c: 1e3,
      latent: 4e5,
      solidus: 1050,
      liquidus: 1050,
      poured: 1050,
      mould: { k: 1e9, rhoc: 1e13, start: 0 },
    };
    const time = 1;
    const found = onMesh(stefan, time, 0.02, 5e-5, 0.005);
    const published = 1.465974602531472 / Math.sqrt(1e5);
    close(found.solid, published, 0.001);
    expect(found.result.drift).toBeLessThan(1e-9);
  });
});
