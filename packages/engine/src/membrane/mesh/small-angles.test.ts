import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shellShare, smallCorners } from './small-angles.ts';

const corner = (degrees: number): number => {
  const angle = (degrees * Math.PI) / 180;
  return smallCorners({
    points: [
      [0, 0],
      [100, 0],
      [70 * Math.cos(angle), 70 * Math.sin(angle)],
    ],
    pieces: [
      { a: 0, b: 1, edge: 0, boundary: true },
      { a: 2, b: 0, edge: 1, boundary: true },
    ],
    segments: [],
    pieceOfNew: [],
    complete: true,
  })[0]!;
};

describe('small corners', () => {
  it('M23: corners below 60° are small', () => {
    expect([1, 30, 59.9, 60.1, 90, 179].map(corner)).toEqual([1, 1, 1, 0, 0, 0]);
  });

  it('M23: shells are powers of two, between a third and two thirds', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e4, noNaN: true }), (length) => {
        const share = shellShare(length);
        // Rounding of one division and one product.
        expect(Math.log2(share * length)).toBeCloseTo(Math.round(Math.log2(share * length)), 12);
        expect(share).toBeGreaterThan(1 / 3 - 1e-12);
        expect(share).toBeLessThan(2 / 3 + 1e-12);
      }),
    );
  });
});
