/**
 * Line load of a knitted fabric stretched in one direction, from its true rest:
 *
 *   σ(ε) = Yε + β[(1 − αε)⁻² − 1 − 2αε],   ε ≥ 0 below the limit 1/α
 *
 * (Singal et al. 2024, Nature Communications 15, 2622, with the two terms removed that make stress
 * and slope right at rest). Squeezed, as when it is pulled the other way, it pushes back with the same
 * slope, and where stitches come to touch without bound:
 *
 *   −σ(ε) = Ye / √(1 − (e/J)²),   e = −ε ≥ 0 below the jam J
 *
 * an assumption of form: linear at first, as a loop simulation narrows, with a closed inverse. Loads
 * in N per mm of width at rest, strains as fractions of rest.
 */
export interface StretchLaw {
  /** Y: stiffness at rest, N/mm. */
  readonly slope: number;
  /** β: how strongly it stiffens, N/mm. */
  readonly stiffening: number;
  /** 1/α: strain that no load reaches. */
  readonly limit: number;
  /** J: squeeze that no push reaches, as a positive fraction; left out, squeezing is linear. */
  readonly jam?: number;
}

/** Terms of the tension side are summed by hand: (1 − x)⁻² − 1 − 2x = x²(3 − 2x)/(1 − x)² and so on. */

/** Line load at a strain, N/mm; Infinity at the limit and beyond, −Infinity at the jam and beyond. */
export const loadAt = (law: StretchLaw, strain: number): number => {
  if (strain <= 0) return 0 - pushAt(law, -strain);
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : law.slope * strain + (law.stiffening * x * x * (3 - 2 * x)) / ((1 - x) * (1 - x));
};

/** Slope of the load, N/mm. */
export const stiffnessAt = (law: StretchLaw, strain: number): number => {
  if (strain <= 0) {
    const room = roomAt(law, -strain);
    return law.slope / (room * Math.sqrt(room));
  }
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : law.slope +
        (2 * law.stiffening * x * (3 - 3 * x + x * x)) / (law.limit * (1 - x) * (1 - x) * (1 - x));
};

/** Energy stored per area at rest, N·mm per mm². */
export const energyAt = (law: StretchLaw, strain: number): number => {
  if (strain <= 0) return squeezeEnergy(law, -strain);
  const linear = (law.slope * strain * strain) / 2;
  const x = strain / law.limit;
  return x >= 1
    ? Number.POSITIVE_INFINITY
    : linear + (law.stiffening * law.limit * x * x * x) / (1 - x);
};

/** What is left of the way to the jam: 1 at rest, 0 at the jam and beyond. */
const roomAt = ({ jam }: StretchLaw, squeeze: number): number => {
  if (jam === undefined) return 1;
  const x = squeeze / jam;
  return x < 1 ? 1 - x * x : 0;
};

/** Ye/√(1 − (e/J)²). */
const pushAt = (law: StretchLaw, squeeze: number): number =>
  (law.slope * squeeze) / Math.sqrt(roomAt(law, squeeze));

/** YJ²(1 − √(1 − (e/J)²)), written so that it holds without a jam too. */
const squeezeEnergy = (law: StretchLaw, squeeze: number): number => {
  const room = roomAt(law, squeeze);
  return room > 0
    ? (law.slope * squeeze * squeeze) / (1 + Math.sqrt(room))
    : Number.POSITIVE_INFINITY;
};

/** Squeeze (0 or more, below the jam) under a push of 0 or more N/mm: the inverse, in closed form. */
export const squeezeUnder = ({ slope, jam }: StretchLaw, push: number): number => {
  const free = push / slope;
  if (jam === undefined) return free;
  const t = free / jam;
  return free / Math.sqrt(1 + t * t);
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
