import type { Frames } from './frames.ts';
import type { TensionLaw } from './law.ts';
import type { Totals } from './totals.ts';

/** An edge of the mesh with a tension law of its own: a seam, a bound-off edge, a rib. Taut only. */
export interface Cord {
  /** Index of the edge in `mesh.edges`. */
  readonly edge: number;
  /** Force (N) by strain; below rest it carries none. */
  readonly law: TensionLaw;
}

export interface CordLines {
  readonly nodes: Uint32Array;
  readonly laws: readonly TensionLaw[];
  /** Lengths at rest, mm. */
  readonly length: Float64Array;
  /** 10 positions a cord in the values of the stiffness. */
  readonly map: Int32Array;
}

/**
 * Adds the cords to the totals: length at rest times the energy of the strain where they are taut, which
 * is convex in the places of the nodes. Energy becomes Infinity where a cord is at its limit.
 */
export const addCords = (
  cords: CordLines,
  points: Float64Array,
  frames: Frames,
  withStiffness: boolean,
  totals: Totals,
): void => {
  const packed = new Float64Array(10);
  for (let k = 0; k < cords.laws.length; k++) {
    const [i, j] = [cords.nodes[2 * k]!, cords.nodes[2 * k + 1]!];
    const [dx, dy] = between(points, i, j);
    const [length, now] = [cords.length[k]!, Math.hypot(dx, dy)];
    const strain = now / length - 1;
    if (strain <= 0) continue;
    const law = cords.laws[k]!;
    totals.energy += strain < law.limit ? length * law.energy(strain) : Number.POSITIVE_INFINITY;
    if (totals.energy === Number.POSITIVE_INFINITY) return;
    const tension = law.stress(strain);
    const [tx, ty] = [dx / now, dy / now];
    totals.forces[2 * i]! -= tension * tx;
    totals.forces[2 * i + 1]! -= tension * ty;
    totals.forces[2 * j]! += tension * tx;
    totals.forces[2 * j + 1]! += tension * ty;
    if (!withStiffness) continue;
    fillPacked(packed, law.stiffness(strain) / length, tension / now, tx, ty);
    if (frames.turned[i]! + frames.turned[j]! > 0) frames.turnElement(packed, [i, j]);
    for (let p = 0; p < 10; p++) totals.stiffness[cords.map[10 * k + p]!]! += packed[p]!;
  }
};

export const between = (points: Float64Array, i: number, j: number): readonly [number, number] => [
  points[2 * j]! - points[2 * i]!,
  points[2 * j + 1]! - points[2 * i + 1]!,
];

/** Stiffness `along` the unit direction (tx, ty) and `across` it: [K, −K; −K, K], packed. */
const fillPacked = (
  packed: Float64Array,
  along: number,
  across: number,
  tx: number,
  ty: number,
): void => {
  const xx = along * tx * tx + across * ty * ty;
  const xy = (along - across) * tx * ty;
  const yy = along * ty * ty + across * tx * tx;
  packed.set([xx, xy, -xx, -xy, yy, -xy, -yy, xx, xy, yy]);
};
