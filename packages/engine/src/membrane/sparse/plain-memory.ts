import { kernelSizes } from './kernel.ts';
import type { Symbolic } from './symbolic.ts';

/** What the plain kernel keeps between calls. */
export interface PlainMemory {
  readonly symbolic: Symbolic;
  readonly matrix: Float64Array;
  readonly lower: Float64Array;
  readonly pivots: Float64Array;
  readonly inner: Float64Array;
  readonly work: Float64Array;
  /** End of the part of each column of L that is known so far. */
  readonly filled: Int32Array;
  readonly b: Float64Array;
  readonly x: Float64Array;
  readonly r: Float64Array;
}

export const plainMemory = (symbolic: Symbolic): PlainMemory => {
  const size = kernelSizes(symbolic);
  return {
    symbolic,
    matrix: new Float64Array(size.matrix),
    lower: new Float64Array(size.lower),
    pivots: new Float64Array(size.pivots),
    inner: new Float64Array(size.inner),
    work: new Float64Array(size.work),
    filled: new Int32Array(symbolic.count),
    b: new Float64Array(size.vector),
    x: new Float64Array(size.vector),
    r: new Float64Array(size.vector),
  };
};

/** Makes ready for a factorisation: values in their slots, the shift on the diagonal, nothing filled. */
export const load = (m: PlainMemory, values: Float64Array, shift: number): void => {
  const { slot, block, count, fill } = m.symbolic;
  m.matrix.fill(0);
  for (let p = 0; p < slot.length; p++) m.matrix[slot[p]!] = values[p]!;
  for (let k = 0; k < count; k++)
    for (let a = 0; a < block; a++) m.matrix[block * block * k + (block + 1) * a]! += shift;
  m.work.fill(0);
  m.filled.set(fill.colPtr.subarray(0, count));
};
