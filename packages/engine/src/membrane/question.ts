import type { Cord } from './cords.ts';
import type { Material } from './material.ts';
import type { Mesh } from './mesh/mesh.ts';

/** A node held at a place, mm, whatever force that takes. */
export interface Held {
  readonly node: number;
  readonly x: number;
  readonly y: number;
}

/** A node held at a place that lets go as soon as it would push instead of pull. */
export interface Pin extends Held {
  /**
   * Direction in which it pulls, away from the sheet; any length but 0. Without it, the normal of the
   * outline at rest; a pin inside the piece without it holds whatever happens.
   */
  readonly outward?: readonly [number, number];
  /** Most force that it bears, N, above 0: beyond, it gives way until it bears that. Any force without it. */
  readonly most?: number;
}

/** A node that stays on the line through a and b and slides along it freely: a wire. */
export interface Slide {
  readonly node: number;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** Most force across the line that it bears, N, as of a pin. */
  readonly most?: number;
}

export interface Constraints {
  readonly held: readonly Held[];
  readonly pins: readonly Pin[];
  readonly slides: readonly Slide[];
}

/** A sheet at rest in its mesh, and where some of its nodes are to go. Lengths mm, forces N. */
export interface MembraneQuestion extends Constraints {
  readonly mesh: Mesh;
  /** Angle of material line 1 from the x axis in each triangle, radians. */
  readonly directions: Float64Array;
  /** Index into `materials` of each triangle. */
  readonly materialOf: Uint16Array;
  readonly materials: readonly Material[];
  readonly cords: readonly Cord[];
  /** Force per area that a resting node bears before it slides, N/mm²; none by default. */
  readonly friction?: number;
  /** Places to start from, as long as `mesh.points`; rest by default. Friction holds nodes there. */
  readonly start?: Float64Array;
  /** Share of a limit at which the sheet counts as stretched out, 0 to 1; MOST_USE by default. */
  readonly mostUse?: number;
  /** A residual, N, that will do once a solve has taken that many iterations; none by default. */
  readonly enough?: { readonly residual: number; readonly after: number };
}

/**
 * At 0.95 of its limit a law (1 − x)⁻² carries 400 times its β, several N/mm where knitted fabric has
 * β about 0.02 N/mm (fitted to Singal et al. 2024): more than hands pull.
 */
export const MOST_USE = 0.95;

export type ConstraintKind = 'held' | 'pin' | 'slide';

export interface Progress {
  /** Share of the way to the targets in this pass, 0 to 1. */
  readonly reached: number;
  /** Newton iterations so far. */
  readonly iterations: number;
  /** N. */
  readonly residual: number;
  /** Whether a step has just come to rest. */
  readonly rests: boolean;
}

/** Called after each iteration and each step; false stops the calculation. A step that had not come to rest is undone. */
export type OnStep = (progress: Progress) => boolean;

/** A constraint that could not be carried to its target. */
export interface GaveWay {
  readonly kind: ConstraintKind;
  /** Index in `held`, `pins` or `slides`. */
  readonly index: number;
  readonly node: number;
  /** Distance from its target that is left, mm. */
  readonly short: number;
  /** What was at its limit: a material line of a triangle, a cord, or its own pull; or no equilibrium was found. */
  readonly by:
    | { readonly kind: 'triangle'; readonly triangle: number; readonly line: 1 | 2 }
    | { readonly kind: 'cord'; readonly cord: number }
    | { readonly kind: 'pull' }
    | { readonly kind: 'no-equilibrium' };
}

export interface Equilibrium {
  /** Places of the nodes, mm, as in `mesh.points`. */
  readonly points: Float64Array;
  /** Force (N, x and y) that each of held, then pins, then slides puts on the sheet; 0 for a pin let go. */
  readonly reactions: Float64Array;
  /** λ₁, λ₂ and the shear angle γ (radians) of each triangle, as seen. */
  readonly stretch: Float64Array;
  /** Second Piola–Kirchhoff stress S₁₁, S₂₂, S₁₂ of each triangle, N/mm; load along line i is λ_i S_ii. */
  readonly stress: Float64Array;
  /** Strain along lines 1 and 2 of each triangle as a share of its limit, 0 to 1. */
  readonly use: Float64Array;
  /** 0 taut, 1 wrinkled, 2 slack, for each triangle. */
  readonly branch: Uint8Array;
  /** Indices of pins that let go. */
  readonly released: readonly number[];
  /** Energy stored, N·mm. */
  readonly energy: number;
  /** Newton iterations in all. */
  readonly iterations: number;
  /** Largest force (N) out of balance on a free unknown. */
  readonly residual: number;
  /** Triangles that lie face down. */
  readonly turned: number;
  /** Balanced, with pins that only pull and every triangle face up. Constraints that gave way do not count against it. */
  readonly converged: boolean;
  /** Stopped by `onStep`. */
  readonly stopped: boolean;
  readonly gaveWay: readonly GaveWay[];
}
