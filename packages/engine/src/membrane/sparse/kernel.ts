import type { Symbolic } from './symbolic.ts';

/**
 * The inner loops, bound to one symbolic analysis and its memory. Vectors are in order of
 * elimination. Two make it: `plainKernel` in TypeScript and `wasmKernel` in WebAssembly, which do the
 * same operations in the same order and so agree to the last bit.
 */
export interface Kernel {
  readonly symbolic: Symbolic;
  /** Right-hand side of `residual`. n long, as are the vectors below. */
  readonly b: Float64Array;
  /** Solution: `solve('x')` overwrites it. */
  readonly x: Float64Array;
  /** `residual` writes it, `solve('r')` overwrites it. */
  readonly r: Float64Array;
  /** Pivots, the diagonal D, as far as the last `factor` came. */
  readonly pivots: Float64Array;
  /**
   * LDLᵀ of `values` with `shift` added to the diagonal. Returns how many unknowns were eliminated: n,
   * or fewer where it met a pivot that is zero or not finite.
   */
  factor(values: Float64Array, shift: number): number;
  /** Overwrites a vector by the solution with it as right-hand side. Needs a whole factor. */
  solve(vector: 'x' | 'r'): void;
  /** r = b − (A + shift · I) x, with the values last factorised. */
  residual(): void;
  /** Entries of L below its diagonal, a copy: for checks. Blocks are column by column. */
  factorEntries(): Float64Array;
}

/** Numbers that a kernel keeps of each kind, in order: lengths for the memory of either backend. */
export const kernelSizes = ({ count, block, pattern, matrix, fill }: Symbolic) => ({
  values: pattern.rowIdx.length,
  matrix: (count + matrix.place.length) * block * block,
  lower: fill.rowIdx.length * block * block,
  pivots: pattern.n,
  /** Within each pair, the entry of L between its two unknowns. */
  inner: count,
  work: count * block * block,
  vector: pattern.n,
});
