import { type Goal, moves, wayLeft } from './goals.ts';
import { type Worst, worstSlope } from './limits.ts';
import { multiply } from './matrix.ts';
import { factorStiffness } from './newton.ts';
import type { GaveWay } from './question.ts';
import { solve } from './sparse/index.ts';
import type { System } from './system.ts';

/** Goals that give way together with the one that stretches the worst place most: from this share of it. */
const WITH_THE_WORST = 0.3;

/**
 * How much of the stretch at the worst place each goal still to be reached would add: slope of its
 * squared length by the prescribed unknowns, the others answering, times the way left. One solve with
 * the stiffness (it is its own adjoint).
 */
const blame = (
  system: System,
  goals: readonly Goal[],
  points: Float64Array,
  worst: Worst,
  shift: number,
): number[] => {
  const { parts, frames, totals } = system;
  const slope = worstSlope(parts.sheet, parts.cords, points, worst);
  frames.intoOwn(slope);
  const free = slope.map((value, k) => (frames.fixed[k] === 0 ? value : 0));
  const factor = factorStiffness(system, points, shift);
  if (!factor.complete) return goals.map(() => 0);
  const adjoint = solve(factor, free);
  for (let k = 0; k < adjoint.length; k++) if (frames.fixed[k] === 1) adjoint[k] = 0;
  const passed = multiply(parts.symbolic.pattern, totals.stiffness, adjoint);
  return goals.map((goal) => {
    const [i, j] = [2 * goal.node, 2 * goal.node + 1];
    const [dx, dy] = wayLeft(goal, points);
    return (slope[i]! - passed[i]!) * dx + (slope[j]! - passed[j]!) * dy;
  });
};

const placeOf = ({ triangle, line, cord }: Worst): GaveWay['by'] => {
  if (cord >= 0) return { kind: 'cord', cord };
  return triangle >= 0 ? { kind: 'triangle', triangle, line } : { kind: 'no-equilibrium' };
};

/**
 * Freezes the goals that stretch the place `worst` most, at least one of those that still move.
 * The system must be evaluated at `points` with its stiffness.
 */
export const freezeWorst = (
  system: System,
  goals: readonly Goal[],
  points: Float64Array,
  worst: Worst,
  shift: number,
): void => {
  const moving = stillMoving(goals, points);
  const blames = blame(system, moving, points, worst, shift);
  const most = Math.max(0, ...blames);
  const given = most > 0 ? moving.filter((_, k) => blames[k]! >= WITH_THE_WORST * most) : moving;
  freeze(given, worst);
};

/** Freezes all that still move, for a reason. */
export const freezeAll = (goals: readonly Goal[], points: Float64Array, worst: Worst): void =>
  freeze(stillMoving(goals, points), worst);

const stillMoving = (goals: readonly Goal[], points: Float64Array): Goal[] =>
  goals.filter((goal) => moves(goal) && Math.hypot(...wayLeft(goal, points)) > 0);

const freeze = (given: readonly Goal[], worst: Worst): void => {
  for (const goal of given) goal.frozen = placeOf(worst);
};
