import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSizeTable } from './read-size-table.ts';
import type { SizeTable } from './types.ts';
import { writeSizeTable } from './write-size-table.ts';

const PIECES = [
  ...'0123456789 ,.;:/-–()[]{}"\'½¼\t\n='.split(''),
  'Chest',
  'Sizes: ',
  'Size',
  'cm',
  'in',
  ' in ',
  'to',
  'n/a',
  'S',
  '38',
  '42, ',
  '3/8',
  'é',
  '😀',
];
const nearly = fc
  .array(fc.constantFrom(...PIECES), { maxLength: 40 })
  .map((parts) => parts.join(''));
const anyText = fc.oneof(nearly, nearly, fc.string({ unit: 'binary', maxLength: 60 }));
const options = fc.record({
  unit: fc.constantFrom<'cm' | 'in' | undefined>('cm', 'in', undefined),
  kind: fc.constantFrom<'hat' | undefined>('hat', undefined),
});

/** Every place of the text that a mark or an unread piece covers, with how often. */
function coverage(text: string, { marks, unread }: SizeTable): number[] {
  const times = Array.from({ length: text.length }, () => 0);
  for (const { from } of [...marks, ...unread]) {
    for (let i = from[0]; i < from[1]; i++) times[i]!++;
  }
  return times;
}

test('P7: no text throws, and each letter of it is understood or unread, never both, never lost', () => {
  fc.assert(
    fc.property(anyText, options, (text, options) => {
      const table = readSizeTable(text, options);
      coverage(text, table).forEach((times, i) => {
        expect(times).toBeLessThanOrEqual(1);
        if (/[\p{L}\p{N}\p{P}\p{S}]/u.test(text[i]!)) expect(times).toBe(1);
      });
      for (const { from, text: piece } of table.unread) expect(text.slice(...from)).toBe(piece);
    }),
    { numRuns: 3000 },
  );
});

test('P7: a number is in a cell that shows it or in the unread text', () => {
  fc.assert(
    fc.property(anyText, options, (text, options) => {
      const table = readSizeTable(text, options);
      const shown = table.rows.flatMap((row) =>
        [row.cells, ...row.printed.map(({ cells }) => cells)].flat().map(({ from }) => `${from}`),
      );
      const values = table.marks.filter(({ as }) => as === 'value');
      expect(values.filter(({ from }) => !shown.includes(`${from}`))).toEqual([]);
      for (const row of table.rows) {
        for (const { mm } of row.cells) expect(mm === null || (mm > 0 && mm <= 100_000)).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});

const label = fc.constantFrom('XS', 'S', 'M', 'L', 'XL', '34', '2-3', 'S/M', '1');
const name = fc.constantFrom(
  'Finished chest',
  'Half chest',
  'Sleeve length',
  'Upper arm, around',
  'To fit bust',
  'Yoke depth at back',
  'Ärmel "kurz"',
);
const inches = fc.integer({ min: 1, max: 800 }).map((eighths) => `${eighths / 8}`);
const centimetres = fc.integer({ min: 1, max: 1999 }).map((tenths) => `${tenths / 10}`);
const pasted = fc
  .record({
    sizes: fc.uniqueArray(label, { minLength: 1, maxLength: 9 }),
    names: fc.uniqueArray(name, { minLength: 1, maxLength: 7 }),
  })
  .chain(({ sizes, names }) =>
    fc
      .tuple(
        ...names.map((each) =>
          fc.constantFrom('in', 'cm').chain((unit) =>
            fc
              .array(fc.option(unit === 'in' ? inches : centimetres, { nil: '-' }), {
                minLength: sizes.length,
                maxLength: sizes.length,
              })
              .map((cells) => [`${each} (${unit})`, ...cells].join('\t')),
          ),
        ),
      )
      .map((rows) => [['Size', ...sizes].join('\t'), ...rows].join('\n')),
  );

const essence = ({ sizes, rows }: SizeTable) => ({
  sizes,
  rows: rows.map((row) => ({
    name: row.name,
    landmark: row.landmark,
    span: row.span,
    measures: row.measures,
    printed: row.printed.map(({ unit, cells }) => [unit, cells.map(({ mm }) => mm)]),
  })),
});

test('P8: a table that is written reads back the same', () => {
  fc.assert(
    fc.property(pasted, (text) => {
      const table = readSizeTable(text);
      expect(table.unread).toEqual([]);
      const again = readSizeTable(writeSizeTable(table));
      expect(essence(again)).toEqual(essence(table));
    }),
    { numRuns: 300 },
  );
});

test('P8: ranges, both units and sizes without a number survive being written', () => {
  const table = readSizeTable(
    'Sizes: S (M, L)\nTo fit bust: 30-32 (34-36, 38-40) in\nChest: 34½ (–, 42)" / 87.5 (–, 106.5) cm',
  );
  const written = writeSizeTable(table);
  expect(written).toBe(
    'Size\tS\tM\tL\nTo fit bust (in)\t30 - 32\t34 - 36\t38 - 40\nChest (in)\t34 1/2\t-\t42\nChest (cm)\t87.5\t-\t106.5\n',
  );
  const again = readSizeTable(written);
  expect(essence(again)).toEqual(essence(table));
  expect(again.rows[0]?.cells.map(({ range }) => range)).toEqual(
    table.rows[0]?.cells.map(({ range }) => range),
  );
});
