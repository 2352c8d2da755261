/**
 * Line load of a knitted fabric stretched in one direction, from its true rest:
 *
 *   σ(ε) = Yε + β[(1 − αε)⁻² − 1 − 2αε],   ε ≥ 0 below the limit 1/α
 *
 * (Singal et al. 2024, Nature Communications 15, 2622, with the two terms removed that make stress
 * and slope right at rest). In compression only the slope Y is left: what becomes of it is for the
 * membrane to say. Loads in N per mm of width at rest, strains as fractions of rest.
 */
export interface StretchLaw {
  /** Y: stiffness at rest, N/mm. */
  readonly slope: number;
  /** β: how strongly it stiffens, N/mm. */
  readonly stiffening: number;
  /** 1/α: strain that no load reaches. */
  readonly limit: number;
}

/** Line load at a strain, N/mm; Infinity at the limit and beyond. */
export const loadAt = (law: StretchLaw, strain: number): number => {
  if (strain <= 0) return law.slope * strain;
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : law.slope * strain + law.stiffening * ((1 - x) ** -2 - 1 - 2 * x);
};

/** Slope of the load, N/mm. */
export const stiffnessAt = (law: StretchLaw, strain: number): number => {
  if (strain <= 0) return law.slope;
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : law.slope + (2 * law.stiffening * ((1 - x) ** -3 - 1)) / law.limit;
};

/** Energy stored per area at rest, N·mm per mm². */
export const energyAt = (law: StretchLaw, strain: number): number => {
  const linear = (law.slope * strain ** 2) / 2;
  if (strain <= 0) return linear;
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : linear + law.stiffening * law.limit * (1 / (1 - x) - 1 - x - x ** 2);
};

export interface StrainSolved {
  readonly value: number;
  readonly iterations: number;
  /** Load at `value` less the load asked for, N/mm. */
  readonly residual: number;
  readonly converged: boolean;
}

const MOST_STEPS = 100;

/**
 * Strain under a load of 0 or more. The law is convex and rises to infinity before the limit, so
 * Newton's steps from above fall monotonically; the start is where the stiffening alone would do.
 */
export const strainAt = (law: StretchLaw, load: number): StrainSolved => {
  if (!(load >= 0 && Number.isFinite(load))) throw new RangeError(`line load ${load} N/mm`);
  let strain = Math.min(load / law.slope, startAbove(law, load));
  let iterations = 0;
  let residual = loadAt(law, strain) - load;
  const close = 1e-13 * Math.max(load, law.slope);
  while (Math.abs(residual) > close && iterations < MOST_STEPS) {
    strain -= residual / stiffnessAt(law, strain);
    residual = loadAt(law, strain) - load;
    iterations++;
  }
  return { value: strain, iterations, residual, converged: Math.abs(residual) <= close * 10 };
};

/** Below the limit, where (1 − x)⁻² − 3 alone already carries the load: above the solution. */
const startAbove = (law: StretchLaw, load: number): number =>
  law.limit * (1 - (load / law.stiffening + 3) ** -0.5);
