import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toPlain } from './plain.ts';

test.each([
  ['13⅜”', '13 3/8 "'],
  ['１３．５ｃｍ', '13.5cm'],
  ['13\u00a03⁄8\u2033', '13 3/8"'],
  ['5′\u202f2″', '5\' 2"'],
  ['−5–6—7', '-5-6-7'],
  ['13³⁄₈', '13 3/8'],
  ['zero\u200bwidth\ufeff', 'zerowidth'],
])('U2: %j in plain letters is %j', (given, plain) => {
  expect(toPlain(given).plain).toBe(plain);
});

test('U2: every plain letter knows where in the text it came from', () => {
  expect(toPlain('a½b')).toEqual({ plain: 'a 1/2 b', at: [0, 1, 1, 1, 1, 1, 2] });
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const { plain, at } = toPlain(text);
      expect(at.length).toBe(plain.length);
      expect(at.every((from, i) => from < text.length && from >= (at[i - 1] ?? 0))).toBe(true);
    }),
  );
});
