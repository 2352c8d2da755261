import { expect, it } from 'vitest';
import { percentOn, scaleFor } from './scale.ts';

it('holds every length that it was made for, with air at both ends', () => {
  const scale = scaleFor([930, null, 1078, undefined, 1040]);
  expect(scale.low).toBeLessThan(930);
  expect(scale.high).toBeGreaterThan(1078);
  expect(percentOn(scale, 930)).toBeGreaterThan(0);
  expect(percentOn(scale, 1078)).toBeLessThan(100);
  expect(percentOn(scale, (930 + 1078) / 2)).toBeCloseTo(50, 9);
});

it('clamps what lies outside, and does not divide by nothing', () => {
  expect(percentOn(scaleFor([10, 20]), 500)).toBe(100);
  expect(percentOn(scaleFor([10, 20]), -500)).toBe(0);
  expect(Number.isFinite(percentOn(scaleFor([42]), 42))).toBe(true);
  expect(scaleFor([])).toEqual({ low: 0, high: 1 });
});
