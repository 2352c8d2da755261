import { expect, it } from 'vitest';
import { hoursRange } from './hours-words.ts';

it.each([
  [{ p5: 12.2, p50: 15, p95: 19.4 }, '12–19 h'],
  [{ p5: 0.3, p50: 0.6, p95: 1.1 }, '½–1 h'],
  [{ p5: 2.4, p50: 2.5, p95: 2.6 }, '2½ h'],
  [{ p5: 0, p50: 0, p95: 0 }, 'none'],
  [{ p5: 0, p50: 0.1, p95: 0.2 }, 'under ½ h'],
  [{ p5: 0, p50: 4, p95: 9.4 }, '0–9½ h'],
])('RT1: hours of work are printed as a person says them: %o', (spread, text) => {
  expect(hoursRange(spread)).toBe(text.replace(' h', '\u00a0h'));
});
