import type { Advice } from '@dryflat/engine/garment';
import { expect, test } from 'vitest';
import { isBestKept, needleWords } from './needle-words.ts';

const advice = (needle: Advice['needle'], chances: readonly number[]): Advice => ({
  bestSize: '3',
  needle,
  needles: (['smaller', 'own', 'larger'] as const).map((way, k) => ({
    way,
    needleMm: 3 + k,
    size: `${k + 2}`,
    chanceAll: chances[k] ?? 0,
    from: 'model',
  })),
  sentence: '',
});
const said = (needle: Advice['needle'], chances: readonly number[], sizes = 8): string =>
  needleWords(advice(needle, chances), sizes).replaceAll('\u00a0', ' ');

test('R18: what is said of needles has its chances beside it', () => {
  expect(said('keep', [0.3, 0.41, 0.44])).toBe(
    'Needle: keep it. Begun afresh, the best chance that all fits is 41 % on this one (size 3), 30 % one size smaller (size 2), 44 % one size larger (size 4).',
  );
  expect(said('larger', [0.1, 0.2, 0.3], 1)).toBe(
    'Needle: one size larger would help. Swatch on it before you begin. Begun afresh, the best chance that all fits is 20 % on this one, 10 % one size smaller, 30 % one size larger.',
  );
});

test('R18: a needle is kept for good only where none is shown with more', () => {
  expect(isBestKept(advice('keep', [0.3, 0.41, 0.44]))).toBe(false);
  expect(isBestKept(advice('keep', [0.3, 0.414, 0.411]))).toBe(true);
  expect(isBestKept(advice('keep', [0.3, 0.411, 0.414]))).toBe(true);
  expect(isBestKept(advice('larger', [0.3, 0.4, 0.5]))).toBe(false);
});
