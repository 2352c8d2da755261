import fc from 'fast-check';
import { CholeskyDecomposition, determinant as denseDeterminant, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { heldStiffness, times } from './check/plane-stress-grid.ts';
import {
  dense,
  largestDifference,
  patternOf,
  secondDifferences,
  somePositive,
  waves,
} from './check/random-symmetric.ts';
import { determinant } from './determinant.ts';
import { factorise } from './factor.ts';
import { solve, solveMany, solveRefined } from './solve.ts';
import { analyse } from './symbolic.ts';

describe.each([1, 2] as const)('solutions, %i unknowns a node', (block) => {
  it('SP5: as dense Cholesky of a reference library has them', () => {
    fc.assert(
      fc.property(somePositive(block), (matrix) => {
        const b = waves(matrix.pattern.n);
        const x = solve(factorise(analyse(matrix.pattern, block), matrix.values), b);
        const full = new CholeskyDecomposition(dense(matrix));
        const expected = full.solve(Matrix.columnVector([...b])).getColumn(0);
        // Rows of up to 24 entries of size 1 exceeded by 0.1: condition below 1e3, so 1e3 roundings
        // of 2e-16 on numbers of up to 10.
        expect(largestDifference(x, expected)).toBeLessThan(1e-11);
      }),
    );
  });

  it('SP5: the determinant is that of the reference library', () => {
    fc.assert(
      fc.property(somePositive(block), (matrix) => {
        const { sign, log } = determinant(factorise(analyse(matrix.pattern, block), matrix.values));
        expect(sign).toBe(1);
        // 24 logarithms of numbers rounded as above.
        expect(log).toBeCloseTo(Math.log(denseDeterminant(dense(matrix))), 10);
      }),
    );
  });

  it('SP5: a shift adds to the diagonal', () => {
    fc.assert(
      fc.property(
        somePositive(block),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (matrix, shift) => {
          const { pattern, values } = matrix;
          const shifted = values.slice();
          for (let j = 0; j < pattern.n; j++) shifted[pattern.colPtr[j + 1]! - 1]! += shift;
          const symbolic = analyse(pattern, block);
          const expected = solve(factorise(symbolic, shifted), waves(pattern.n));
          // The same sums in the same order: the same to the last bit.
          expect(solve(factorise(symbolic, values, { shift }), waves(pattern.n))).toEqual(expected);
        },
      ),
    );
  });

  it('SP5: several right-hand sides are several solutions', () => {
    fc.assert(
      fc.property(somePositive(block), (matrix) => {
        const n = matrix.pattern.n;
        const factor = factorise(analyse(matrix.pattern, block), matrix.values);
        const b = waves(3 * n);
        const x = solveMany(factor, b, 3);
        for (let side = 0; side < 3; side++)
          expect(x.slice(side * n, (side + 1) * n)).toEqual(
            solve(factor, b.slice(side * n, (side + 1) * n)),
          );
      }),
    );
  });

  it('SP5: second differences of a parabola: x = i (n + 1 − i) / 2, determinant n + 1', () => {
    for (const n of [2, 10, 1000]) {
      const { pattern, values } = secondDifferences(n);
      const factor = factorise(analyse(pattern, block), values);
      const x = solve(factor, new Float64Array(n).fill(1));
      const parabola = x.map((_, k) => ((k + 1) * (n - k)) / 2);
      // The condition grows as n² / 2: that many roundings, relative to the top of n² / 8.
      expect(largestDifference(x, parabola)).toBeLessThan(((n * n) / 8) * (n * n) * 2 ** -52);
      const { sign, log } = determinant(factor);
      expect(sign * Math.exp(log)).toBeCloseTo(n + 1, 8);
    }
  });

  it('SP10: refinement says how well the solution fits, and fits better than tenfold rounding', () => {
    const matrix = heldStiffness(20, 30, 6);
    const b = waves(matrix.pattern.n);
    const { value, residual, converged, iterations } = solveRefined(
      factorise(analyse(matrix.pattern, block), matrix.values),
      b,
    );
    expect({ converged, iterations }).toEqual({ converged: true, iterations: 1 });
    // One step leaves a backward error of about one rounding (Skeel 1980, Math. Comp. 35, 817).
    expect(residual).toBeLessThan(10 * 2 ** -52);
    expect(largestDifference(times(matrix, value), b)).toBeLessThan(1e-11);
  });

  it('SP10: refinement mends what small pivots spoilt', () => {
    // A pivot of 1e-9 before larger ones loses nine digits; a step of refinement brings them back.
    const pattern = patternOf(4, [
      [0, 1],
      [0, 2],
      [1, 3],
      [2, 3],
      [0, 3],
      [1, 2],
    ]);
    const values = Float64Array.of(1e-9, 1, -1e-9, 1, 2, 3, 2, 1, 1, 1);
    const factor = factorise(analyse(pattern, block, 'natural'), values);
    const exact = Float64Array.of(1, -2, 3, -4);
    const b = times({ pattern, values }, exact);
    const once = largestDifference(solve(factor, b), exact);
    const refined = solveRefined(factor, b);
    expect(once).toBeGreaterThan(1e-12);
    expect(largestDifference(refined.value, exact)).toBeLessThan(once / 100);
    expect(refined.converged).toBe(true);
  });

  it('SP10: nothing on the right is solved by nothing', () => {
    const { pattern, values } = secondDifferences(8);
    const refined = solveRefined(factorise(analyse(pattern, block), values), new Float64Array(8));
    expect(refined).toEqual({
      value: new Float64Array(8),
      iterations: 1,
      residual: 0,
      converged: true,
    });
  });
});

describe('large', () => {
  it('SP5: 40,328 unknowns: a known displacement comes back', () => {
    const matrix = heldStiffness(142, 142, 9);
    const known = waves(matrix.pattern.n);
    const factor = factorise(analyse(matrix.pattern, 2), matrix.values);
    expect(factor.pivots).toMatchObject({ positive: 40_328, negative: 0, small: 0 });
    const { value, converged } = solveRefined(factor, times(matrix, known));
    expect(converged).toBe(true);
    // The condition of a sheet 142 elements long is about 142² times ten: 1e5 roundings and more.
    expect(largestDifference(value, known)).toBeLessThan(1e-9);
  });
});
