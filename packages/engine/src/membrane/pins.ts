import { type Goal, wayLeft } from './goals.ts';
import type { GaveWay } from './question.ts';
import type { System } from './system.ts';
import { GIVE, tetherForce } from './tethers.ts';

/** A pin may let go and be caught again this often before it stays as it is. */
const MOST_CHANGES = 4;
/** mm: a node this far inside its pin is caught again. */
const CAUGHT = 1e-6;
/** One that gave way holds again where it is short by less than this share of GIVE. */
const BACK = 0.5;

/** Force (N, x and y) that a goal puts on the sheet. The system must be evaluated at `points`. */
export const reactionOf = (
  { frames, totals }: System,
  goal: Goal,
  points: Float64Array,
): readonly [number, number] => {
  if (goal.released) return [0, 0];
  if (goal.slipped) return tetherForce(goal, points);
  const { node, kind, along } = goal;
  const [first, second] = [totals.forces[2 * node]!, totals.forces[2 * node + 1]!];
  if (kind !== 'slide' || frames.turned[node] === 0)
    return kind === 'slide' ? [0, second] : [first, second];
  return [-along[1] * second, along[0] * second];
};

/** Lets those slip that bear more than they can; whether there were any. The system must be evaluated. */
export const slipPins = (system: System, goals: readonly Goal[], points: Float64Array): boolean => {
  const over = goals.filter(
    (goal) => !goal.slipped && Math.hypot(...reactionOf(system, goal, points)) > goal.most,
  );
  for (const goal of over) Object.assign(goal, { slipped: true, frozen: undefined });
  if (over.length > 0) system.prescribe(goals);
  return over.length > 0;
};

/**
 * Lets go of pins that push by more than `least` N and catches those that the sheet has come back to, or
 * that bear less than they can again; whether any changed. A pin inside a piece, or one that changes
 * without end, holds.
 */
export const changePins = (
  system: System,
  goals: readonly Goal[],
  points: Float64Array,
  least: number,
): boolean => {
  let changed = false;
  const change = (goal: Goal, to: Partial<Pick<Goal, 'released' | 'slipped'>>): void => {
    Object.assign(goal, to);
    goal.changes += 1;
    changed = true;
  };
  for (const goal of goals) {
    const able = goal.changes < MOST_CHANGES;
    if (goal.slipped && able && Math.hypot(...wayLeft(goal, points)) < BACK * GIVE)
      change(goal, { slipped: false });
    if (goal.kind !== 'pin' || goal.outward === undefined || goal.frozen !== undefined) continue;
    const [nx, ny] = goal.outward;
    const [rx, ry] = reactionOf(system, goal, points);
    const [dx, dy] = wayLeft(goal, points);
    const inside = dx * nx + dy * ny > CAUGHT;
    const wrong = goal.released ? inside : rx * nx + ry * ny < -least;
    if (!wrong || !(able || goal.released)) continue;
    change(goal, { released: !goal.released, slipped: false });
  }
  if (changed) system.prescribe(goals);
  return changed;
};

/** The goals that did not come to their places, with what was at its limit. */
export const gaveWayOf = (goals: readonly Goal[], points: Float64Array): GaveWay[] =>
  goals.flatMap((goal): GaveWay[] => {
    const { kind, index, node, frozen } = goal;
    const by = goal.slipped ? ({ kind: 'pull' } as const) : frozen;
    if (by === undefined || goal.released) return [];
    return [{ kind, index, node, short: Math.hypot(...wayLeft(goal, points)), by }];
  });
