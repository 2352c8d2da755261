import { expect, test } from 'vitest';
import { printGauge, readGauge } from './gauge-text.ts';

test.each([
  ['20 sts and 28 rows = 4 in', { stitches: 20, rows: 28, overMm: 101.6 }],
  ['22,5 sts and 30 rows over 10 cm', { stitches: 22.5, rows: 30, overMm: 100 }],
  ['18 sts and 24 rows = 4 in', { stitches: 18, rows: 24, overMm: 101.6 }],
  ['5.5 sts and 7 rows = 1 in', { stitches: 5.5, rows: 7, overMm: 25.4 }],
  ['20 sts = 4 in', { stitches: 20, overMm: 101.6 }],
])('P3: the gauge %j is read, and what is printed reads back the same', (text, gauge) => {
  const read = readGauge(text, 'gauge');
  expect(read).toEqual({ ok: true, value: gauge });
  expect(readGauge(printGauge(gauge), 'gauge')).toEqual(read);
});

test('P3: rows over their own length are brought to that of the stitches', () => {
  expect(readGauge('20 sts = 10 cm, 14 rows = 5 cm', 'gauge')).toEqual({
    ok: true,
    value: { stitches: 20, rows: 28, overMm: 100 },
  });
});

test('P3: rows alone say what is missing', () => {
  expect(readGauge('28 rows = 4 in', 'gauge')).toMatchObject({
    ok: false,
    faults: [{ code: 'gauge-half', given: '28 rows = 4 in' }],
  });
});
