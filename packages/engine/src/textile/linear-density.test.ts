import { expect, test } from 'vitest';
import { metresPer100gOfTex, texOfCottonCount, texOfMetresPer100g } from './linear-density.ts';

test('T5: 200 m in 100 g is 500 tex, and back', () => {
  expect(texOfMetresPer100g(200)).toBe(500);
  expect(metresPer100gOfTex(500)).toBe(200);
});

test('T5: tex times English cotton count is 590.5', () => {
  // Textile calculation notes print 590.5: half of the last digit.
  expect(texOfCottonCount(1)).toBeCloseTo(590.5, 1);
  // A 3/2 cotton is two plies of count 3: 394 tex (Singal et al. 2024, supplementary tables).
  expect(2 * texOfCottonCount(3)).toBeCloseTo(394, 0);
});

test('T5: no length of yarn is a bug', () => {
  expect(() => texOfMetresPer100g(0)).toThrow(RangeError);
});
