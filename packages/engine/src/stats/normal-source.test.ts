import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { fillNormals, randomSource } from './normal-source.ts';

test('S7: the same seed gives the same numbers, another seed does not', () => {
  const draw = (seed: number) => [...fillNormals(randomSource(seed), new Float64Array(8))];
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
});

test('S8: 100,000 normals pass Kolmogorov and Smirnov against the normal CDF of jStat', () => {
  const n = 100_000;
  const sample = fillNormals(randomSource(20), new Float64Array(n)).sort();
  let worst = 0;
  sample.forEach((x, i) => {
    const cdf = jStat.normal.cdf(x, 0, 1);
    worst = Math.max(worst, Math.abs(cdf - i / n), Math.abs(cdf - (i + 1) / n));
  });
  // The 0.1 % critical value is 1.949 / √n (Smirnov 1948); the seed is fixed, so it is no gamble.
  expect(worst).toBeLessThan(1.949 / Math.sqrt(n));
});
