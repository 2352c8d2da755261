import { expect, test } from 'vitest';
import { named } from './words.ts';

test('a landmark’s id at the start of a sentence is told by its name, other words are left alone', () => {
  expect(named('armhole-depth: 26.9 over', 'us')).toBe('armhole depth: 26.9 over');
  expect(named('rib-depth: 6', 'uk')).toBe('rib depth (welt): 6');
  expect(named('The edge lies: inside', 'us')).toBe('The edge lies: inside');
});
