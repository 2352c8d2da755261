/** What all parts of the problem add up: energy N·mm, its slope N and its second slope N/mm. */
export interface Totals {
  energy: number;
  /** ∂E/∂x and ∂E/∂y of each node: the force that would hold it there. */
  readonly forces: Float64Array;
  /** In the positions of the sparse pattern, in the nodes' own axes. */
  readonly stiffness: Float64Array;
}

export const emptyTotals = (unknowns: number, entries: number): Totals => ({
  energy: 0,
  forces: new Float64Array(unknowns),
  stiffness: new Float64Array(entries),
});
