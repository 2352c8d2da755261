import type { PlainMemory } from './plain-memory.ts';

/** True for a number that can be divided by. */
const usable = (pivot: number): boolean => pivot !== 0 && pivot - pivot === 0;

/** Row k of L and its pivot, from the rows above: up-looking (Davis 2005, ACM TOMS 31, 587). */
const eliminateRow = (m: PlainMemory, k: number): void => {
  const { matrix, lower, pivots, work, filled } = m;
  const { start, place } = m.symbolic.matrix;
  const { rowPtr, rowCol, colPtr, rowIdx } = m.symbolic.fill;
  const count = m.symbolic.count;
  for (let p = start[k]!; p < start[k + 1]!; p++) work[place[p]!] = matrix[count + p]!;
  let pivot = matrix[k]!;
  for (let q = rowPtr[k]!; q < rowPtr[k + 1]!; q++) {
    const i = rowCol[q]!;
    const y = work[i]!;
    work[i] = 0;
    const end = filled[i]!;
    for (let p = colPtr[i]!; p < end; p++) work[rowIdx[p]!]! -= lower[p]! * y;
    const l = y / pivots[i]!;
    pivot -= l * y;
    lower[end] = l;
    filled[i] = end + 1;
  }
  pivots[k] = pivot;
};

/** Rows of one unknown each. Returns the number of unknowns eliminated. */
export const factorScalar = (m: PlainMemory): number => {
  for (let k = 0; k < m.symbolic.count; k++) {
    eliminateRow(m, k);
    if (!usable(m.pivots[k]!)) return k;
  }
  return m.symbolic.count;
};

/** L D Lᵀ x = x, in place. */
export const solveScalar = ({ symbolic, lower, pivots }: PlainMemory, x: Float64Array): void => {
  const { count, fill } = symbolic;
  const { colPtr, rowIdx } = fill;
  for (let i = 0; i < count; i++) {
    const xi = x[i]!;
    for (let p = colPtr[i]!; p < colPtr[i + 1]!; p++) x[rowIdx[p]!]! -= lower[p]! * xi;
  }
  for (let i = 0; i < count; i++) x[i]! /= pivots[i]!;
  for (let i = count - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let p = colPtr[i]!; p < colPtr[i + 1]!; p++) sum -= lower[p]! * x[rowIdx[p]!]!;
    x[i] = sum;
  }
};

/** r = b − A x. */
export const residualScalar = ({ symbolic, matrix, b, x, r }: PlainMemory): void => {
  const { count } = symbolic;
  const { start, place } = symbolic.matrix;
  for (let k = 0; k < count; k++) {
    const xk = x[k]!;
    let sum = b[k]! - matrix[k]! * xk;
    for (let p = start[k]!; p < start[k + 1]!; p++) {
      const i = place[p]!;
      const a = matrix[count + p]!;
      sum -= a * x[i]!;
      r[i]! -= a * xk;
    }
    r[k] = sum;
  }
};
