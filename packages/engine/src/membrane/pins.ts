import { type Goal, setFrames, wayLeft } from './goals.ts';
import type { System } from './system.ts';

/** A pin may let go and be caught again this often before it stays as it is. */
const MOST_CHANGES = 4;
/** mm: a node this far inside its pin is caught again. */
const CAUGHT = 1e-6;

/** Force (N, x and y) that a goal puts on the sheet. The system must be evaluated. */
export const reactionOf = ({ frames, totals }: System, goal: Goal): readonly [number, number] => {
  if (goal.released) return [0, 0];
  const { node, kind, along } = goal;
  const [first, second] = [totals.forces[2 * node]!, totals.forces[2 * node + 1]!];
  if (kind !== 'slide' || frames.turned[node] === 0)
    return kind === 'slide' ? [0, second] : [first, second];
  return [-along[1] * second, along[0] * second];
};

/**
 * Lets go of pins that push by more than `least` N and catches those that the sheet has come back to;
 * whether any changed. A pin inside a piece, or one that changes without end, holds.
 */
export const changePins = (
  system: System,
  goals: readonly Goal[],
  points: Float64Array,
  least: number,
): boolean => {
  let changed = false;
  for (const goal of goals) {
    if (goal.kind !== 'pin' || goal.outward === undefined || goal.frozen) continue;
    const [nx, ny] = goal.outward;
    const [rx, ry] = reactionOf(system, goal);
    const [dx, dy] = wayLeft(goal, points);
    const inside = dx * nx + dy * ny > CAUGHT;
    const wrong = goal.released ? inside : rx * nx + ry * ny < -least;
    if (!wrong || (goal.changes >= MOST_CHANGES && !goal.released)) continue;
    goal.released = !goal.released;
    goal.changes += 1;
    changed = true;
  }
  if (changed) {
    setFrames(system.frames, goals);
    system.factor = undefined;
  }
  return changed;
};
