import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cholesky } from './cholesky.ts';
import { addTo, backward, envelope, factorise, forward } from './envelope.ts';

const SIZE = 7;

/** Pairs of unknowns that touch each other, and how. */
const couplings = fc.array(
  fc.tuple(
    fc.nat(SIZE - 1),
    fc.nat(SIZE - 1),
    fc.double({ min: -2, max: 2, noNaN: true }),
    fc.double({ min: -2, max: 2, noNaN: true }),
  ),
  { maxLength: 12 },
);

test('S4: the factor within the envelope is that of the whole matrix, and both solves invert it', () => {
  fc.assert(
    fc.property(couplings, (pairs) => {
      const dense = new Float64Array(SIZE * SIZE);
      for (let i = 0; i < SIZE; i++) dense[i * SIZE + i] = 1;
      const first = Int32Array.from({ length: SIZE }, (_, i) => i);
      for (const [i, j, a, b] of pairs) {
        first[Math.max(i, j)] = Math.min(first[Math.max(i, j)]!, i, j);
        for (const [p, x] of [
          [i, a],
          [j, b],
        ] as const)
          for (const [q, y] of [
            [i, a],
            [j, b],
          ] as const)
            dense[p * SIZE + q]! += x * y;
      }
      const sparse = envelope(first);
      for (let i = 0; i < SIZE; i++)
        for (let j = first[i]!; j <= i; j++) addTo(sparse, i, j, dense[i * SIZE + j]!);
      const lower = cholesky(dense, SIZE);
      const factor = factorise(sparse);
      for (let i = 0; i < SIZE; i++)
        for (let j = 0; j <= i; j++) {
          const kept = j < first[i]! ? 0 : factor.values[factor.start[i]! + j - first[i]!]!;
          // Entries are at most √(1 + 12 · 4 · 4); both routines do the same sums in another order.
          expect(kept).toBeCloseTo(lower[i * SIZE + j]!, 12);
        }
      const x = Float64Array.from({ length: SIZE }, (_, i) => i - 3);
      const b = new Float64Array(SIZE);
      for (let i = 0; i < SIZE; i++)
        for (let j = 0; j < SIZE; j++) b[i]! += dense[i * SIZE + j]! * x[j]!;
      const solved = backward(factor, forward(factor, b));
      // Condition number at most about 200, as the least eigenvalue is 1.
      for (let i = 0; i < SIZE; i++) expect(solved[i]).toBeCloseTo(x[i]!, 10);
    }),
  );
});

test('a matrix that is not positive definite throws', () => {
  const matrix = envelope(Int32Array.from([0, 0]));
  for (const [row, column, value] of [
    [0, 0, 1],
    [1, 0, 2],
    [1, 1, 1],
  ] as const)
    addTo(matrix, row, column, value);
  expect(() => factorise(matrix)).toThrow(/not positive definite/);
});
