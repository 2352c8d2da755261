import type { Result } from '../../units/index.ts';

/** x, y in mm; y runs up, so that counter-clockwise is the positive turn. */
export type Xy = readonly [number, number];

export interface Mesh {
  /** x0, y0, x1, y1, … mm. */
  readonly points: Float64Array;
  /** Three node indices per triangle, counter-clockwise. */
  readonly triangles: Uint32Array;
  /** Boundary and constraint edges, two node indices each; the piece lies left of a boundary edge. */
  readonly edges: Uint32Array;
  /** Tag of each edge, as given with the outline. */
  readonly edgeTags: Int32Array;
}

export interface OutlineRing {
  readonly points: readonly Xy[];
  /** Tag of the edge from point i to i + 1, an integer; a closed ring has as many tags as points. */
  readonly tags: readonly number[];
}

/** Wanted length of edges, mm, at a place; positive. Infinity asks for nothing. */
export type SizeField = (x: number, y: number) => number;

export interface MeshQuestion {
  /** Closed without repeating its first point, in either direction. */
  readonly outer: OutlineRing;
  readonly holes: readonly OutlineRing[];
  /** Open polylines inside the piece that triangles must not cross; they may end on its edges. */
  readonly lines: readonly OutlineRing[];
  /** Points that must be nodes, within the piece or on its edges. */
  readonly nodes: readonly Xy[];
  /** Wanted length of edges, mm. A field is sampled at the nodes. */
  readonly size: number | SizeField;
  /** Smallest angle of a triangle away from small angles of the outline, degrees, 0 to 28. */
  readonly minAngle: number;
  /** Refinement stops here and says so in `converged`. */
  readonly maxPoints: number;
}

export interface Triangulated {
  readonly mesh: Mesh;
  /** Node index of each asked point, in order. */
  readonly nodeOf: Uint32Array;
  /** Smallest angle of all triangles, degrees, small angles of the outline included. */
  readonly smallestAngle: number;
  /** Nodes that were added to what was given. */
  readonly inserted: number;
  /** Every triangle has its size and angle, except where a small angle of the outline forbids it. */
  readonly converged: boolean;
}

export type MeshResult = Result<Triangulated>;

export const DEFAULT_MIN_ANGLE = 25;
export const LARGEST_MIN_ANGLE = 28;
