import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseDuration, printDuration } from './parse-duration.ts';

const day = { bare: 'minutes', least: 0, most: 1440 } as const;
const read = (text: string, bare: 'minutes' | 'hours' = 'minutes') => {
  const made = parseDuration(text, 'Time', { ...day, bare });
  return made.ok ? made.value : made.faults[0]?.code;
};

it.each([
  ['25', 25],
  ['1:05', 65],
  ['1 h 5', 'time-unreadable'],
  ['1 h 5 min', 65],
  ['1.5 h', 90],
  ['1,5h', 90],
  ['40 minutes', 40],
  ['2 hours', 120],
  ['', 'time-unreadable'],
  ['soon', 'time-unreadable'],
  ['1:75', 'time-unreadable'],
  ['25:00', 'time-out-of-range'],
])('PC1: “%s” is read as minutes', (text, value) => {
  expect(read(text)).toBe(value);
});

it('PC1: a bare number is in the unit of its field', () => {
  expect(read('1.5', 'hours')).toBe(90);
});

it('PC1: what is printed is read as it was, to the minute', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1440 }), (minutes) => {
      expect(read(printDuration(minutes))).toBe(minutes);
    }),
  );
});
