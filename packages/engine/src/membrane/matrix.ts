import type { SparsePattern } from './sparse/index.ts';

/** A x for a symmetric matrix of which the pattern holds the upper triangle. */
export const multiply = (
  { n, colPtr, rowIdx }: SparsePattern,
  values: Float64Array,
  x: Float64Array,
): Float64Array => {
  const y = new Float64Array(n);
  for (let j = 0; j < n; j++)
    for (let p = colPtr[j]!; p < colPtr[j + 1]!; p++) {
      const i = rowIdx[p]!;
      y[i]! += values[p]! * x[j]!;
      if (i !== j) y[j]! += values[p]! * x[i]!;
    }
  return y;
};

/** The matrix with the rows and columns of prescribed unknowns emptied, but for `diagonal`. */
export const withoutFixed = (
  { n, colPtr, rowIdx }: SparsePattern,
  values: Float64Array,
  fixed: Uint8Array,
  diagonal: number,
): Float64Array => {
  const kept = values.slice();
  for (let j = 0; j < n; j++)
    for (let p = colPtr[j]!; p < colPtr[j + 1]!; p++) {
      const i = rowIdx[p]!;
      if (fixed[i] === 1 || fixed[j] === 1) kept[p] = i === j ? diagonal : 0;
    }
  return kept;
};
