import { expect, test } from 'vitest';
import { mm } from '../../units/index.ts';
import { LETTER_BANDS, letterForGirth } from './letter-codes.ts';

// EN 13402-3, letter codes by girth in cm, as quoted in the encyclopaedia article on the standard.
test.each([
  ['women', 86, 'S'],
  ['women', 98, 'L'],
  ['women', 106.9, 'L'],
  ['women', 130, 'XXL'],
  ['men', 86, 'S'],
  ['men', 100, 'M'],
  ['men', 128, 'XXL'],
] as const)('B4: %s of %d cm wear %s', (who, girth, letter) => {
  expect(letterForGirth(who, mm(girth * 10))).toBe(letter);
});

test('B4: bands follow on each other without a gap', () => {
  for (const who of ['women', 'men'] as const)
    for (const [i, band] of LETTER_BANDS.slice(1).entries())
      expect(band[who].low).toBe(LETTER_BANDS[i]![who].high);
});

test('B4: a child is outside all bands', () => {
  expect(letterForGirth('women', mm(560))).toBeNull();
  expect(letterForGirth('men', mm(1410))).toBeNull();
});
