import { expect, test } from 'vitest';
import { inYarnUnit, yarnRange } from './yarn-words.ts';

test('RT3: yarn goes by metres or yards, as lengths go by centimetres or inches', () => {
  const spread = { p5: 100, p50: 150, p95: 200 };
  expect(yarnRange(spread, 'cm')).toBe('100–200 m');
  // A yard is 0.9144 m exactly: 109.4 and 218.7.
  expect(yarnRange(spread, 'in')).toBe('109–219 yd');
  expect(yarnRange({ p5: 0, p50: 0, p95: 0 }, 'cm')).toBe('0 m');
});

test('RT3: sentences of the engine follow', () => {
  const said = 'it takes 100 m of yarn, there 200 m of yarn';
  expect(inYarnUnit(said, 'cm')).toBe(said);
  expect(inYarnUnit(said, 'in')).toBe('it takes 109 yd of yarn, there 219 yd of yarn');
  expect(inYarnUnit('within 5 m', 'in')).toBe('within 5 m');
});
