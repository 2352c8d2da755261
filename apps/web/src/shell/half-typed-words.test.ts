import { expect, test } from 'vitest';
import { halfTyped } from '../store/half-typed.ts';
import { halfTypedWords } from './half-typed-words.ts';

test.each([
  [{}, ''],
  [{ 'aside/counts/sum/kept': '12' }, ''],
  [{ massG: '4,5 of' }, 'One entry is half typed, and not in it: “4,5 of”.'],
  [
    { massG: '4', 'pattern/paste': 'Back: cast on 112 stitches, then work', 'aside/x': '1' },
    '2 entries are half typed, and not in it: “4”, “Back: cast on 112 stitch…”.',
  ],
  [
    { a: '1', b: '2', c: '3', d: '4' },
    '4 entries are half typed, and not in it: “1”, “2”, “3” and more.',
  ],
])('S5: of the drafts %j is said: %s', (drafts, words) => {
  expect(halfTypedWords(halfTyped(drafts))).toBe(words);
});
