/** A comb or a wire along the edge, from one ring index onwards to another. */
export interface Run {
  readonly kind: 'comb' | 'wire';
  /** Ring indices in order around the piece, at least two. */
  readonly nodes: readonly number[];
  readonly lengthMm: number;
  /** Pins that hold it: those along a wire, beside the ones at its ends; 1 for a comb, which is its own. */
  readonly pins: number;
  /** What they bear in all, N. */
  readonly most: number;
}
