import { shareShyOfFold } from './folds.ts';
import { shareBeforeLimit } from './limits.ts';
import { multiply, withoutFixed } from './matrix.ts';
import { type Factor, factorise, solve } from './sparse/index.ts';
import type { System } from './system.ts';

export interface NewtonOptions {
  /** Residual (N) that counts as equilibrium after so many iterations. */
  readonly tolerance: (iterations: number) => number;
  readonly mostIterations: number;
  /** Gives up after this many steps that were cut to less than half. */
  readonly mostCuts: number;
  /** Where a whole step left less than this share of the residual, the next one uses the same factor. */
  readonly chordBelow: number;
  /** Added to the diagonal where the pieces can move freely, N/mm; 0 where they are held. */
  readonly shift: number;
  /** Called after each iteration; false stops. */
  readonly onIteration: (residual: number) => boolean;
}

export interface NewtonEnd {
  readonly iterations: number;
  readonly residual: number;
  readonly converged: boolean;
  readonly stopped: boolean;
  /** Residuals from the start, N. */
  readonly history: readonly number[];
}

/** Step no closer to a limit than this share of the way. */
const SHY_OF_LIMIT = 0.95;
const LEAST_SHARE = 2 ** -30;
/** A step must fall by this share of what its slope promises (Armijo), or halve the slope. */
const ENOUGH = 1e-4;
const FLATTER = 0.5;
const CUT = 0.5;

/** Largest entry on the diagonal of the stiffness, N/mm. */
export const largestDiagonal = ({ parts, totals }: System): number => {
  const { n, colPtr } = parts.symbolic.pattern;
  let largest = 0;
  for (let j = 0; j < n; j++) largest = Math.max(largest, totals.stiffness[colPtr[j + 1]! - 1]!);
  return largest;
};

/**
 * Factor of the stiffness last evaluated at `points`. Where compression makes it indefinite it is evaluated
 * without that part, and where pieces can move freely a growing shift is added: the step leads downhill.
 */
export const factorStiffness = (system: System, points: Float64Array, shift: number): Factor => {
  const factorNow = (more: number): Factor => {
    const { symbolic } = system.parts;
    const values = withoutFixed(symbolic.pattern, system.totals.stiffness, system.frames.fixed, 1);
    return factorise(symbolic, values, { shift: shift + more });
  };
  let factor = factorNow(0);
  if (bad(factor)) {
    system.evaluate(points, 'safe-stiffness');
    factor = factorNow(0);
  }
  const first = 1e-12 * factor.scale;
  for (let more = first; more < factor.scale && bad(factor); more *= 100) factor = factorNow(more);
  system.factor = factor;
  return factor;
};

const bad = ({ complete, pivots }: Factor): boolean => !complete || pivots.negative > 0;

/**
 * Step of all nodes, x and y, when prescribed unknowns move by `moved` (own axes; zeros elsewhere) and
 * the others answer: K p = −f − K·moved among the free ones.
 */
export const answer = (
  { parts, frames, totals }: System,
  factor: Factor,
  moved: Float64Array | undefined,
): Float64Array => {
  const right = new Float64Array(totals.forces.length);
  const drag =
    moved === undefined ? undefined : multiply(parts.symbolic.pattern, totals.stiffness, moved);
  for (let k = 0; k < right.length; k++)
    if (frames.fixed[k] === 0) right[k] = -totals.forces[k]! - (drag === undefined ? 0 : drag[k]!);
  // Without a factor the free nodes stay; the caller sees that nothing settles.
  const step = factor.complete ? solve(factor, right) : new Float64Array(right.length);
  if (moved !== undefined)
    for (let k = 0; k < step.length; k++) if (frames.fixed[k] === 1) step[k] = moved[k]!;
  frames.intoShared(step);
  return step;
};

const slopeAlong = ({ frames, totals }: System, step: Float64Array): number => {
  const own = step.slice();
  frames.intoOwn(own);
  let slope = 0;
  for (let k = 0; k < own.length; k++)
    if (frames.fixed[k] === 0) slope += own[k]! * totals.forces[k]!;
  return slope;
};

/**
 * Moves `points` along `step` until energy has fallen enough; leaves the system evaluated there. The share taken, 0
 * where no share of the step does (rounding has the last word): then `points` are as they were.
 */
const searchLine = (system: System, points: Float64Array, step: Float64Array): number => {
  const { sheet, cords } = system.parts;
  const from = points.slice();
  const energy = system.totals.energy;
  const slope = slopeAlong(system, step);
  const rounding = 1e-14 * Math.abs(energy);
  const limit = SHY_OF_LIMIT * shareBeforeLimit(sheet, cords, points, step);
  let share = Math.min(shareShyOfFold(sheet, points, step), limit);
  while (share > LEAST_SHARE) {
    for (let k = 0; k < points.length; k++) points[k] = from[k]! + share * step[k]!;
    system.evaluate(points, 'stiffness');
    const now = system.totals.energy;
    const slopeNow = now < Number.POSITIVE_INFINITY ? slopeAlong(system, step) : Number.NaN;
    if (now <= energy + ENOUGH * share * slope) return share;
    if (now <= energy + rounding && Math.abs(slopeNow) <= FLATTER * Math.abs(slope)) return share;
    // Least energy between, were the slope to change evenly.
    const even = slopeNow > 0 ? -slope / (slopeNow - slope) : 0.5;
    share *= Math.min(0.6, Math.max(0.1, even));
  }
  points.set(from);
  system.evaluate(points, 'stiffness');
  return 0;
};

/**
 * Equilibrium of the unknowns that are not prescribed, by Newton's method with a line search, moving
 * `points`, which must be short of every limit. The system is left evaluated at the end.
 */
export const newton = (system: System, points: Float64Array, options: NewtonOptions): NewtonEnd => {
  system.evaluate(points, 'stiffness');
  if (system.totals.energy === Number.POSITIVE_INFINITY)
    return {
      iterations: 0,
      residual: Number.POSITIVE_INFINITY,
      converged: false,
      stopped: false,
      history: [],
    };
  const history = [system.residual()];
  const extent = points.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  let iterations = 0;
  let cuts = 0;
  let chord = false;
  let [stopped, stuck] = [false, false];
  // Places are known to 2⁻⁵³ of their size, so no residual is surer than what that moves.
  const close = () =>
    Math.max(options.tolerance(iterations), 4 * Number.EPSILON * extent * largestDiagonal(system));
  const residual = () => history[history.length - 1]!;
  while (residual() > close() && iterations < options.mostIterations && !stuck && !stopped) {
    const kept = chord ? system.factor : undefined;
    const factor = kept ?? factorStiffness(system, points, options.shift);
    if (!factor.complete) break;
    const step = answer(system, factor, undefined);
    const share = searchLine(system, points, step);
    if (share < CUT) cuts++;
    stuck = share === 0 || cuts > options.mostCuts;
    history.push(system.residual());
    chord = share === 1 && residual() < options.chordBelow * history[history.length - 2]!;
    iterations++;
    stopped = !options.onIteration(residual());
  }
  const converged = residual() <= close();
  return { iterations, residual: residual(), converged, stopped, history };
};
