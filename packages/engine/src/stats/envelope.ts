/**
 * A symmetric positive definite matrix, or its lower Cholesky factor, kept row by row from the first
 * column that holds anything to the diagonal. Nothing outside that envelope ever fills in, so that
 * unknowns which touch few others, put first, cost next to nothing.
 * A. George and J. W. Liu, Computer Solution of Large Sparse Positive Definite Systems (1981), ch. 4.
 */
export interface Envelope {
  readonly n: number;
  /** First column of each row that is kept (n). */
  readonly first: Int32Array;
  /** Where each row's kept values begin in `values`; one more for the end (n + 1). */
  readonly start: Int32Array;
  readonly values: Float64Array;
}

/** A zero matrix with room for these first columns, each at most its row's own index. */
export const envelope = (first: Int32Array): Envelope => {
  const n = first.length;
  const start = new Int32Array(n + 1);
  for (let i = 0; i < n; i++) start[i + 1] = start[i]! + i - first[i]! + 1;
  return { n, first, start, values: new Float64Array(start[n]!) };
};

/** Index in `values` of an entry inside the envelope, column at most row. */
const at = ({ first, start }: Envelope, row: number, column: number): number =>
  start[row]! + column - first[row]!;

/** Adds to an entry of the lower triangle, inside the envelope. */
export const addTo = (matrix: Envelope, row: number, column: number, value: number): void => {
  matrix.values[at(matrix, row, column)]! += value;
};

/** Overwrites the matrix by its lower Cholesky factor. Throws where it is not positive definite. */
export const factorise = (matrix: Envelope): Envelope => {
  const { n, first, start, values } = matrix;
  for (let i = 0; i < n; i++) {
    const left = first[i]!;
    for (let j = left; j < i; j++) {
      const from = Math.max(left, first[j]!);
      let sum = values[at(matrix, i, j)]!;
      for (let k = from, a = at(matrix, i, from), b = at(matrix, j, from); k < j; k++, a++, b++)
        sum -= values[a]! * values[b]!;
      values[at(matrix, i, j)] = sum / values[start[j + 1]! - 1]!;
    }
    let pivot = values[start[i + 1]! - 1]!;
    for (let a = start[i]!; a < start[i + 1]! - 1; a++) pivot -= values[a]! * values[a]!;
    if (!(pivot > 0)) throw new RangeError(`not positive definite: pivot ${i} is ${pivot}`);
    values[start[i + 1]! - 1] = Math.sqrt(pivot);
  }
  return matrix;
};

/** Solves L·x = b in place. */
export const forward = ({ n, first, start, values }: Envelope, b: Float64Array): Float64Array => {
  for (let i = 0; i < n; i++) {
    const end = start[i + 1]! - 1;
    let sum = b[i]!;
    for (let a = start[i]!, k = first[i]!; a < end; a++, k++) sum -= values[a]! * b[k]!;
    b[i] = sum / values[end]!;
  }
  return b;
};

/** Solves Lᵀ·x = b in place. */
export const backward = ({ n, first, start, values }: Envelope, b: Float64Array): Float64Array => {
  for (let i = n - 1; i >= 0; i--) {
    const end = start[i + 1]! - 1;
    b[i] = b[i]! / values[end]!;
    for (let a = start[i]!, k = first[i]!; a < end; a++, k++) b[k]! -= values[a]! * b[i]!;
  }
  return b;
};
