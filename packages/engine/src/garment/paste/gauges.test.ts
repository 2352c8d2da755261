import { expect, test } from 'vitest';
import { readSizeTable } from './read-size-table.ts';
import { GAUGE_LINES, NO_GAUGES } from './testing/gauge-lines.ts';

const isUnderstood = (text: string): boolean => {
  const { rows, unread } = readSizeTable(text, { unit: 'in' });
  return rows.length === 0 && unread.length === 0;
};

test.each(GAUGE_LINES)('P11: %j is a gauge', (text, stitches, rows, overMm, state) => {
  const [gauge, ...others] = readSizeTable(text, { unit: 'in' }).gauges;
  const read = (of: 'stitches' | 'rows') => {
    const counted = gauge?.[of];
    return counted ? [counted.count, counted.over] : null;
  };
  expect(others).toEqual([]);
  expect(gauge?.state).toBe(state);
  expect(read('stitches')).toEqual(stitches === null ? null : [stitches, overMm]);
  expect(read('rows')).toEqual(rows === null ? null : [rows, overMm]);
  expect(isUnderstood(text)).toBe(true);
});

test.each(NO_GAUGES)('P11: %j is neither a gauge nor a measurement', (text) => {
  const { gauges, rows, unread } = readSizeTable(text, { unit: 'in' });
  expect(gauges).toEqual([]);
  expect(rows).toEqual([]);
  expect(unread.map((piece) => piece.text).join('')).toBe(text);
});

test('P11: a length printed in both units is taken in the one asked for, and never as both', () => {
  const over = (unit?: 'cm' | 'in') =>
    readSizeTable('20 sts/28 rows = 4" / 10 cm', unit ? { unit } : {}).gauges[0]?.stitches?.over;
  expect(over('in')).toBe(101.6);
  expect(over('cm')).toBe(100);
  expect(over()).toBe(101.6);
  expect(readSizeTable('20 sts = 4 in / 20 cm').gauges).toEqual([]);
});

test('P11: a gauge that cannot be read says so where it stands, and how to type it', () => {
  expect(readSizeTable('Gauge: 20-22 sts = 4 in').unread[0]?.fault).toMatchObject({
    code: 'table-gauge-unread',
    given: 'Gauge: 20-22 sts = 4 in',
    mend: 'Type it under the pattern’s gauge, such as 20 sts and 28 rows = 4 in.',
  });
});

test('P11: what follows a gauge in its line is read on its own', () => {
  const table = readSizeTable('Gauge: 18 sts = 4 in, blocked. Chest 34 (38, 42) in', {
    unit: 'in',
  });
  expect(table.gauges.map(({ state }) => state)).toEqual(['dried']);
  expect(table.rows.map(({ name, cells }) => [name, cells.length])).toEqual([['Chest', 3]]);
});

test('P11: a gauge above a spreadsheet is taken, and the cells are read as ever', () => {
  const table = readSizeTable('Gauge 18 sts and 24 rows = 4 in\nSize\tS\tM\nChest (in)\t34\t38');
  expect(table.gauges).toMatchObject([{ stitches: { count: 18 }, rows: { count: 24 } }]);
  expect(table.sizes).toEqual(['S', 'M']);
  expect(table.rows.map(({ name }) => name)).toEqual(['Chest']);
  expect(table.unread).toEqual([]);
});

test('P11: gauges in several stitches are all told, in the order of the text', () => {
  const text = 'Stockinette: 18 sts and 24 rows = 4 in\nCables: 22 sts and 26 rows = 4 in';
  expect(readSizeTable(text).gauges.map(({ stitches }) => stitches?.count)).toEqual([18, 22]);
});

test.each([
  ['Gauge 18 sts and 24 rows = 4 in, chest 96 cm around', [[18, 24, null]], ['chest around 960']],
  ['Chest 96 cm around, gauge 18 sts and 24 rows = 4 in', [[18, 24, null]], ['Chest around 960']],
  ['18 sts = 4 in. Chest, around, 96 cm', [[18, null, null]], ['Chest, around around 960']],
  [
    '20 sts = 10 cm in stockinette, 22 sts = 10 cm in rib',
    [
      [20, null, null],
      [22, null, null],
    ],
    [],
  ],
  [
    'Gauge: 18 sts = 4 in, 22 sts = 4 in',
    [
      [18, null, null],
      [22, null, null],
    ],
    [],
  ],
  [
    '20 sts = 4 in unblocked, and in rib 22 x 30 to 4 in, blocked',
    [
      [20, null, 'asKnit'],
      [22, 30, 'dried'],
    ],
    [],
  ],
  ['Gauge: 20 sts = 4 in in stockinette, 28 rows = 4 in', [[20, 28, null]], []],
  [
    'Gauge: 18 sts = 4 in (rib: 22 sts = 4 in), blocked, hem 90 cm around',
    [
      [18, null, null],
      [22, null, 'dried'],
    ],
    ['hem around 900'],
  ],
] as const)('P13: of %j every gauge and every measurement is kept', (text, gauges, measured) => {
  const table = readSizeTable(text, { unit: 'in' });
  const counts = table.gauges.map((g) => [
    g.stitches?.count ?? null,
    g.rows?.count ?? null,
    g.state,
  ]);
  expect(counts).toEqual(gauges);
  const rows = table.rows.map(({ name, span, cells: [cell] }) => `${name} ${span} ${cell?.mm}`);
  expect(rows).toEqual(measured);
  expect(table.unread).toEqual([]);
});

test('P13: a second gauge of a line that cannot be read is refused by itself', () => {
  const { gauges, unread } = readSizeTable(
    'Gauge: 20 sts = 4 in in rib, 22-23 sts = 4 in in cables',
  );
  expect(gauges.map(({ stitches }) => stitches?.count)).toEqual([20]);
  expect(unread.map(({ text, fault }) => [text, fault.code])).toEqual([
    ['22-23 sts = 4 in in cables', 'table-gauge-unread'],
  ]);
});
