/** A number for the solid and one for the liquid; between them it follows the share that is solid. */
export interface ByPhase {
  readonly solid: number;
  readonly liquid: number;
}

/** A metal that freezes. One density: the cavity keeps its volume, so nothing flows as it freezes. SI units. */
export interface Metal {
  readonly k: ByPhase;
  readonly rho: number;
  readonly c: ByPhase;
  /** J/kg. */
  readonly latent: number;
  /** K. Equal temperatures: it freezes at one temperature. */
  readonly solidus: number;
  readonly liquidus: number;
  /**
   * Melting point of the base metal, K. With it the share solid follows the lever rule between straight
   * liquidus and solidus lines that meet there; without it, it falls evenly over the range.
   */
  readonly base?: number;
}

/** What surrounds the metal: mould, chill, flask or a gap of air. SI units. */
export interface Stuff {
  readonly name: string;
  readonly k: number;
  /** Heat capacity of a volume, J/(m³·K). */
  readonly rhoc: number;
  /** Interface coefficient to the metal, W/(m²·K); `Infinity` is perfect contact. */
  readonly h: number;
}

/** Region 0 is the metal; region n is the n-th of the other substances. */
export const metalRegion = 0;
