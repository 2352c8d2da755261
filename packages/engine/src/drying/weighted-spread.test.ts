import { expect, test } from 'vitest';
import { randomSource } from '../stats/index.ts';
import { weightedChance, weightedSpread } from './weighted-spread.ts';

test('D8: equal weights on even numbers give the points of the uniform distribution', () => {
  const values = Float64Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000).reverse();
  const spread = weightedSpread(values, new Float64Array(1000).fill(1e-3));
  // Linear between middles of weights is exact here; sums of a thousand round.
  expect(spread.p5).toBeCloseTo(0.05, 10);
  expect(spread.p50).toBeCloseTo(0.5, 10);
  expect(spread.p95).toBeCloseTo(0.95, 10);
});

test('D8: a draw of weight w counts as w draws', () => {
  const source = randomSource(5);
  const n = 20_000;
  const values = Float64Array.from({ length: n }, () => source.uniform());
  const raw = values.map((u) => 2 * u);
  const total = raw.reduce((a, b) => a + b, 0);
  const weights = raw.map((w) => w / total);
  const spread = weightedSpread(values, weights);
  // Uniform weighted by 2u has P(U ≤ u) = u²; the points move by about 1/√n at most.
  expect(Math.abs(spread.p5 - Math.sqrt(0.05))).toBeLessThan(0.02);
  expect(Math.abs(spread.p50 - Math.sqrt(0.5))).toBeLessThan(0.02);
  expect(Math.abs(weightedChance(values, weights, (u) => u <= 0.5) - 0.25)).toBeLessThan(0.02);
});

test('D8: one draw is its own range', () => {
  const one = weightedSpread(Float64Array.of(7), Float64Array.of(1));
  expect(one).toEqual({ p5: 7, p50: 7, p95: 7 });
});
