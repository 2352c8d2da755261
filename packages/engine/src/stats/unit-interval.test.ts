import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { betaDensity, unitMean, unitSampler, unitSd, withReading } from './unit-interval.ts';

test('S9: the grid has the mean and SD asked for, and the quantiles of jStat beta', () => {
  const density = betaDensity(0.6, 0.2);
  // A midpoint grid of 200 cells: error of a smooth moment is below one tenth of a cell.
  expect(unitMean(density)).toBeCloseTo(0.6, 3);
  expect(unitSd(density)).toBeCloseTo(0.2, 3);
  const size = (0.6 * 0.4) / 0.04 - 1;
  const sample = unitSampler(density);
  // Within one cell of the grid (1/200).
  for (const u of [0.05, 0.5, 0.95])
    expect(Math.abs(sample(u) - jStat.beta.inv(u, 0.6 * size, 0.4 * size))).toBeLessThan(1 / 200);
});

test('S10: a reading moves the mean towards it and narrows', () => {
  const prior = betaDensity(0.5, 0.22);
  const after = withReading(prior, 0.8, 0.1);
  expect(unitMean(after)).toBeGreaterThan(0.7);
  expect(unitMean(after)).toBeLessThan(0.8);
  expect(unitSd(after)).toBeLessThan(0.1);
});

test('an impossible mean and SD is a bug', () => {
  expect(() => betaDensity(0.5, 0.6)).toThrow(/no beta/);
});
