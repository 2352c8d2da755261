import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from './brands.ts';
import { COUNT_SPANS, countAcross, countOfPitch, formatCountOver, pitchOf } from './count-over.ts';

test('U11: 4 in and 10 cm are never the same', () => {
  expect(COUNT_SPANS).toEqual({ '10cm': 100, '4in': 101.6, '1in': 25.4 });
  // 20 sts over 4 in are 20 · 100 / 101.6 = 19.685 over 10 cm.
  expect(countAcross(20, COUNT_SPANS['4in'], COUNT_SPANS['10cm'])).toBeCloseTo(19.68504, 5);
  expect(formatCountOver({ count: 20, over: mm(101.6) }, 'stitches', '10cm')).toBe(
    '19.7 sts over 10 cm',
  );
  expect(formatCountOver({ count: 7, over: mm(25.4) }, 'rows', '4in')).toBe('28 rows over 4 in');
  expect(formatCountOver({ count: 5.5, over: mm(25.4) }, 'stitches', '1in')).toBe(
    '5.5 sts over 1 in',
  );
});

test('U11: changing the length of a count and back changes nothing', () => {
  const span = fc.constantFrom<'10cm' | '4in' | '1in'>('10cm', '4in', '1in');
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), span, span, (count, a, b) => {
      const [from, to] = [COUNT_SPANS[a], COUNT_SPANS[b]];
      // Four roundings of doubles at most: 1e-13 of the count is a thousand times that.
      const back = countAcross(countAcross(count, from, to), to, from);
      expect(Math.abs(back - count)).toBeLessThan(count * 1e-13);
      const pitch = pitchOf({ count, over: from });
      expect(Math.abs(countOfPitch(pitch, a) - count)).toBeLessThan(count * 1e-13);
    }),
  );
});
