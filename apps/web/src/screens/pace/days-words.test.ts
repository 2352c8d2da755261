import { expect, test } from 'vitest';
import { daysWords } from './days-words.ts';

test.each([
  [0.1, 'less than half a day'],
  [0.4, 'half a day'],
  [1.1, '1 day'],
  [2.6, '2½ days'],
  [9.8, '10 days'],
  [31.2, '31 days'],
])('PC3: %d days are said as %s', (days, words) => {
  expect(daysWords(days)).toBe(words);
});
