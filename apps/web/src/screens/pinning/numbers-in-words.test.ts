import { formatLength } from '@dryflat/engine/units';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { inWords, wholeInWords } from './numbers-in-words.ts';

test.each([
  [0, 'zero'],
  [13, 'thirteen'],
  [20, 'twenty'],
  [42, 'forty-two'],
  [100, 'one hundred'],
  [104, 'one hundred and four'],
  [999, 'nine hundred and ninety-nine'],
  [1000, 'one thousand'],
  [2012, 'two thousand and twelve'],
  [31_415, 'thirty-one thousand four hundred and fifteen'],
])('PN1: %d is said %s', (number, words) => expect(wholeInWords(number)).toBe(words));

test.each([
  [1076.325, 'in', 'forty-two and three eighths inches'],
  [25.4, 'in', 'one inch'],
  [9.525, 'in', 'three eighths of an inch'],
  [12.7, 'in', 'half an inch'],
  [345, 'cm', 'thirty-four point five centimetres'],
  [340, 'cm', 'thirty-four centimetres'],
  [10, 'cm', 'one centimetre'],
] as const)('PN1: %d mm in %s is said %s', (mm, unit, words) =>
  expect(inWords(formatLength(mm, { unit, style: 'spoken', words: 'uk' }))).toBe(words),
);

test('PN1: two numbers are never said alike, and no digit is left', () => {
  const whole = fc.integer({ min: 0, max: 999_999 });
  fc.assert(
    fc.property(whole, whole, (a, b) => {
      expect(wholeInWords(a)).not.toMatch(/\d|undefined/);
      expect(wholeInWords(a) === wholeInWords(b)).toBe(a === b);
    }),
  );
});
