import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { cholesky, solveLower, solveUpper } from './cholesky.ts';

const size = 6;
const matrix = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), {
  minLength: size * size,
  maxLength: size * size,
});

const gram = (values: readonly number[], ridge: number): Float64Array => {
  const out = new Float64Array(size * size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      let sum = i === j ? ridge : 0;
      for (let k = 0; k < size; k++) sum += values[i * size + k]! * values[j * size + k]!;
      out[i * size + j] = sum;
    }
  return out;
};

test('S4: L·Lᵀ gives the matrix back, and both solves invert it', () => {
  fc.assert(
    fc.property(matrix, (values) => {
      const a = gram(values, 0.1);
      const lower = cholesky(a, size);
      const x = Float64Array.from({ length: size }, (_, i) => i - 2);
      const b = new Float64Array(size);
      for (let i = 0; i < size; i++)
        for (let j = 0; j < size; j++) b[i]! += a[i * size + j]! * x[j]!;
      const solved = solveUpper(lower, size, solveLower(lower, size, b));
      // Condition number is at most about 330 / 0.1: seven digits survive comfortably.
      for (let i = 0; i < size; i++) expect(solved[i]).toBeCloseTo(x[i]!, 7);
    }),
  );
});

test('a redundant quantity gives a zero column, not NaN', () => {
  const lower = cholesky(Float64Array.from([1, 1, 1, 1]), 2);
  expect([...lower]).toEqual([1, 0, 1, 0]);
});

test('a matrix that is no covariance throws', () => {
  expect(() => cholesky(Float64Array.from([1, 2, 2, 1]), 2)).toThrow(/not a covariance/);
});
