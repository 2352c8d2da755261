import { expect, test } from 'vitest';
import { spokenIn, wordsIn } from './heard.ts';

test.each([
  ['next', 'next'],
  ['Next please', 'next'],
  ['it is pinned', 'next'],
  ['go back', 'back'],
  ['no, not next, back', 'back'],
  ['say that again', 'again'],
  ['the context of a second', null],
  ['', null],
] as const)('PN8: %j means %s', (heard, means) => expect(spokenIn(heard)).toBe(means));

test('PN8: the words of an alternative are found where the platform keeps them, on its prototype', () => {
  const shown = { enumerable: true, configurable: true };
  const alternative = Object.create(
    Object.defineProperties(
      {},
      {
        confidence: { ...shown, get: () => 0.9 },
        words: { ...shown, get: () => 'next please' },
      },
    ),
  );
  expect(wordsIn(alternative)).toBe('next please');
  expect(wordsIn({ confidence: 1 })).toBe('');
  expect(wordsIn({})).toBe('');
});
