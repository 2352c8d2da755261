import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import type { Block } from '../element-map.ts';
import type { SparsePattern } from '../pattern.ts';
import type { CheckMatrix } from './plane-stress-grid.ts';

/** Upper-triangle pattern of n unknowns from pairs of unknowns, the diagonal always in. */
export const patternOf = (
  n: number,
  pairs: readonly (readonly [number, number])[],
): SparsePattern => {
  const rows = Array.from({ length: n }, (_, j) => new Set([j]));
  for (const [i, j] of pairs) rows[Math.max(i, j)]!.add(Math.min(i, j));
  const columns = rows.map((set) => [...set].sort((a, b) => a - b));
  const colPtr = new Int32Array(n + 1);
  columns.forEach((column, j) => {
    colPtr[j + 1] = colPtr[j]! + column.length;
  });
  return { n, colPtr, rowIdx: Int32Array.from(columns.flat()) };
};

/** The same matrix with all its entries, for the reference library. */
export const dense = ({ pattern, values }: CheckMatrix): Matrix => {
  const full = Matrix.zeros(pattern.n, pattern.n);
  for (let j = 0; j < pattern.n; j++)
    for (let p = pattern.colPtr[j]!; p < pattern.colPtr[j + 1]!; p++) {
      full.set(pattern.rowIdx[p]!, j, values[p]!);
      full.set(j, pattern.rowIdx[p]!, values[p]!);
    }
  return full;
};

/** Patterns of up to 24 unknowns, a whole number of blocks, from almost empty to almost full. */
export const somePattern = (block: Block): fc.Arbitrary<SparsePattern> =>
  fc.integer({ min: 1, max: 24 / block }).chain((nodes) => {
    const unknown = fc.integer({ min: 0, max: nodes * block - 1 });
    return fc
      .array(fc.tuple(unknown, unknown), { maxLength: 60 })
      .map((pairs) => patternOf(nodes * block, pairs));
  });

/** Plain numbers without extremes: fractions of a thousand in −1 … 1. */
const entry = fc.integer({ min: -1000, max: 1000 }).map((k) => k / 1000);

/** Symmetric of any inertia. */
export const someSymmetric = (block: Block): fc.Arbitrary<CheckMatrix> =>
  somePattern(block).chain((pattern) =>
    fc
      .array(entry, { minLength: pattern.rowIdx.length, maxLength: pattern.rowIdx.length })
      .map((values) => ({ pattern, values: Float64Array.from(values) })),
  );

/** Positive definite: each diagonal entry is larger than the rest of its row by `margin` or more. */
export const somePositive = (block: Block, margin = 0.1): fc.Arbitrary<CheckMatrix> =>
  someSymmetric(block).map(({ pattern, values }) => {
    const full = dense({ pattern, values });
    for (let j = 0; j < pattern.n; j++) {
      const row = full.getRow(j).reduce((sum, value) => sum + Math.abs(value), 0);
      values[pattern.colPtr[j + 1]! - 1] = row + margin;
    }
    return { pattern, values };
  });

/** Right-hand sides that are not all alike. */
export const waves = (n: number): Float64Array =>
  Float64Array.from({ length: n }, (_, i) => Math.sin(1 + 2.3 * i));

export const largestDifference = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let largest = 0;
  for (let i = 0; i < a.length; i++) largest = Math.max(largest, Math.abs(a[i]! - b[i]!));
  return a.length === b.length ? largest : Number.NaN;
};

/** Second differences of n unknowns in a row: 2 on the diagonal, −1 beside it. */
export const secondDifferences = (n: number): CheckMatrix => {
  const pairs = Array.from({ length: n - 1 }, (_, i): [number, number] => [i, i + 1]);
  const pattern = patternOf(n, pairs);
  const values = new Float64Array(pattern.rowIdx.length).fill(-1);
  for (let j = 0; j < n; j++) values[pattern.colPtr[j + 1]! - 1] = 2;
  return { pattern, values };
};

/** k × k nodes, each next to those beside, above and below it, and with `diagonals` all eight. */
export const gridPattern = (k: number, diagonals: boolean): SparsePattern => {
  const pairs: [number, number][] = [];
  for (let i = 0; i < k * k; i++) {
    const column = i % k;
    const up = i + k < k * k;
    if (column + 1 < k) pairs.push([i, i + 1]);
    if (up) pairs.push([i, i + k]);
    if (diagonals && up && column + 1 < k) pairs.push([i, i + k + 1]);
    if (diagonals && up && column > 0) pairs.push([i, i + k - 1]);
  }
  return patternOf(k * k, pairs);
};
