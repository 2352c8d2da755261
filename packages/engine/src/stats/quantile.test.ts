import * as fc from 'fast-check';
import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { quantilesInPlace, Z95 } from './quantile.ts';

test('S5: quantiles equal jStat type-7 quantiles on any sample', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 200 }),
      (sample) => {
        const levels = [0, 0.05, 0.5, 0.95, 1];
        const ours = quantilesInPlace(Float64Array.from(sample), levels);
        // alphap = betap = 1 is type 7. The interior levels only: jStat clamps the ends.
        const theirs = jStat.quantiles(sample, [0.05, 0.5, 0.95], 1, 1) as number[];
        const span = Math.max(...sample.map(Math.abs), 1);
        // Interpolation is done in a different order of operations: a few ulps of the span.
        theirs.forEach((q, i) => {
          expect(Math.abs(ours[i + 1]! - q)).toBeLessThanOrEqual(1e-9 * span);
        });
        expect(ours[0]).toBe(Math.min(...sample));
        expect(ours[4]).toBe(Math.max(...sample));
      },
    ),
  );
});

test('S6: the 95 % point of the normal agrees with jStat', () => {
  // jStat inverts by rational approximation and one Newton step: 1e-8.
  expect(Math.abs(Z95 - jStat.normal.inv(0.95, 0, 1))).toBeLessThan(1e-8);
});

test('quantiles of nothing is a bug', () => {
  expect(() => quantilesInPlace(new Float64Array(0), [0.5])).toThrow(/nothing/);
});

test('the quantiles of one value are that value', () => {
  expect(quantilesInPlace(Float64Array.of(3), [0.05, 0.5, 0.95])).toEqual([3, 3, 3]);
});
