import { cholesky, type RandomSource, solveLower, solveUpper } from '../stats/index.ts';

/** What was weighed, as a function of the unknowns: its misses, each over its SD. */
export type Misses = (z: Float64Array) => Float64Array;

/** Rows of unknowns with weights that add up to 1. */
export interface Learnt {
  readonly rows: readonly Float64Array[];
  readonly weights: Float64Array;
  /** 1 / Σ weight² (Kish 1965). */
  readonly effectiveDraws: number;
  readonly fit: {
    readonly iterations: number;
    /** Largest change of an unknown in the last step, in its prior SDs. */
    readonly residual: number;
    readonly converged: boolean;
  };
}

export interface LearnOptions {
  readonly unknowns: number;
  readonly draws: number;
  readonly source: RandomSource;
}

const sumSquares = (v: Float64Array): number => v.reduce((sum, x) => sum + x * x, 0);

/** The unknowns as believed before any weighing: independent standard normals. */
export const believe = ({ unknowns, draws, source }: LearnOptions): Learnt => ({
  rows: Array.from({ length: draws }, () =>
    Float64Array.from({ length: unknowns }, () => source.normal()),
  ),
  weights: new Float64Array(draws).fill(1 / draws),
  effectiveDraws: draws,
  fit: { iterations: 0, residual: 0, converged: true },
});

/** Of forward differences, in prior SDs: far above rounding, far below 1. */
const STEP = 1e-4;
const STEPS = 40;
const CLOSE = 1e-3;

/** Precision I + JᵀJ, row-major, and the downhill direction −z − Jᵀm. */
const linearised = (misses: Misses, z: Float64Array) => {
  const n = z.length;
  const at = misses(z);
  const columns = Array.from({ length: n }, (_, j) => {
    const moved = Float64Array.from(z);
    moved[j]! += STEP;
    return misses(moved).map((m, i) => (m - at[i]!) / STEP);
  });
  const precision = new Float64Array(n * n);
  const downhill = new Float64Array(n);
  for (let a = 0; a < n; a++) {
    downhill[a] = -z[a]! - dot(columns[a]!, at);
    for (let b = 0; b < n; b++)
      precision[a * n + b] = dot(columns[a]!, columns[b]!) + (a === b ? 1 : 0);
  }
  return { precision, downhill };
};

const dot = (a: Float64Array, b: Float64Array): number =>
  a.reduce((sum, x, i) => sum + x * b[i]!, 0);

/** Twice the negative logarithm of prior times likelihood. */
const cost = (misses: Misses, z: Float64Array): number => sumSquares(z) + sumSquares(misses(z));

/** The likeliest unknowns, by Gauss-Newton with halved steps, and the precision there. */
const likeliest = (misses: Misses, unknowns: number) => {
  let z: Float64Array = new Float64Array(unknowns);
  let best = cost(misses, z);
  let residual = Number.POSITIVE_INFINITY;
  let iterations = 0;
  let local = linearised(misses, z);
  while (iterations < STEPS && residual > CLOSE) {
    const factor = cholesky(local.precision, unknowns);
    const step = solveUpper(factor, unknowns, solveLower(factor, unknowns, local.downhill));
    let share = 1;
    let next = z.map((x, i) => x + step[i]!);
    let reached = cost(misses, next);
    while (reached > best && share > CLOSE) {
      share /= 2;
      const s = share;
      next = z.map((x, i) => x + s * step[i]!);
      reached = cost(misses, next);
    }
    iterations++;
    residual = step.reduce((most, x) => Math.max(most, Math.abs(x) * share), 0);
    if (reached > best) break;
    z = next;
    best = reached;
    local = linearised(misses, z);
  }
  const fit = { iterations, residual, converged: residual <= CLOSE };
  return { z, best, factor: cholesky(local.precision, unknowns), fit };
};

/** Degrees of freedom of the proposal: tails heavier than those of any posterior here. */
const FREEDOM = 8;

/**
 * Importance sampling about the likeliest unknowns: a multivariate Student proposal with the
 * precision there (Geweke 1989), each row weighted by prior times likelihood over proposal.
 * Deterministic in the source; the order of the weighings changes rounding only.
 */
export const learn = (misses: Misses, options: LearnOptions): Learnt => {
  const { unknowns, draws, source } = options;
  const { z, best, factor, fit } = likeliest(misses, unknowns);
  const logs = new Float64Array(draws);
  const rows = Array.from({ length: draws }, (_, draw) => {
    const away = Float64Array.from({ length: unknowns }, () => source.normal());
    let chi = 0;
    for (let i = 0; i < FREEDOM; i++) chi += source.normal() ** 2;
    const stretch = Math.sqrt(FREEDOM / chi);
    for (let i = 0; i < unknowns; i++) away[i]! *= stretch;
    const proposal = -0.5 * (FREEDOM + unknowns) * Math.log1p(sumSquares(away) / FREEDOM);
    const row = solveUpper(factor, unknowns, away).map((x, i) => x + z[i]!);
    logs[draw] = -0.5 * (cost(misses, row) - best) - proposal;
    return row;
  });
  const top = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const raw = logs.map((log) => Math.exp(log - top));
  const total = raw.reduce((a, b) => a + b, 0);
  const weights = raw.map((w) => w / total);
  return { rows, weights, effectiveDraws: 1 / sumSquares(weights), fit };
};
