import { expect, test } from 'vitest';
import { meanOf, type Observation, posterior, randomSource, sdOf } from '../stats/index.ts';
import { believe, learn } from './learn.ts';

const ROWS = [
  [1.5, 0.4, 0],
  [0.2, -1, 0.7],
];
const READ = [1.2, -0.8];
const SD = 0.3;
const options = (seed: number) => ({ unknowns: 3, draws: 8000, source: randomSource(seed) });

test('D9: on straight lines it gives the closed posterior of a linear Gaussian model', () => {
  const learnt = learn(
    (z) =>
      Float64Array.from(
        ROWS,
        (row, i) => (READ[i]! - row.reduce((sum, a, j) => sum + a * z[j]!, 0)) / SD,
      ),
    options(3),
  );
  const form = (i: number) => ({ constant: 0, terms: [[i, 1]] as const });
  const seen: Observation[] = ROWS.map((row, i) => ({
    form: { constant: 0, terms: row.map((a, j) => [j, a] as const) },
    value: READ[i]!,
    sd: SD,
  }));
  const exact = posterior(3, seen);
  for (let i = 0; i < 3; i++) {
    const mean = learnt.rows.reduce((sum, row, d) => sum + learnt.weights[d]! * row[i]!, 0);
    const square = learnt.rows.reduce((sum, row, d) => sum + learnt.weights[d]! * row[i]! ** 2, 0);
    // Monte Carlo with several thousand equal draws: SD/√n is about 0.013 of an SD, taken four times.
    expect(Math.abs(mean - meanOf(exact, form(i)))).toBeLessThan(0.05);
    expect(Math.abs(Math.sqrt(square - mean ** 2) / sdOf(exact, form(i)) - 1)).toBeLessThan(0.05);
  }
  expect(learnt.fit.converged).toBe(true);
  expect(learnt.effectiveDraws).toBeGreaterThan(4000);
  expect(learnt.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
});

test('D9: on a curve it gives what integrating on a grid gives', () => {
  // One unknown, reading exp(z) = 1.8 with SD 0.5: posterior mean by the trapezoid rule.
  const miss = (z: number) => (1.8 - Math.exp(z)) / 0.5;
  let [mass, moment] = [0, 0];
  for (let z = -6; z <= 6; z += 1e-3) {
    const density = Math.exp(-0.5 * (z * z + miss(z) ** 2));
    mass += density;
    moment += z * density;
  }
  const learnt = learn((z) => Float64Array.of(miss(z[0]!)), { ...options(4), unknowns: 1 });
  const mean = learnt.rows.reduce((sum, row, d) => sum + learnt.weights[d]! * row[0]!, 0);
  // Posterior SD is about 0.3; over the root of about 5,000 draws, taken four times.
  expect(Math.abs(mean - moment / mass)).toBeLessThan(0.02);
});

test('D9: readings without an answer are not called converged, or weigh on few draws', () => {
  const learnt = learn((z) => Float64Array.of(1e3 * Math.sign(z[0]! - 50) + 1), {
    ...options(5),
    unknowns: 1,
    draws: 500,
  });
  expect(learnt.fit.converged && learnt.effectiveDraws > 499).toBe(false);
});

test('D9: before any reading every draw counts the same', () => {
  const before = believe({ ...options(6), draws: 4 });
  expect([...before.weights]).toEqual([0.25, 0.25, 0.25, 0.25]);
  expect(before.effectiveDraws).toBe(4);
});
