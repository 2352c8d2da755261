import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipped } from './clip.ts';

const place = fc.record({
  x: fc.double({ min: -50, max: 150, noNaN: true }),
  y: fc.double({ min: -50, max: 150, noNaN: true }),
});
const chain = fc.array(place, { minLength: 2, maxLength: 12 });
const length = (points: readonly { x: number; y: number }[]) =>
  points
    .slice(1)
    .reduce((sum, p, k) => sum + Math.hypot(p.x - points[k]!.x, p.y - points[k]!.y), 0);
/** Rounding of sums of a few hundred millimetres. */
const HAIR = 1e-6;

test('PA20: what is cut to a window lies in it', () => {
  const window = { x: 10, y: 20, width: 60, height: 50 };
  fc.assert(
    fc.property(chain, (points) => {
      for (const { x, y } of clipped(points, window).flat()) {
        expect(x).toBeGreaterThanOrEqual(10 - HAIR);
        expect(x).toBeLessThanOrEqual(70 + HAIR);
        expect(y).toBeGreaterThanOrEqual(20 - HAIR);
        expect(y).toBeLessThanOrEqual(70 + HAIR);
      }
    }),
  );
});

test('PA20: windows that tile the plane cut a line into its whole length', () => {
  fc.assert(
    fc.property(chain, (points) => {
      const parts = [-60, 10, 80].flatMap((x) =>
        [-60, 10, 80].flatMap((y) => clipped(points, { x, y, width: 70, height: 70 })),
      );
      expect(parts.reduce((sum, part) => sum + length(part), 0)).toBeCloseTo(length(points), 5);
    }),
  );
});

test('PA20: a line along the rim of a window is in it, one beside it is not', () => {
  const window = { x: 0, y: 0, width: 10, height: 10 };
  expect(
    clipped(
      [
        { x: 0, y: 10 },
        { x: 10, y: 10 },
      ],
      window,
    ),
  ).toHaveLength(1);
  expect(
    clipped(
      [
        { x: 0, y: 10.1 },
        { x: 10, y: 10.1 },
      ],
      window,
    ),
  ).toEqual([]);
});
