import { describe, expect, it } from 'vitest';
import { chancePercent, chanceWords } from './chance-words.ts';

describe('chances in words', () => {
  it.each([
    [0.74, 'about 3 in 4'],
    [0.5, 'about 1 in 2'],
    [0.028, 'about 1 in 30'],
    [0.18, 'about 1 in 6'],
    [0.9, 'about 9 in 10'],
    [0.62, 'about 3 in 5'],
    [0.985, 'about 49 in 50'],
  ])('says %d as %s', (chance, words) => {
    expect(chanceWords(chance)).toBe(words);
  });

  it('never claims certainty, in words or in percent', () => {
    for (const chance of [0, 0.0004, 0.00999]) {
      expect(chanceWords(chance)).toBe('less than 1 in 100');
      expect(chancePercent(chance)).toBe('under 1\u00a0%');
    }
    for (const chance of [0.9901, 1]) {
      expect(chanceWords(chance)).toBe('more than 99 in 100');
      expect(chancePercent(chance)).toBe('over 99\u00a0%');
    }
    expect(chancePercent(0.4438)).toBe('44\u00a0%');
  });

  it('stays within a factor of 1.5 of the odds: neighbouring fractions lie less than 1.5² apart', () => {
    for (let p = 0.011; p < 0.99; p += 0.001) {
      const [, part, of] = /(\d+) in (\d+)/.exec(chanceWords(p)) ?? [];
      const said = Number(part) / Number(of);
      const ratio = said / (1 - said) / (p / (1 - p));
      expect(Math.max(ratio, 1 / ratio)).toBeLessThan(1.5);
    }
  });
});
