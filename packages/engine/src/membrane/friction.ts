import type { Frames } from './frames.ts';
import type { Totals } from './totals.ts';

/**
 * A mat that holds what lies on it: a node bears up to a force before it slides from where it was laid.
 * Regularised: the force grows evenly over SLIP mm and then stays, so that energy is convex and smooth.
 */
export interface Friction {
  /** Most force that each node bears, N. */
  readonly most: Float64Array;
  /** Where the nodes were laid, mm. */
  readonly laid: Float64Array;
}

/** mm over which the force of friction builds up: what a tape cannot tell, and no more. */
export const SLIP = 0.5;

/**
 * What bears up to `most` N, evenly more over the first `over` mm and then no more: its energy at `away` mm
 * and its force as a share of that way.
 */
export const yielding = (most: number, away: number, over: number) => {
  const slides = away > over;
  const share = most / (slides ? away : over);
  const energy = slides ? most * (away - over / 2) : (share * away * away) / 2;
  return { energy, share, slides };
};

/** Adds the mat to the totals. `map`: positions of each node's three entries in the stiffness. */
export const addFriction = (
  { most, laid }: Friction,
  map: Int32Array,
  points: Float64Array,
  frames: Frames,
  withStiffness: boolean,
  totals: Totals,
): void => {
  const packed = new Float64Array(3);
  for (let i = 0; i < most.length; i++) {
    const [dx, dy] = [points[2 * i]! - laid[2 * i]!, points[2 * i + 1]! - laid[2 * i + 1]!];
    const away = Math.hypot(dx, dy);
    const { energy, share, slides } = yielding(most[i]!, away, SLIP);
    totals.energy += energy;
    totals.forces[2 * i]! += share * dx;
    totals.forces[2 * i + 1]! += share * dy;
    if (!withStiffness) continue;
    const [tx, ty] = slides ? [dx / away, dy / away] : [0, 0];
    packed.set([share * (1 - tx * tx), -share * tx * ty, share * (1 - ty * ty)]);
    if (frames.turned[i] === 1) frames.turnElement(packed, [i]);
    for (let p = 0; p < 3; p++) totals.stiffness[map[3 * i + p]!]! += packed[p]!;
  }
};
