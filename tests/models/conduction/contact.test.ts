import { expect, it } from 'vitest';
import { onChill, onMesh } from './half-space.ts';

it('the face jumps to the temperature of two bodies in contact while nothing has frozen', () => {
  const liquid = { ...onChill, solidus: 400, liquidus: 400, poured: 1100 };
  const found = onMesh(liquid, 0.02, 0.01, 1e-5, 0.005);
  const metal = Math.sqrt(60 * 8600 * 435);
  const mould = Math.sqrt(30 * 3.6e6);
  // Carslaw and Jaeger, §2.15: weighted by the roots of kρc.
  const wanted = (metal * 1100 + mould * 120) / (metal + mould);
  expect(Math.abs(found.contact - wanted)).toBeLessThan(1);
});
