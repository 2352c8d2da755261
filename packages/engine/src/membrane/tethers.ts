import type { Frames } from './frames.ts';
import { yielding } from './friction.ts';
import { type Goal, wayLeft } from './goals.ts';
import type { Totals } from './totals.ts';

/**
 * mm over which a constraint that gives way comes to bear all it can: what a tape cannot tell, and no more.
 * With it energy is convex and smooth, and where the sheet comes to rest does not hang on the way there.
 */
export const GIVE = 0.5;

/** Force (N, x and y) of a constraint that gave way: towards its place, as much as it bears. */
export const tetherForce = (goal: Goal, points: Float64Array): readonly [number, number] => {
  const [wx, wy] = wayInShared(goal, points);
  const { share } = yielding(goal.most, Math.hypot(wx, wy), GIVE);
  return [share * wx, share * wy];
};

/** Way left, in x and y: across its line for a slide. */
const wayInShared = (goal: Goal, points: Float64Array): readonly [number, number] => {
  const [first, second] = wayLeft(goal, points);
  return goal.kind === 'slide'
    ? [-goal.along[1] * second, goal.along[0] * second]
    : [first, second];
};

/** Adds constraints that gave way to the totals. `map`: positions of each node's three entries in the stiffness. */
export const addTethers = (
  tethers: readonly Goal[],
  map: Int32Array,
  points: Float64Array,
  frames: Frames,
  withStiffness: boolean,
  totals: Totals,
): void => {
  const packed = new Float64Array(3);
  for (const goal of tethers) {
    const { node, most, kind, along } = goal;
    const [wx, wy] = wayInShared(goal, points);
    const away = Math.hypot(wx, wy);
    const { energy, share, slides } = yielding(most, away, GIVE);
    totals.energy += energy;
    totals.forces[2 * node]! -= share * wx;
    totals.forces[2 * node + 1]! -= share * wy;
    if (!withStiffness) continue;
    // Along the way nothing more is borne once it slides; a wire bears nothing along its line ever.
    const [tx, ty] = slides ? [wx / away, wy / away] : [0, 0];
    const [ux, uy] = kind === 'slide' ? along : [0, 0];
    packed.set([
      share * (1 - tx * tx - ux * ux),
      -share * (tx * ty + ux * uy),
      share * (1 - ty * ty - uy * uy),
    ]);
    if (frames.turned[node] === 1) frames.turnElement(packed, [node]);
    for (let p = 0; p < 3; p++) totals.stiffness[map[3 * node + p]!]! += packed[p]!;
  }
};
