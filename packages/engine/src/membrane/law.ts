/**
 * How one direction of a sheet, or a line in it, answers to strain ε = λ − 1 along itself, counted
 * from rest. Load is per width at rest (N/mm) for a sheet and a force (N) for a line; energy is per
 * area or length at rest. Energy is convex with its least value, 0, at ε = 0; `stress` is its slope
 * and `stiffness` the slope of that. At and beyond `limit` and `jam` all three may be Infinity.
 */
export interface TensionLaw {
  readonly energy: (strain: number) => number;
  readonly stress: (strain: number) => number;
  readonly stiffness: (strain: number) => number;
  /** Strain that no pull reaches; Infinity where there is none. */
  readonly limit: number;
  /** Strain that no squeeze reaches, −1 < jam < 0; without it lengths may shrink to nothing. */
  readonly jam?: number;
}

/** Hooke's law without a limit: load = stiffness · ε. */
export const linearLaw = (stiffness: number): TensionLaw => ({
  energy: (strain) => (stiffness * strain * strain) / 2,
  stress: (strain) => stiffness * strain,
  stiffness: () => stiffness,
  limit: Number.POSITIVE_INFINITY,
});

export interface Stiffening {
  /** Stiffness at rest, N/mm, above 0. */
  readonly slope: number;
  /** How strongly it stiffens, N/mm, 0 or more. */
  readonly stiffening: number;
  /** Strain that no pull reaches, above 0. */
  readonly limit: number;
  /** Strain that no squeeze reaches, −1 < jam < 0. */
  readonly jam?: number;
}

/**
 * Load Yε + β[(1 − x)⁻² − 1 − 2x] with x = ε/limit, after Singal et al. 2024, Nature Communications
 * 15, 2622; in compression x = ε/jam with the sign of β turned, or Yε alone where there is no jam.
 */
export const stiffeningLaw = ({ slope, stiffening, limit, jam }: Stiffening): TensionLaw => {
  const squeezed = jam ?? Number.NEGATIVE_INFINITY;
  const shareOf = (strain: number): number => strain / (strain >= 0 ? limit : squeezed);
  return {
    energy: (strain) => {
      const x = shareOf(strain);
      if (x >= 1) return Number.POSITIVE_INFINITY;
      const linear = (slope * strain * strain) / 2;
      // |end| · (1/(1 − x) − 1 − x − x²) = |ε| x²/(1 − x).
      return linear + (stiffening * Math.abs(strain) * x * x) / (1 - x);
    },
    stress: (strain) => {
      const x = shareOf(strain);
      if (x >= 1) return strain > 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
      const bracket = 1 / ((1 - x) * (1 - x)) - 1 - 2 * x;
      return slope * strain + (strain > 0 ? stiffening : -stiffening) * bracket;
    },
    stiffness: (strain) => {
      const x = shareOf(strain);
      if (x >= 1) return Number.POSITIVE_INFINITY;
      const end = strain >= 0 ? limit : -squeezed;
      return slope + (2 * stiffening * (1 / ((1 - x) * (1 - x) * (1 - x)) - 1)) / end;
    },
    limit,
    ...(jam === undefined ? {} : { jam }),
  };
};
