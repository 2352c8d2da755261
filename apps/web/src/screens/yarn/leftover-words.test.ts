import { expect, test } from 'vitest';
import { leftoverLength, leftoverMass, yarnLength, yarnMass } from './leftover-words.ts';

const spread = (p5: number, p95: number) => ({ p5, p50: (p5 + p95) / 2, p95 });

test('YL1: what is left over is a range in the reader’s own units', () => {
  expect(leftoverLength(spread(12, 48), 'cm')).toBe('12 m to 48 m left over');
  // A yard is 0.9144 m exactly: 12 m are 13.1 yards, 48 m are 52.5.
  expect(leftoverLength(spread(12, 48), 'in')).toBe('13 yd to 52 yd left over');
  expect(leftoverMass(spread(4, 20), 'cm')).toBe('4 g to 20 g left over');
  // An ounce is 28.349523125 g exactly.
  expect(leftoverMass(spread(28.35, 56.7), 'in')).toBe('1 oz to 2 oz left over');
});

test('YL1: what is missing is said as missing', () => {
  expect(leftoverLength(spread(-10, 30), 'cm')).toBe('between 10 m missing and 30 m left over');
  expect(leftoverMass(spread(-30, -10), 'cm')).toBe('10 g to 30 g are missing');
});

test('YL1: what is needed and what is at hand are ranges too', () => {
  expect(yarnLength(spread(310, 420), 'cm')).toBe('310 m to 420 m');
  expect(yarnLength(spread(0, 0), 'cm')).toBe('0 m');
  expect(yarnMass(spread(28.35, 56.7), 'in')).toBe('1 oz to 2 oz');
});
