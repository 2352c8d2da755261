import { expect, test } from 'vitest';
import { readSizeTable } from './read-size-table.ts';
import { WHOLE_PATTERN_NAMES, wholePattern } from './testing/whole-pattern.ts';

test('P12: of a whole pattern its measurements are rows, its gauge the gauge, all else holds no measurement', () => {
  const text = wholePattern(24_000);
  const table = readSizeTable(text, { unit: 'in', kind: 'pullover-yoke' });
  expect(table.rows.map(({ name }) => name)).toEqual(WHOLE_PATTERN_NAMES);
  expect(table.rows.flatMap(({ faults }) => faults)).toEqual([]);
  expect(table.rows.map(({ cells }) => cells.length)).toEqual(WHOLE_PATTERN_NAMES.map(() => 5));
  expect(table.sizes).toEqual(['1', '2', '3', '4', '5']);
  expect(table.gauges).toMatchObject([
    { stitches: { count: 18, over: 101.6 }, rows: { count: 24, over: 101.6 }, state: 'dried' },
  ]);
  expect(table.misprints).toEqual([]);
  expect([...new Set(table.unread.map(({ fault }) => fault.code))]).toEqual(['table-no-values']);
});

/** Lines that are neither prose nor a table, of so many letters; each shape repeats one thing. */
const SHAPES: Readonly<Record<string, (length: number) => string>> = {
  'a bracket that never closes': (n) => `a, b\n(${'1, '.repeat(n / 3)}\n(1,1`,
  'words without a break': (n) => 'knit purl '.repeat(n / 10),
  'numbers without a break': (n) => '12 34 '.repeat(n / 6),
  blanks: (n) => `Chest${' '.repeat(n)}1 in`,
  'blanks in a name': (n) => `Chest${' '.repeat(n)}wide 1 in`,
  'commas in a name': (n) => `Chest${','.repeat(n)}wide 1 in`,
  'a quote that never closes': (n) => `"${'a,'.repeat(n / 2)}\n"b,c`,
  'one short line after another': (n) => 'a 1\n'.repeat(n / 4),
  'counts without a break': (n) => '12 sts '.repeat(n / 7),
  'gauges without a break': (n) => '12 sts = 4 in, '.repeat(n / 15),
  'gauges without a separator': (n) => '12 sts = 4 in in rib '.repeat(n / 21),
  'commas behind a gauge': (n) => `12 sts = 4 in${', rib'.repeat(n / 5)} 12 sts = 4 in`,
  'a heading without a break': (n) => 'measurements in '.repeat(n / 16),
};

test.each(Object.entries(SHAPES))('P12: %s takes no longer than its length', (_, shape) => {
  readSizeTable(shape(1_500));
  const msFor = (length: number): number => {
    const text = shape(length);
    const began = performance.now();
    readSizeTable(text);
    return performance.now() - began;
  };
  // Eight times the text: 8 times as long where it is linear, 64 and more where it is not. The bound is
  // far above the one and, with times of a few ms, wide enough for a machine that does other things.
  expect(msFor(24_000)).toBeLessThan(24 * msFor(3_000) + 400);
});
