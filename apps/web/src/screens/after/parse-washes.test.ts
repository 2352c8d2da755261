import { expect, it } from 'vitest';
import { parseWashes } from './parse-washes.ts';

it.each([
  ['0', 0],
  [' 6 ', 6],
  ['10000', 10_000],
])('reads %s', (text, value) => {
  expect(parseWashes(text, 'Washes so far')).toEqual({ ok: true, value });
});

it.each(['', '1.5', '1,5', '-1', '10001', 'two'])(
  'refuses "%s" and says how to mend it',
  (text) => {
    const read = parseWashes(text, 'Washes so far');
    expect(read).toMatchObject({
      ok: false,
      faults: [{ code: 'washes-unreadable', field: 'Washes so far', given: text }],
    });
  },
);
