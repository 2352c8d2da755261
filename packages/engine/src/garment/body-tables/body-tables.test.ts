import { expect, test } from 'vitest';
import { REFERENCES } from '../../textile/index.ts';
import { LANDMARKS } from '../landmarks.ts';
import { BODY_TABLES, bodyFromTable } from './find-body.ts';

const inch = 25.4;

/** One row of a table, low ends, in inches. */
const lows = (table: string, body: string): readonly number[] => {
  const found = BODY_TABLES.find((each) => each.id === table)!;
  const row = found.rows.find((each) => each.body === body)!;
  return row.values.map((value) => Math.round((value!.low / inch) * 100) / 100);
};

test('B1: every row has a value for every size, a source and a standing', () => {
  for (const table of BODY_TABLES) {
    expect(new Set(table.sizes).size).toBe(table.sizes.length);
    for (const row of table.rows) {
      expect(row.values).toHaveLength(table.sizes.length);
      expect(REFERENCES).toHaveProperty([row.source!]);
      expect(['read', 'read-second-hand', 'from-memory']).toContain(row.standing);
    }
  }
});

test('B1: a table that holds remembered rows says so in its note', () => {
  for (const table of BODY_TABLES) {
    const remembered = table.rows.some((row) => row.standing === 'from-memory');
    expect(/memory/.test(table.note)).toBe(remembered);
  }
});

test('B1: bodies grow with the size, and ranges rise', () => {
  for (const table of BODY_TABLES)
    for (const row of table.rows)
      for (const [i, value] of row.values.entries()) {
        expect(value!.high).toBeGreaterThanOrEqual(value!.low);
        const before = row.values[i - 1];
        if (before) expect(value!.low).toBeGreaterThanOrEqual(before.low);
      }
});

test('B1: girths of the tables are girths of the landmarks that use them', () => {
  const uses = LANDMARKS.filter((each) => each.body !== null);
  for (const table of BODY_TABLES)
    for (const row of table.rows)
      for (const landmark of uses.filter((each) => each.body === row.body))
        expect(landmark.girth).toBe(row.girth);
});

// Craft Yarn Council child and youth measurements, as quoted in "Measurements for designers: children".
test.each([
  ['back-length', [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16]],
  ['cross-back', [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13]],
  ['arm-length', [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5]],
  ['upper-arm', [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5]],
  ['armhole-depth', [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5]],
])('B2: children, %s as published', (body, values) => {
  expect(lows('children', body)).toEqual(values);
});

test('B2: bust of women as published: 28 to 30 in, then 32 to 34, in steps of 4', () => {
  // Quoted to-fit-bust lines of the council: XS 28-30 up to 5X 60-62.
  expect(lows('women', 'chest')).toEqual([28, 32, 36, 40, 44, 48, 52, 56, 60]);
});

test('B3: a size is given as ranges in millimetres with the middle to start from', () => {
  const result = bodyFromTable('women', 'M');
  expect(result.ok).toBe(true);
  if (!result.ok) return;
  const chest = result.value.find((each) => each.body === 'chest')!;
  expect(chest).toMatchObject({ girth: true, standing: 'read-second-hand' });
  expect(chest.low).toBeCloseTo(36 * inch, 9);
  expect(chest.middle).toBeCloseTo(37 * inch, 9);
  expect(chest.high).toBeCloseTo(38 * inch, 9);
});

test('B3: an unknown table or size is a fault that lists the known ones', () => {
  const table = bodyFromTable('giants', 'M');
  expect(!table.ok && table.faults[0]?.mend).toBe(
    'Choose one of: women, men, children, babies, heads.',
  );
  const size = bodyFromTable('men', '1X');
  expect(!size.ok && size.faults[0]).toMatchObject({
    code: 'body-size-unknown',
    mend: 'Choose one of: S, M, L, XL, XXL.',
  });
});
