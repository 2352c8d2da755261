import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { apart, clockTicks, scale, tickStep } from './line-scale.ts';

test('DR5: pegs that come close are moved apart, in their order, and stay on the line', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 6 }), (raw) => {
      const places = [...raw].sort((a, b) => a - b);
      const moved = apart(places, 24, 300);
      moved.slice(1).forEach((place, k) => {
        // Sums of numbers up to 300 round by some 1e-13.
        expect(place - moved[k]!).toBeGreaterThanOrEqual(24 - 1e-9);
      });
      expect(Math.max(0, ...moved)).toBeLessThanOrEqual(300);
    }),
  );
});

test('DR5: pegs with room stand where they belong', () => {
  expect(apart([10, 50, 200], 24, 300)).toEqual([10, 50, 200]);
});

test('DR5: marks of the clock stand at whole hours of the wall, and midnight begins a day', () => {
  const from = new Date(2031, 2, 5, 14, 20).getTime();
  const ticks = clockTicks(from, from + 20 * 3_600_000, 6);
  expect(ticks.map(({ ms }) => new Date(ms).getHours())).toEqual([18, 0, 6]);
  expect(ticks.map(({ day }) => day)).toEqual([false, true, false]);
});

test('DR5: there are no more marks than can be read', () => {
  for (const hours of [1, 5, 11, 30, 70, 200]) {
    expect(hours / tickStep(hours, 6)).toBeLessThanOrEqual(6);
  }
});

test('DR5: the scale ends at its ends', () => {
  const x = scale({ low: 0, high: 20 }, 40, 340);
  expect([x(0), x(10), x(20)]).toEqual([40, 190, 340]);
});
