import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from './brands.ts';
import { explain } from './fault.ts';
import { type CountOptions, parseCountOver } from './parse-count-over.ts';

const read = (text: string, options: Partial<CountOptions> = {}) => {
  const result = parseCountOver(text, { field: 'gauge', ...options });
  return result.ok ? result.value : result.faults.map(explain).join('; ');
};
const over = (count: number, over: number, resolution = 1) => ({ count, resolution, over });

test.each([
  ['20 sts = 4 in', over(20, 101.6), null],
  ['20 sts / 10 cm', over(20, 100), null],
  ['20 sts in 4 in', over(20, 101.6), null],
  ['22 sts and 30 rows to 4"', over(22, 101.6), over(30, 101.6)],
  ['5.5 sts per inch', over(5.5, 25.4, 0.1), null],
  ['5 sts/in', over(5, 25.4), null],
  ['20 sts to the inch', over(20, 25.4), null],
  ['18½ stitches over 10cm', over(18.5, 100, 0.5), null],
  ['18,5 sts / 10 cm', over(18.5, 100, 0.1), null],
  ['28 rnds = 10 cm', null, over(28, 100)],
  ['20 sts x 28 rows = 10 x 10 cm', over(20, 100), over(28, 100)],
  ['Gauge: 20 sts & 28 rounds = 10 cm square', over(20, 100), over(28, 100)],
  ['Over 4 in: 20 sts, 28 rows', over(20, 101.6), over(28, 101.6)],
  ['20 sts over 4 in, 28 rows over 10 cm', over(20, 101.6), over(28, 100)],
  ['20 sts over 4 in, 28 rows', over(20, 101.6), over(28, 101.6)],
])('U10: %j', (text, stitches, rows) => {
  expect(read(text)).toEqual({ stitches, rows, remark: '' });
});

test('U10: words that are not needed are handed back', () => {
  expect(read('20 sts over 4 in in stockinette after blocking')).toEqual({
    stitches: over(20, 101.6),
    rows: null,
    remark: 'in stockinette after blocking',
  });
});

test('U10: a field that knows what is counted, and over what, fills the gaps', () => {
  expect(read('28 rows', { over: mm(100) })).toMatchObject({ rows: over(28, 100) });
  expect(read('20', { bare: 'stitches', over: mm(101.6) })).toMatchObject({
    stitches: over(20, 101.6),
  });
});

test.each([
  ['', 'gauge: the count is missing. Write it like 20 sts and 28 rows over 10 cm.'],
  [
    'abc',
    'gauge: no count of stitches or rows was found (given: abc). Write it like 20 sts and 28 rows over 10 cm.',
  ],
  [
    '28 rows',
    'gauge: the count of rows has no length that it is counted over (given: 28 rows). Write it like 20 sts and 28 rows over 10 cm.',
  ],
  [
    '20 to 22 sts over 4 in',
    'gauge: the number 20 has no word for what it counts (given: 20 to 22 sts over 4 in). Add sts or rows for a count, cm or in for a length.',
  ],
  [
    '22 sts = 4"/10 cm',
    'gauge: two lengths are given for one count, and 4 in (101.6 mm) is not 10 cm (given: 22 sts = 4"/10 cm). Keep the length that was counted over.',
  ],
  [
    '20 sts 22 sts over 4 in',
    'gauge: stitches are counted twice (given: 20 sts 22 sts over 4 in). Keep the count that is meant.',
  ],
  [
    '0 sts over 4 in',
    'gauge: the count of stitches is not between 0 and 100000 (given: 0 sts over 4 in). Check it.',
  ],
  [
    '20 sts over 0 in',
    'gauge: the length is not between 0 and 100 m (given: 20 sts over 0 in). Check it.',
  ],
  [
    '1,250 sts over 1 m',
    'gauge: the comma in 1,250 may mark decimals or thousands (given: 1,250 sts over 1 m). Write 1.250 for decimals, 1250 for thousands.',
  ],
])('U5: %j is refused', (text, message) => {
  expect(read(text)).toBe(message);
});

test('U5: no text throws, and counts that are read are above zero', () => {
  const nearly = fc
    .array(
      fc.constantFrom('20', '½', ' ', 'sts', 'rows', '=', '/', '4 in', '10', 'cm', 'x', ',', 'in'),
    )
    .map((parts) => parts.join(' '));
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), nearly), (text) => {
      const result = parseCountOver(text, { field: 'gauge', bare: 'stitches' });
      if (!result.ok) {
        expect(result.faults).toHaveLength(1);
        return;
      }
      for (const counted of [result.value.stitches, result.value.rows]) {
        expect(counted === null || (counted.count > 0 && counted.over > 0)).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});
