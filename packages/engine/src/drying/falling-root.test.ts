import { expect, test } from 'vitest';
import { fallingRoot, sure } from './falling-root.ts';

test('D1: a root in closed form is found within its tolerance', () => {
  for (const k of [0.01, 0.5, 3, 12, 20]) {
    const root = fallingRoot((x) => k ** 3 - x ** 3, { low: 0, high: 1e3, tolerance: 1e-9 });
    expect(root.converged).toBe(true);
    expect(Math.abs(root.value - k)).toBeLessThanOrEqual(1e-9);
  }
});

test('D1: a bracket without a root says so and gives the nearer end', () => {
  const root = fallingRoot((x) => -1 - x, { low: 0, high: 5, tolerance: 1e-9 });
  expect(root).toEqual({ value: 0, iterations: 0, residual: -1, converged: false });
  expect(() => sure(root)).toThrow(RangeError);
});
