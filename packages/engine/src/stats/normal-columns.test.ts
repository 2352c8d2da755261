import { expect, test } from 'vitest';
import { logNormal, spreadOfLogNormal } from './log-normal.ts';
import { normalColumns } from './normal-columns.ts';

const N = 20_000;
const mean = (values: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
};

test('S11: a name gives the same column whatever was asked before, and is kept', () => {
  const [a, b] = [normalColumns(1, 10), normalColumns(1, 10)];
  b.normal('other');
  expect(a.normal('yarn')).toEqual(b.normal('yarn'));
  expect(a.normal('yarn')).toBe(a.normal('yarn'));
  expect(normalColumns(2, 10).normal('yarn')).not.toEqual(a.normal('yarn'));
});

test('S11: columns are standard normals, and those of two names are independent', () => {
  const names = ['a', 'b', 'yarn:metres', 'yarn:edge', 'pace:plain', 'pace:part:front'];
  const columns = names.map((name) => normalColumns(9, N).normal(name));
  columns.forEach((x, k) => {
    // Four standard errors: of a mean 1/√n, of a variance √(2/n), of a correlation 1/√n.
    expect(Math.abs(mean(x))).toBeLessThan(4 / Math.sqrt(N));
    expect(Math.abs(mean(x.map((v) => v * v)) - 1)).toBeLessThan(4 * Math.sqrt(2 / N));
    for (const y of columns.slice(k + 1))
      expect(Math.abs(mean(x.map((v, i) => v * y[i]!)))).toBeLessThan(4 / Math.sqrt(N));
  });
});

test('S12: a log-normal has the 5 and 95 % points that it was made of, and their geometric mean in the middle', () => {
  const { p5, p50, p95 } = spreadOfLogNormal(logNormal(15, 40));
  expect([p5, p50, p95]).toEqual([
    expect.closeTo(15, 9),
    expect.closeTo(Math.sqrt(600), 9),
    expect.closeTo(40, 9),
  ]);
});
