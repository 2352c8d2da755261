import { expect, test } from 'vitest';
import { parsePercent } from './parse-percent.ts';

test.each([
  ['55', 55],
  [' 55 % ', 55],
  ['47,5%', 47.5],
  ['0.5', 0.5],
  ['99.99', 99.99],
])('DR4: %s reads', (text, value) => {
  expect(parsePercent(text, 'Humidity')).toEqual({ ok: true, value });
});

test.each([
  ['', 'percent-unreadable'],
  ['damp', 'percent-unreadable'],
  ['-5', 'percent-unreadable'],
  ['0', 'percent-out-of-range'],
  ['100', 'percent-out-of-range'],
])('DR4: “%s” is a fault that names its field', (text, code) => {
  const read = parsePercent(text, 'Humidity');
  expect(read).toMatchObject({ ok: false, faults: [{ code, field: 'Humidity', given: text }] });
});
