import { expect, test } from 'vitest';
import { formatCount, parseCount } from './parse-count.ts';

test.each([
  ['22', 22],
  ['21,5', 21.5],
  ['21.5', 21.5],
  ['21½', 21.5],
  ['21 1/2', 21.5],
  ['½', 0.5],
  [' 7-1/4 ', 7.25],
])('K1: the count %j reads as %d', (text, value) => {
  expect(parseCount(text, 'stitches')).toEqual({ ok: true, value });
});

test.each([
  ['', 'count-unreadable'],
  ['twenty', 'count-unreadable'],
  ['1,234,567', 'count-unreadable'],
  ['21 3/2', 'count-unreadable'],
  ['3/0', 'count-unreadable'],
  ['-4', 'count-unreadable'],
  ['0', 'count-out-of-range'],
])('K2: %j is a fault %s that names the field', (text, code) => {
  const read = parseCount(text, 'stitches');
  expect(read).toMatchObject({ ok: false, faults: [{ code, field: 'stitches', given: text }] });
});

test('K2: a whole count refuses a fraction', () => {
  expect(parseCount('2,5', 'sizes', true)).toMatchObject({ faults: [{ code: 'count-not-whole' }] });
});

test('K3: a count prints as it is written by hand', () => {
  expect([22, 21.5, 0.25, 20.125].map(formatCount)).toEqual(['22', '21½', '¼', '20.125']);
});

test('K2: none is a count only where there may be none', () => {
  expect(parseCount('0', 'Pins left', true).ok).toBe(false);
  expect(parseCount('0', 'Pins left', true, true)).toEqual({ ok: true, value: 0 });
  expect(parseCount('-1', 'Pins left', true, true).ok).toBe(false);
});
