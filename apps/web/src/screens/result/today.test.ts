import { expect, it } from 'vitest';
import { isoDay, printDay } from './today.ts';

it('tells the local day with two digits each', () => {
  expect(isoDay(new Date(2025, 0, 5, 23, 59))).toBe('2025-01-05');
});

it('prints a day without moving it, and leaves other text alone', () => {
  expect(printDay('2025-01-05')).toMatch(/\b5\b/);
  expect(printDay('2025-01-05')).toMatch(/2025/);
  expect(printDay('soon')).toBe('soon');
});
