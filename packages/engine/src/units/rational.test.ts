import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromNumber, nearestWhole, over, ratio, times, toNumber } from './rational.ts';

test('U1: a fraction becomes the double nearest to it', () => {
  expect(toNumber(ratio(1n, 3n))).toBe(1 / 3);
  expect(toNumber(ratio(-107n * 127n, 8n * 5n))).toBe(-339.725);
  expect(toNumber(ratio(0n, 7n))).toBe(0);
  // 2^53 + 1 lies between two doubles; a hair above the tie must go up, the tie itself to even.
  expect(toNumber(ratio(2n ** 53n + 1n))).toBe(2 ** 53);
  expect(toNumber(ratio((2n ** 53n + 1n) * 10n ** 30n + 1n, 10n ** 30n))).toBe(2 ** 53 + 2);
});

test('U1: a decimal of digits becomes what the language reads from the same digits', () => {
  fc.assert(
    fc.property(
      fc.bigInt({ min: 0n, max: 10n ** 25n }),
      fc.integer({ min: 0, max: 20 }),
      (n, k) => {
        expect(toNumber(ratio(n, 10n ** BigInt(k)))).toBe(Number(`${n}e-${k}`));
      },
    ),
  );
});

test('U1: a double goes to its fraction and back unchanged', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e9, max: 1e9 }), (x) => {
      fc.pre(x === 0 || Math.abs(x) > 1e-200);
      expect(toNumber(fromNumber(x))).toBe(x === 0 ? 0 : x);
    }),
  );
});

test('whole numbers are nearest, halves away from zero', () => {
  expect(nearestWhole(ratio(5n, 2n))).toBe(3n);
  expect(nearestWhole(ratio(-5n, 2n))).toBe(-3n);
  expect(nearestWhole(ratio(7n, 3n))).toBe(2n);
  expect(times(over(ratio(3n, 8n), ratio(-1n, 2n)), ratio(4n))).toEqual({ n: -24n, d: 8n });
});

test('a zero denominator is a bug, not a value', () => {
  expect(() => ratio(1n, 0n)).toThrow(RangeError);
  expect(() => fromNumber(Number.NaN)).toThrow(RangeError);
});
