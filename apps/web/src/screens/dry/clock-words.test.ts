import { expect, test } from 'vitest';
import {
  aboutWords,
  betweenWords,
  dayWords,
  lastWords,
  momentWords,
  timeWords,
  withMoments,
} from './clock-words.ts';

const LONDON = { timeZone: 'Europe/London', locale: 'en-GB' };
const YORK = { timeZone: 'America/New_York', locale: 'en-US' };
const KATHMANDU = { timeZone: 'Asia/Kathmandu', locale: 'en-GB' };
const LORD_HOWE = { timeZone: 'Australia/Lord_Howe', locale: 'en-GB' };
const at = (iso: string): number => Date.parse(iso);
/** A thin space may stand before AM and PM, and a nought before an hour: that is the locale's. */
const plain = (text: string): string => text.replace(/\s/g, ' ').replace(/\b0(\d:)/g, '$1');

test('DR1: across midnight both days are said', () => {
  const now = at('2031-03-05T10:00:00Z'); // a Wednesday
  expect(
    plain(betweenWords(at('2031-03-06T14:07:00Z'), at('2031-03-07T01:40:00Z'), now, LONDON)),
  ).toBe('between tomorrow 14:00 and Friday 2:00');
  expect(
    plain(betweenWords(at('2031-03-07T14:00:00Z'), at('2031-03-08T02:00:00Z'), now, LONDON)),
  ).toBe('between Friday 14:00 and Saturday 2:00');
});

test('DR1: within a day the day is said once, in the manner of the place', () => {
  const now = at('2031-03-05T10:00:00Z');
  const [from, to] = [at('2031-03-05T14:02:00Z'), at('2031-03-05T18:29:00Z')];
  expect(plain(betweenWords(from, to, now, LONDON))).toBe('today between 14:00 and 18:30');
  expect(plain(betweenWords(from, to, now, YORK))).toBe('today between 9:00 AM and 1:30 PM');
});

test('DR1: ranges are rounded outwards, coarser where they are wider', () => {
  const now = at('2031-03-05T10:00:00Z');
  const from = at('2031-03-05T12:04:00Z');
  expect(plain(betweenWords(from, from + 20 * 60_000, now, LONDON))).toBe(
    'today between 12:00 and 12:25',
  );
  expect(plain(betweenWords(from, from + 3 * 3_600_000, now, LONDON))).toBe(
    'today between 12:00 and 15:15',
  );
  expect(plain(betweenWords(now, now, now, LONDON))).toBe('about today 10:00');
});

test('DR2: the day on the wall is the reader’s, not that of universal time', () => {
  const now = at('2031-03-05T23:30:00Z'); // Thursday 05:15 in Kathmandu, 5 h 45 min ahead
  expect(plain(momentWords(now, now, KATHMANDU))).toBe('today 5:15');
  expect(dayWords(at('2031-03-05T18:00:00Z'), now, KATHMANDU)).toBe('yesterday');
  expect(dayWords(at('2031-03-05T18:00:00Z'), now, LONDON)).toBe('today');
});

test('DR2: a day of 23 or of 25 hours is one day', () => {
  // Clocks in London go forward on 30 March 2031 and back on 26 October 2031, both at 01:00 UTC.
  const spring = at('2031-03-29T23:30:00Z');
  expect(dayWords(spring + 23 * 3_600_000, spring, LONDON)).toBe('tomorrow');
  expect(plain(momentWords(spring + 2 * 3_600_000, spring, LONDON))).toBe('tomorrow 2:30');
  const autumn = at('2031-10-25T23:10:00Z'); // 00:10 on the 26th, summer time
  expect(dayWords(autumn + 24 * 3_600_000, autumn, LONDON)).toBe('today');
  expect(dayWords(autumn + 25 * 3_600_000, autumn, LONDON)).toBe('tomorrow');
});

test('DR2: the hour that a clock shows twice names its zone, also where it is half an hour', () => {
  const first = timeWords(at('2031-10-26T00:30:00Z'), LONDON);
  const second = timeWords(at('2031-10-26T01:30:00Z'), LONDON);
  expect([first, second].map((text) => plain(text).slice(0, 4))).toEqual(['1:30', '1:30']);
  expect(first).not.toBe(second);
  expect(plain(timeWords(at('2031-10-26T02:30:00Z'), LONDON))).toBe('2:30');
  // Lord Howe goes back by half an hour on 6 April 2031, at 15:00 UTC of the day before.
  expect(plain(timeWords(at('2031-04-05T14:45:00Z'), LORD_HOWE))).not.toBe('1:45');
  expect(plain(timeWords(at('2031-04-05T14:15:00Z'), LORD_HOWE))).toBe('1:15');
});

test('DR1: a day of another week is a date', () => {
  const now = at('2031-03-05T10:00:00Z');
  expect(dayWords(now + 6 * 86_400_000, now, LONDON)).toBe('Tuesday');
  expect(dayWords(now + 7 * 86_400_000, now, LONDON)).toBe('Wed 12 March');
  expect(dayWords(now - 8 * 86_400_000, now, LONDON)).toBe('Tue 25 February');
});

test('DR1: a single moment is told to a quarter of an hour', () => {
  const now = at('2031-03-05T10:00:00Z');
  expect(plain(aboutWords(at('2031-03-05T16:21:00Z'), now, LONDON))).toBe('about today 16:15');
});

test.each([
  [0.01, '5 minutes'],
  [1, '1 hour'],
  [1.4, '85 minutes'],
  [4.4, '4 hours'],
  [36, '1½ days'],
  [50, '2 days'],
])('DR1: %s hours are %s', (hours, words) => {
  expect(lastWords(hours)).toBe(words);
});

test('DR1: moments in a fault are told as everywhere', () => {
  const now = at('2031-03-05T10:00:00Z');
  expect(withMoments('laid out at 2031-03-05T12:30:00.000Z', now, LONDON)).toBe(
    'laid out at today 12:30',
  );
});
