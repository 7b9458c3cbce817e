import { erf, erfc } from '../../../calculators/core/special.ts';
import { axis, even, flat, graded } from '../../../calculators/models/conduction/axis.ts';
import { freeze, type Freezing } from '../../../calculators/models/conduction/freeze.ts';
import type { Case } from '../../../calculators/models/conduction/case.ts';
import type { Mesh } from '../../../calculators/models/conduction/mesh.ts';

/** A half-space of metal put against a half-space of mould, properties alike in all phases. SI, °C. */
export interface HalfSpace {
  readonly k: number;
  readonly rho: number;
  readonly c: number;
  readonly latent: number;
  readonly solidus: number;
  readonly liquidus: number;
  readonly poured: number;
  readonly mould: { readonly k: number; readonly rhoc: number; readonly start: number };
}

export interface Exact {
  /** °C. */
  readonly contact: number;
  /** Front, m/√s: solidus and liquidus, the same when it freezes at one temperature. */
  readonly solidus: number;
  readonly liquidus: number;
  /** °C at x m into the metal (below nought: into the mould) and t s. */
  readonly at: (x: number, t: number) => number;
}

function root(f: (x: number) => number, low: number, high: number): number {
  const sign = Math.sign(f(low));
  for (let n = 0; n < 200; n += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(f(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Neumann's solution, with a mould that warms and a zone of freezing between solidus and liquidus. All
 * temperatures depend on x/√t alone. In each zone T = A + B·erf(x/√(4αt)); in the freezing zone the latent
 * heat is part of the heat capacity, c + L/(Tl − Ts), so no heat appears at its two edges and the flux
 * runs through them. With no zone the front makes ρL for each metre it moves (Stefan's condition).
 */
export function exact(given: HalfSpace): Exact {
  const { k, rho, c, latent, solidus: ts, liquidus: tl, poured, mould } = given;
  const alpha = k / (rho * c);
  const b = Math.sqrt(k * rho * c);
  const bMould = Math.sqrt(mould.k * mould.rhoc);
  // Flux into the mould, bMould·(Tc − T0)/√(πt), is the flux out of the solid, b·(Ts − Tc)/(erf λ·√(πt)).
  const contactOf = (l: number): number => (b * ts + bMould * erf(l) * mould.start) / (b + bMould * erf(l));
  const alphaMould = mould.k / mould.rhoc;
  const inMould = (contact: number, x: number, t: number): number =>
    mould.start + (contact - mould.start) * erfc(-x / Math.sqrt(4 * alphaMould * t));

  if (tl === ts) {
    const lambda = root(
      (l) =>
        ((ts - contactOf(l)) / erf(l) - (poured - ts) / erfc(l)) * Math.exp(-l * l) * (c / latent) -
        Math.sqrt(Math.PI) * l,
      1e-6,
      4,
    );
    const contact = contactOf(lambda);
    const front = 2 * lambda * Math.sqrt(alpha);
    return {
      contact,
      solidus: front,
      liquidus: front,
      at: (x, t) => {
        const n = x / Math.sqrt(4 * alpha * t);
        if (n < 0) return inMould(contact, x, t);
        if (n < lambda) return contact + ((ts - contact) * erf(n)) / erf(lambda);
        return poured - ((poured - ts) * erfc(n)) / erfc(lambda);
      },
    };
  }

  const slow = k / (rho * (c + latent / (tl - ts)));
  const ratio = Math.sqrt(alpha / slow);
  /** erf at the far edge of the zone, from the flux through its near edge at λ. */
  const farErf = (l: number): number => {
    const near = l * ratio;
    const flux = ((ts - contactOf(l)) * Math.exp(-l * l)) / (erf(l) * Math.sqrt(alpha));
    return erf(near) + ((tl - ts) * Math.exp(-near * near)) / (Math.sqrt(slow) * flux);
  };
  const farOf = (l: number): number => root((m) => erf(m) - farErf(l), l * ratio, 6);
  const lambda = root(
    (l) => {
      if (farErf(l) >= 1) return 1;
      const far = farOf(l);
      const out = ((tl - ts) * Math.exp(-far * far)) / (Math.sqrt(slow) * (farErf(l) - erf(l * ratio)));
      const m = far / ratio;
      const into = poured > tl ? ((poured - tl) * Math.exp(-m * m)) / (Math.sqrt(alpha) * erfc(m)) : 0;
      return into - out;
    },
    1e-6,
    2,
  );
  const contact = contactOf(lambda);
  const near = lambda * ratio;
  const far = farOf(lambda);
  return {
    contact,
    solidus: 2 * lambda * Math.sqrt(alpha),
    liquidus: 2 * far * Math.sqrt(slow),
    at: (x, t) => {
      const n = x / Math.sqrt(4 * alpha * t);
      const m = x / Math.sqrt(4 * slow * t);
      if (n < 0) return inMould(contact, x, t);
      if (n < lambda) return contact + ((ts - contact) * erf(n)) / erf(lambda);
      if (m < far) return ts + ((tl - ts) * (erf(m) - erf(near))) / (erf(far) - erf(near));
      return poured - ((poured - tl) * erfc(n)) / erfc(far / ratio);
    },
  };
}

const kelvin = 273.15;

/** The same on a mesh: metal from 0 to `deep`, mould on the other side as deep, m; from `fine` cells at the face. */
export function onMesh(given: HalfSpace, until: number, deep: number, fine: number, growth: number) {
  const near = even(0, 40 * fine, 40);
  const metal = [...near, ...graded(40 * fine, deep, fine, 1.03).slice(1)];
  const mould = graded(0, -deep, fine / 2, 1.05);
  const edges = [...mould.slice(1).reverse(), ...metal];
  const region = new Uint8Array(edges.length - 1);
  region.fill(1, 0, mould.length - 1);
  const mesh: Mesh = { axes: [axis(edges), flat, flat], region };
  const of = <T>(value: T) => ({ solid: value, liquid: value });
  const { k, rho, c, latent } = given;
  const input: Case = {
    metal: {
      k: of(k),
      rho,
      c: of(c),
      latent,
      solidus: given.solidus + kelvin,
      liquidus: given.liquidus + kelvin,
    },
    others: [{ name: 'mould', k: given.mould.k, rhoc: given.mould.rhoc, h: Infinity }],
    mesh,
    start: [given.poured + kelvin, given.mould.start + kelvin],
    until,
    pace: { growth, shortest: 1e-4, longest: Infinity },
  };
  const result = freeze(input) as Freezing;
  const { centres, size } = mesh.axes[0];
  /** °C between the middles of cells, on a straight line. */
  const at = (x: number): number => {
    let n = centres.findIndex((centre) => centre > x);
    n = Math.max(1, n);
    const part = (x - centres[n - 1]!) / (centres[n]! - centres[n - 1]!);
    const [low, high] = [result.temperature[n - 1]!, result.temperature[n]!];
    return low + part * (high - low) - kelvin;
  };
  /** Where the metal passes a temperature, m. */
  const reaches = (celsius: number): number => {
    const n = result.temperature.findIndex((t, i) => region[i] === 0 && t - kelvin > celsius);
    const [low, high] = [result.temperature[n - 1]! - kelvin, result.temperature[n]! - kelvin];
    return centres[n - 1]! + ((celsius - low) / (high - low)) * (centres[n]! - centres[n - 1]!);
  };
  /** Thickness of what is solid, all shares added up, m. */
  const solid = result.solid.reduce((sum, part, m) => sum + part * size[result.metal[m]!]!, 0);
  const face = mould.length - 1;
  const draw = (n: number, conductivity: number) => conductivity / Math.abs(centres[n]!);
  const [a, m] = [draw(face, k), draw(face - 1, given.mould.k)];
  const contact = (a * result.temperature[face]! + m * result.temperature[face - 1]!) / (a + m) - kelvin;
  return { result, at, reaches, solid, contact };
}

/** A gunmetal-like metal against a steel-like chill. */
export const onChill: HalfSpace = {
  k: 60,
  rho: 8600,
  c: 435,
  latent: 190e3,
  solidus: 1000,
  liquidus: 1000,
  poured: 1100,
  mould: { k: 30, rhoc: 3.6e6, start: 120 },
};
export const onChillOverRange: HalfSpace = { ...onChill, solidus: 850 };
export const onSand: HalfSpace = { ...onChill, poured: 1000, mould: { k: 0.7, rhoc: 1.65e6, start: 120 } };
