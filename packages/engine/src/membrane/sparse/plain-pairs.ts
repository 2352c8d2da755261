import type { PlainMemory } from './plain-memory.ts';

/** True for a number that can be divided by. */
const usable = (pivot: number): boolean => pivot !== 0 && pivot - pivot === 0;

/** Copies the blocks of row k of the matrix into the work array, one block a node. */
const spreadRow = ({ symbolic, matrix, work }: PlainMemory, k: number): void => {
  const { start, place } = symbolic.matrix;
  for (let p = start[k]!; p < start[k + 1]!; p++) {
    const from = 4 * (symbolic.count + p);
    const to = 4 * place[p]!;
    work[to] = matrix[from]!;
    work[to + 1] = matrix[from + 1]!;
    work[to + 2] = matrix[from + 2]!;
    work[to + 3] = matrix[from + 3]!;
  }
};

/**
 * Row k of L, as blocks of 2 × 2, and its two pivots, from the rows above: up-looking. In work, unknown
 * b of node i against unknown a of k is at 4 i + 2 a + b; in a block of L, row a and column b are at
 * 2 b + a, so that the two rows of a column lie side by side for the vector unit.
 */
const eliminateRow = (m: PlainMemory, k: number): boolean => {
  const { matrix, lower, pivots, inner, work, filled } = m;
  const { rowPtr, rowCol, colPtr, rowIdx } = m.symbolic.fill;
  spreadRow(m, k);
  let d00 = matrix[4 * k]!;
  let d01 = matrix[4 * k + 2]!;
  let d11 = matrix[4 * k + 3]!;
  for (let q = rowPtr[k]!; q < rowPtr[k + 1]!; q++) {
    const i = rowCol[q]!;
    const w = 4 * i;
    const e = inner[i]!;
    const y00 = work[w]!;
    const y01 = work[w + 1]! - e * y00;
    const y10 = work[w + 2]!;
    const y11 = work[w + 3]! - e * y10;
    work[w] = 0;
    work[w + 1] = 0;
    work[w + 2] = 0;
    work[w + 3] = 0;
    const end = filled[i]!;
    for (let p = colPtr[i]!; p < end; p++) {
      const j = 4 * rowIdx[p]!;
      const l00 = lower[4 * p]!;
      const l10 = lower[4 * p + 1]!;
      const l01 = lower[4 * p + 2]!;
      const l11 = lower[4 * p + 3]!;
      work[j] = work[j]! - l00 * y00 - l01 * y01;
      work[j + 1] = work[j + 1]! - l10 * y00 - l11 * y01;
      work[j + 2] = work[j + 2]! - l00 * y10 - l01 * y11;
      work[j + 3] = work[j + 3]! - l10 * y10 - l11 * y11;
    }
    const l00 = y00 / pivots[2 * i]!;
    const l10 = y10 / pivots[2 * i]!;
    const l01 = y01 / pivots[2 * i + 1]!;
    const l11 = y11 / pivots[2 * i + 1]!;
    lower[4 * end] = l00;
    lower[4 * end + 1] = l10;
    lower[4 * end + 2] = l01;
    lower[4 * end + 3] = l11;
    filled[i] = end + 1;
    d00 = d00 - l00 * y00 - l01 * y01;
    d01 = d01 - l10 * y00 - l11 * y01;
    d11 = d11 - l10 * y10 - l11 * y11;
  }
  pivots[2 * k] = d00;
  if (!usable(d00)) return false;
  const e = d01 / d00;
  inner[k] = e;
  pivots[2 * k + 1] = d11 - e * d01;
  return true;
};

/** Rows of two unknowns each. Returns the number of unknowns eliminated. */
export const factorPairs = (m: PlainMemory): number => {
  for (let k = 0; k < m.symbolic.count; k++) {
    if (!eliminateRow(m, k)) return 2 * k;
    if (!usable(m.pivots[2 * k + 1]!)) return 2 * k + 1;
  }
  return 2 * m.symbolic.count;
};

const forward = ({ symbolic, lower, inner }: PlainMemory, x: Float64Array): void => {
  const { colPtr, rowIdx } = symbolic.fill;
  for (let i = 0; i < symbolic.count; i++) {
    const x0 = x[2 * i]!;
    const x1 = x[2 * i + 1]! - inner[i]! * x0;
    x[2 * i + 1] = x1;
    for (let p = colPtr[i]!; p < colPtr[i + 1]!; p++) {
      const j = 2 * rowIdx[p]!;
      x[j] = x[j]! - lower[4 * p]! * x0 - lower[4 * p + 2]! * x1;
      x[j + 1] = x[j + 1]! - lower[4 * p + 1]! * x0 - lower[4 * p + 3]! * x1;
    }
  }
};

const backward = ({ symbolic, lower, inner }: PlainMemory, x: Float64Array): void => {
  const { colPtr, rowIdx } = symbolic.fill;
  for (let i = symbolic.count - 1; i >= 0; i--) {
    let x0 = x[2 * i]!;
    let x1 = x[2 * i + 1]!;
    for (let p = colPtr[i]!; p < colPtr[i + 1]!; p++) {
      const j = 2 * rowIdx[p]!;
      x0 = x0 - lower[4 * p]! * x[j]! - lower[4 * p + 1]! * x[j + 1]!;
      x1 = x1 - lower[4 * p + 2]! * x[j]! - lower[4 * p + 3]! * x[j + 1]!;
    }
    x[2 * i + 1] = x1;
    x[2 * i] = x0 - inner[i]! * x1;
  }
};

/** L D Lᵀ x = x, in place. */
export const solvePairs = (m: PlainMemory, x: Float64Array): void => {
  forward(m, x);
  for (let i = 0; i < x.length; i++) x[i]! /= m.pivots[i]!;
  backward(m, x);
};

/** r = b − A x. */
export const residualPairs = ({ symbolic, matrix, b, x, r }: PlainMemory): void => {
  const { start, place } = symbolic.matrix;
  for (let k = 0; k < symbolic.count; k++) {
    const x0 = x[2 * k]!;
    const x1 = x[2 * k + 1]!;
    let r0 = b[2 * k]! - matrix[4 * k]! * x0 - matrix[4 * k + 2]! * x1;
    let r1 = b[2 * k + 1]! - matrix[4 * k + 2]! * x0 - matrix[4 * k + 3]! * x1;
    for (let p = start[k]!; p < start[k + 1]!; p++) {
      const i = 2 * place[p]!;
      const at = 4 * (symbolic.count + p);
      const a00 = matrix[at]!;
      const a01 = matrix[at + 1]!;
      const a10 = matrix[at + 2]!;
      const a11 = matrix[at + 3]!;
      r0 = r0 - a00 * x[i]! - a01 * x[i + 1]!;
      r1 = r1 - a10 * x[i]! - a11 * x[i + 1]!;
      r[i] = r[i]! - a00 * x0 - a10 * x1;
      r[i + 1] = r[i + 1]! - a01 * x0 - a11 * x1;
    }
    r[2 * k] = r0;
    r[2 * k + 1] = r1;
  }
};
