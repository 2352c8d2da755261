import { expect, test } from 'vitest';
import { fromTimeInput, toTimeInput } from './time-input.ts';

test('DR3: a moment comes back from its field to the minute', () => {
  for (const iso of ['2031-01-05T09:03:00Z', '2031-07-31T23:59:00Z', '2032-02-29T00:00:00Z']) {
    const ms = Date.parse(iso);
    expect(fromTimeInput(toTimeInput(ms + 29_000))).toBe(ms);
  }
});

test('DR3: an empty or half-filled field is no moment', () => {
  for (const text of ['', '2031-01-05', '2031-13-40T10:00', 'soon'])
    expect(fromTimeInput(text)).toBeNull();
});
