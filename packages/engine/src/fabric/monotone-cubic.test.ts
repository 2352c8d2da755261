import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate, integral, monotoneKnots } from './monotone-cubic.ts';

const steps = fc.array(
  fc.record({
    dx: fc.double({ min: 0.01, max: 1, noNaN: true }),
    dy: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 9 },
);

const rising = steps.map((all) => {
  let x = 0;
  let y = 0;
  const points = [{ x, y }];
  for (const { dx, dy } of all) {
    x += dx;
    y += dy;
    points.push({ x, y });
  }
  return points;
});

test('E1: the curve goes through its points', () => {
  fc.assert(
    fc.property(rising, (points) => {
      const knots = monotoneKnots(points);
      // Values up to 9, a handful of roundings.
      for (const { x, y } of points) expect(evaluate(knots, x)).toBeCloseTo(y, 12);
    }),
  );
});

test('E1: rising points give a curve that never falls, beyond its ends included', () => {
  fc.assert(
    fc.property(rising, (points) => {
      const knots = monotoneKnots(points);
      const end = points[points.length - 1]!.x;
      let before = Number.NEGATIVE_INFINITY;
      for (let i = -10; i <= 210; i++) {
        const value = evaluate(knots, (end * i) / 200);
        // Rounding of values up to 9.
        expect(value).toBeGreaterThanOrEqual(before - 1e-12);
        before = value;
      }
    }),
  );
});

test('E1: points on a line give the line', () => {
  const knots = monotoneKnots([0, 0.1, 0.7, 1].map((x) => ({ x, y: 3 * x + 1 })));
  for (const x of [-1, 0.05, 0.3, 0.99, 4]) expect(evaluate(knots, x)).toBeCloseTo(3 * x + 1, 12);
  expect(integral(knots, 0, 1)).toBeCloseTo(2.5, 12);
});

test('E1: halving the spacing of a smooth curve cuts the error eightfold or better', () => {
  // Third order away from extrema is the known rate of this interpolant with these slopes.
  const worst = (n: number) => {
    const knots = monotoneKnots(
      Array.from({ length: n + 1 }, (_, i) => ({ x: i / n, y: Math.exp(i / n) })),
    );
    const errors = Array.from({ length: 1000 }, (_, i) =>
      Math.abs(evaluate(knots, i / 1000) - Math.exp(i / 1000)),
    );
    return Math.max(...errors);
  };
  // 20 to 40 and 40 to 80 intervals; 7 leaves room for the terms of next order.
  expect(worst(20) / worst(40)).toBeGreaterThan(7);
  expect(worst(40) / worst(80)).toBeGreaterThan(7);
});

test('E1: the integral is that of a fine midpoint sum', () => {
  fc.assert(
    fc.property(rising, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
      const knots = monotoneKnots(points);
      const to = points[points.length - 1]!.x * share;
      const n = 4000;
      let sum = 0;
      for (let i = 0; i < n; i++) sum += evaluate(knots, (to * (i + 0.5)) / n) * (to / n);
      // Monotone function of range at most 9 on a length of at most 9: midpoint error below
      // length · range / (2 n) = 0.0102.
      expect(Math.abs(integral(knots, 0, to) - sum)).toBeLessThan(0.0102);
    }),
    { numRuns: 30 },
  );
});

test('E1: x that does not rise is a bug', () => {
  expect(() => monotoneKnots([{ x: 0, y: 0 }])).toThrow(RangeError);
  expect(() =>
    monotoneKnots([
      { x: 0, y: 0 },
      { x: 0, y: 1 },
    ]),
  ).toThrow(RangeError);
});
