import { expect, test } from 'vitest';
import { spokenIn } from './heard.ts';

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
