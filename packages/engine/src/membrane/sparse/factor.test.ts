import fc from 'fast-check';
import { EigenvalueDecomposition } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { sparseBackend } from './backend.ts';
import { jitteredGrid, looseStiffness } from './check/plane-stress-grid.ts';
import {
  dense,
  patternOf,
  secondDifferences,
  someSymmetric,
  waves,
} from './check/random-symmetric.ts';
import { determinant } from './determinant.ts';
import { factorise } from './factor.ts';
import { solve, solveMany } from './solve.ts';
import { analyse } from './symbolic.ts';

const exchange = { pattern: patternOf(2, [[0, 1]]), values: Float64Array.of(0, 1, 0) };

describe.each([1, 2] as const)('pivots, %i unknowns a node', (block) => {
  it('SP6: their signs count those of the eigenvalues (Sylvester 1852)', () => {
    fc.assert(
      fc.property(someSymmetric(block), (matrix) => {
        const factor = factorise(analyse(matrix.pattern, block), matrix.values);
        const { realEigenvalues } = new EigenvalueDecomposition(dense(matrix), {
          assumeSymmetric: true,
        });
        // Where a pivot or an eigenvalue is close to zero its sign is rounding.
        fc.pre(factor.complete && Math.abs(factor.pivots.least) > 1e-6);
        fc.pre(realEigenvalues.every((value) => Math.abs(value) > 1e-6));
        const negative = realEigenvalues.filter((value) => value < 0).length;
        expect(factor.pivots).toMatchObject({
          negative,
          positive: realEigenvalues.length - negative,
          small: 0,
        });
        expect(factor.pivots.where.length).toBe(negative);
        expect(determinant(factor).sign).toBe(negative % 2 === 0 ? 1 : -1);
      }),
      { numRuns: 300 },
    );
  });

  it('SP6: a negative pivot is reported at its unknown', () => {
    const { pattern, values } = secondDifferences(10);
    values[pattern.colPtr[8]! - 1] = -5;
    const { pivots } = factorise(analyse(pattern, block), values);
    expect(pivots.negative).toBe(1);
    expect([...pivots.where]).toEqual([7]);
    // The others are between 1 and 2 or near it; this one is −5 less what comes before.
    expect(pivots.largest).toBeLessThanOrEqual(-5);
    expect(Math.abs(pivots.least)).toBeLessThan(2);
  });

  it.each([1, 2, 3, 4, 5])('SP7: a loose sheet shows that it may move (mesh %i)', (seed) => {
    const { pattern, values } = looseStiffness(jitteredGrid(12, 9, seed));
    const symbolic = analyse(pattern, block);
    const { pivots, complete } = factorise(symbolic, values);
    // Three ways to move, so three pivots of nothing but rounding. The last of them is rounding over
    // rounding and need not be small; a pivot may also be exactly zero, which ends it.
    expect(pivots.small + (complete ? 0 : 3)).toBeGreaterThanOrEqual(2);
    expect(pivots.small).toBeLessThanOrEqual(3);
    expect(pivots.where.length).toBeGreaterThanOrEqual(1);
    const shifted = factorise(symbolic, values, { shift: 1e-3 });
    expect(shifted.complete).toBe(true);
    expect(shifted.pivots).toMatchObject({ positive: pattern.n, negative: 0, small: 0 });
  });

  it('SP7: a pivot of zero ends it: a value, not an error; a shift goes past it', () => {
    const symbolic = analyse(exchange.pattern, block, 'natural');
    const factor = factorise(symbolic, exchange.values);
    expect(factor.complete).toBe(false);
    expect([...factor.pivots.where]).toEqual([0]);
    expect(() => solve(factor, Float64Array.of(1, 2))).toThrow('incomplete');
    const shifted = factorise(symbolic, exchange.values, { shift: 0.5 });
    // Eigenvalues ±1 moved by a half.
    expect(shifted.pivots).toMatchObject({ positive: 1, negative: 1 });
    const [x, y] = solve(shifted, Float64Array.of(2.5, 2));
    expect(x).toBeCloseTo(1, 14);
    expect(y).toBeCloseTo(2, 14);
  });

  it('SP7: numbers that are none end it too', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      const { pattern, values } = secondDifferences(6);
      values[pattern.colPtr[4]! - 1] = bad;
      const factor = factorise(analyse(pattern, block), values);
      expect(factor.complete).toBe(false);
      expect([...factor.pivots.where]).toContain(3);
    }
  });

  it('SP7: small is what the caller says it is', () => {
    const { pattern, values } = secondDifferences(4);
    const symbolic = analyse(pattern, block);
    // Pivots of second differences are (k + 1) / k: all between 1 and 2.
    expect(factorise(symbolic, values, { smallBelow: 0.4 }).pivots.small).toBe(0);
    expect(factorise(symbolic, values, { smallBelow: 1 }).pivots.small).toBe(4);
  });

  it('SP12: a factor is spent when its backend factorises again', () => {
    const { pattern, values } = secondDifferences(6);
    const symbolic = analyse(pattern, block);
    const first = factorise(symbolic, values);
    const second = factorise(symbolic, values, { shift: 1 });
    expect(() => solve(first, waves(6))).toThrow('spent');
    expect(solve(second, waves(6)).every(Number.isFinite)).toBe(true);
    // Two backends keep two factors of one analysis.
    const aside = factorise(symbolic, values, { backend: sparseBackend() });
    expect(solve(second, waves(6)).every(Number.isFinite)).toBe(true);
    expect(solve(aside, waves(6)).every(Number.isFinite)).toBe(true);
  });

  it('SP12: another number of values or of sides is refused', () => {
    const { pattern, values } = secondDifferences(6);
    const symbolic = analyse(pattern, block);
    expect(() => factorise(symbolic, values.subarray(1))).toThrow('10 values, 11 entries');
    const factor = factorise(symbolic, values);
    expect(() => solve(factor, waves(5))).toThrow('5 numbers for 1 sides of 6');
    expect(() => solveMany(factor, waves(6), 2)).toThrow('6 numbers for 2 sides of 6');
  });
});

describe('nothing', () => {
  it('SP7: no unknowns: complete, and no pivot to speak of', () => {
    const factor = factorise(analyse(patternOf(0, []), 2), new Float64Array(0));
    expect(factor.complete).toBe(true);
    expect(factor.pivots.least).toBeNaN();
    expect(solve(factor, new Float64Array(0)).length).toBe(0);
  });
});
