/**
 * Cholesky factor of a symmetric positive semi-definite matrix, dense and small.
 *
 * `matrix`: n × n, row-major, only the lower triangle is read. Returns the lower factor L with
 * L·Lᵀ = matrix. A pivot that is zero within `1e-12` of the largest diagonal is taken as an exact
 * dependency: its column becomes zero, which is right for covariances of redundant quantities. A
 * pivot more negative than that is no covariance and throws: it is a bug of the caller.
 */
export const cholesky = (matrix: Float64Array, n: number): Float64Array => {
  const lower = new Float64Array(n * n);
  const floor = 1e-12 * largestDiagonal(matrix, n);
  for (let j = 0; j < n; j++) {
    const pivot = matrix[j * n + j]! - dotRows(lower, j, j, j, n);
    if (!(pivot >= -floor * n)) throw new RangeError(`not a covariance: pivot ${j} is ${pivot}`);
    if (pivot <= floor) continue;
    const root = Math.sqrt(pivot);
    lower[j * n + j] = root;
    for (let i = j + 1; i < n; i++)
      lower[i * n + j] = (matrix[i * n + j]! - dotRows(lower, i, j, j, n)) / root;
  }
  return lower;
};

/** Solve L·x = b in place, L lower triangular with a positive diagonal. */
export const solveLower = (lower: Float64Array, n: number, b: Float64Array): Float64Array => {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i * n + k]! * b[k]!;
    b[i] = sum / lower[i * n + i]!;
  }
  return b;
};

/** Solve Lᵀ·x = b in place. */
export const solveUpper = (lower: Float64Array, n: number, b: Float64Array): Float64Array => {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let k = i + 1; k < n; k++) sum -= lower[k * n + i]! * b[k]!;
    b[i] = sum / lower[i * n + i]!;
  }
  return b;
};

const largestDiagonal = (matrix: Float64Array, n: number): number => {
  let largest = 0;
  for (let i = 0; i < n; i++) largest = Math.max(largest, matrix[i * n + i]!);
  return largest;
};

const dotRows = (m: Float64Array, a: number, b: number, length: number, n: number): number => {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += m[a * n + k]! * m[b * n + k]!;
  return sum;
};
