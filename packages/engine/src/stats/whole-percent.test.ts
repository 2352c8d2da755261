import { expect, test } from 'vitest';
import { percentText, wholePercent } from './whole-percent.ts';

test('S14: a chance is printed in whole percent, its ends left open', () => {
  expect([0, 0.0099, 0.01, 0.014, 0.016, 0.5, 0.989, 0.99, 0.9901, 1].map(wholePercent)).toEqual([
    0, 0, 1, 1, 2, 50, 99, 99, 100, 100,
  ]);
  expect([0.004, 0.5, 0.997].map(percentText)).toEqual(['under 1 %', '50 %', 'over 99 %']);
});
