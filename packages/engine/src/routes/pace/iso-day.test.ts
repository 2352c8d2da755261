import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayNumber, isoDay, weekday } from './iso-day.ts';

test('PC1: days are those of the calendar, over leap years and ends of the week', () => {
  expect(dayNumber('1970-01-01')).toBe(0);
  expect(dayNumber('2024-02-29')! + 1).toBe(dayNumber('2024-03-01'));
  // 2000 was a leap year and 2100 is none (Gregorian rule of centuries).
  expect(dayNumber('2000-02-29')).not.toBeNull();
  expect(dayNumber('2100-02-29')).toBeNull();
  // 20 July 1969 was a Sunday, 9 November 1989 a Thursday.
  expect(weekday(dayNumber('1969-07-20')!)).toBe(6);
  expect(weekday(dayNumber('1989-11-09')!)).toBe(3);
});

test('PC1: every day comes back, and the weekday goes round by seven', () => {
  fc.assert(
    fc.property(fc.integer({ min: -25_000, max: 80_000 }), (day) => {
      expect(dayNumber(isoDay(day))).toBe(day);
      expect(weekday(day + 1)).toBe((weekday(day) + 1) % 7);
      // The platform has Sunday as 0.
      expect(weekday(day)).toBe((new Date(day * 86_400_000).getUTCDay() + 6) % 7);
    }),
  );
});

test.each(['2031-02-30', '2031-13-01', '2031-4-9', '9 April', '', '31-04-09', '1800-01-01'])(
  'PC1: “%s” is no day',
  (text) => {
    expect(dayNumber(text)).toBeNull();
  },
);
