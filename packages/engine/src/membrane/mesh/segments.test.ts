import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inCircle, orient } from './predicates.ts';
import {
  boxAround,
  crosses,
  crossing,
  distanceToLine,
  doubleArea,
  insideRing,
  nearestShare,
} from './segments.ts';

describe('exact signs', () => {
  it('M20: counter-clockwise is positive with y up, and inside a circle is positive', () => {
    expect(orient(0, 0, 1, 0, 0, 1)).toBeGreaterThan(0);
    expect(orient(0, 0, 0, 1, 1, 0)).toBeLessThan(0);
    expect(inCircle(0, 0, 1, 0, 0, 1, 0.5, 0.5)).toBeGreaterThan(0);
    expect(inCircle(0, 0, 1, 0, 0, 1, 2, 2)).toBeLessThan(0);
    expect(inCircle(0, 0, 1, 0, 1, 1, 0, 1)).toBe(0);
  });

  it('M20: signs hold where doubles round to nothing: whole numbers against exact integers', () => {
    const big = fc.bigInt({ min: 2n ** 40n, max: 2n ** 40n + 8n });
    fc.assert(
      fc.property(big, big, big, big, big, big, (a, b, c, d, e, f) => {
        const exact = (c - a) * (f - b) - (e - a) * (d - b);
        const sign = orient(Number(a), Number(b), Number(c), Number(d), Number(e), Number(f));
        expect(Math.sign(sign) + 0).toBe(exact === 0n ? 0 : exact > 0n ? 1 : -1);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('segments', () => {
  it('M20: crossing is strict: ends that touch do not cross', () => {
    expect(crosses([0, 0], [2, 2], [0, 2], [2, 0])).toBe(true);
    expect(crossing([0, 0], [2, 2], [0, 2], [2, 0])).toEqual([1, 1]);
    expect(crosses([0, 0], [2, 0], [1, 0], [1, 5])).toBe(false);
    expect(crosses([0, 0], [2, 0], [1, 0], [5, 0])).toBe(false);
  });

  it('M20: shares, distances, areas, insides and boxes of plain cases', () => {
    expect(nearestShare([1, 5], [0, 0], [4, 0])).toBe(0.25);
    expect(nearestShare([-1, 5], [0, 0], [4, 0])).toBe(0);
    expect(nearestShare([1, 5], [3, 3], [3, 3])).toBe(0);
    expect(distanceToLine([0, 0], [4, 0], [9, -3])).toBe(3);
    expect(
      doubleArea([
        [0, 0],
        [2, 0],
        [2, 1],
        [0, 1],
      ]),
    ).toBe(4);
    expect(doubleArea([])).toBe(0);
    expect(
      insideRing(
        [1, 1],
        [
          [0, 0],
          [3, 0],
          [0, 3],
        ],
      ),
    ).toBe(true);
    expect(
      insideRing(
        [2, 2],
        [
          [0, 0],
          [3, 0],
          [0, 3],
        ],
      ),
    ).toBe(false);
    expect(
      boxAround([
        [1, 2],
        [4, 6],
      ]),
    ).toEqual({ left: 1, right: 4, bottom: 2, top: 6, diagonal: 5 });
  });
});
