import { expect, test } from 'vitest';
import { ROOM_WORDS, roomWordOf } from './humidity-words.ts';

test('DR4: words for a room run from dry to damp, without gaps, each around its number', () => {
  for (const { percent, low, high } of ROOM_WORDS) {
    expect(low).toBeLessThan(percent);
    expect(percent).toBeLessThan(high);
  }
  ROOM_WORDS.slice(1).forEach(({ low, percent }, k) => {
    const before = ROOM_WORDS[k]!;
    expect(low).toBeLessThanOrEqual(before.high);
    expect(percent).toBeGreaterThan(before.percent);
  });
});

test('DR4: a number of a hygrometer is no word', () => {
  expect(roomWordOf(50)?.id).toBe('usual');
  expect(roomWordOf(51)).toBeNull();
});
