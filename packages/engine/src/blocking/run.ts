/** A comb or a wire along the edge, from one ring index onwards to another. */
export interface Run {
  readonly kind: 'comb' | 'wire';
  /** Ring indices in order around the piece, at least two. */
  readonly nodes: readonly number[];
  readonly lengthMm: number;
}
