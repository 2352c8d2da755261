import { expect, test } from 'vitest';
import { readSizeTable } from './read-size-table.ts';
import type { SizeRow, SizeTable, SizeTableOptions } from './types.ts';

const numbers = (cells: SizeRow['cells']) =>
  cells.map(({ mm, range, text }) => {
    if (range) return range.join('..');
    return mm === null ? `none ${text}`.trim() : mm;
  });

const brief = (table: SizeTable) => ({
  sizes: table.sizes.join(' '),
  rows: table.rows.map((row) => [
    row.name,
    row.landmark,
    row.span ?? 'ask',
    Object.fromEntries(row.printed.map(({ unit, cells }) => [unit, numbers(cells)])),
  ]),
});

const inch = (...values: readonly number[]) => values.map((value) => (value * 254) / 10);
const cm = (...values: readonly number[]) => values.map((value) => value * 10);

type Shape = [text: string, sizes: string, rows: unknown[], options?: SizeTableOptions];

const CHEST = inch(34, 38, 42);
const CHEST_CM = cm(86, 96, 106);

const SHAPES: Shape[] = [
  [
    'Finished chest: 34 (38, 42) (46, 50, 54)" / 86 (96, 106) (117, 127, 137) cm',
    '1 2 3 4 5 6',
    [
      [
        'Finished chest',
        'chest',
        'ask',
        { in: inch(34, 38, 42, 46, 50, 54), cm: cm(86, 96, 106, 117, 127, 137) },
      ],
    ],
  ],
  ['Finished bust 34[38:42] in', '1 2 3', [['Finished bust', 'chest', 'ask', { in: CHEST }]]],
  ['Chest: 34/38/42 inches', '1 2 3', [['Chest', 'chest', 'ask', { in: CHEST }]]],
  ['Chest: 86–96–106 cm', '1 2 3', [['Chest', 'chest', 'ask', { cm: CHEST_CM }]]],
  ['Chest: 34 38 42 in', '1 2 3', [['Chest', 'chest', 'ask', { in: CHEST }]]],
  ['Chest - 34 (38, 42) inches', '1 2 3', [['Chest', 'chest', 'ask', { in: CHEST }]]],
  ['Chest (cm): 86 (96, 106)', '1 2 3', [['Chest', 'chest', 'ask', { cm: CHEST_CM }]]],
  ['Chest, in inches: 34 (38, 42)', '1 2 3', [['Chest', 'chest', 'ask', { in: CHEST }]]],
  ['Chest: 86(96,106) cm', '1 2 3', [['Chest', 'chest', 'ask', { cm: CHEST_CM }]]],
  [
    'Chest: 86,5 (96,5; 106,5) cm',
    '1 2 3',
    [['Chest', 'chest', 'ask', { cm: cm(86.5, 96.5, 106.5) }]],
  ],
  [
    'Chest: 34” (86 cm), 38” (96 cm), 42” (106 cm)',
    '1 2 3',
    [['Chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'Chest: 34/86 (38/96, 42/106) in/cm',
    '1 2 3',
    [['Chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'Chest: 34 (38, 42) / 86 (96, 106)',
    '1 2 3',
    [['Chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'Finished chest: 34 (38, 42) in\n                86 (96, 106) cm',
    '1 2 3',
    [['Finished chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'To fit bust 30-32 (34-36, 38-40) in',
    '1 2 3',
    [['To fit bust', 'chest', 'ask', { in: ['762..812.8', '863.6..914.4', '965.2..1016'] }]],
  ],
  [
    'Waist: 30 (–, 38, n/a) in',
    '1 2 3 4',
    [['Waist', 'waist', 'ask', { in: [762, 'none –', 965.2, 'none n/a'] }]],
  ],
  [
    'Sizes: XS (S, M) (L)\nHalf chest: 17 (19, 21) (23)"\nUpper arm circumference: 12 (13, 13½) (14¼) in\nSleeve: 17 (17, 17 1/2) (18)"',
    'XS S M L',
    [
      ['Half chest', 'chest', 'flat', { in: inch(17, 19, 21, 23) }],
      ['Upper arm circumference', 'upper-arm', 'around', { in: inch(12, 13, 13.5, 14.25) }],
      ['Sleeve', 'sleeve-length', 'ask', { in: inch(17, 17, 17.5, 18) }],
    ],
  ],
  [
    'Sizes: 2-3 (4-5, 6-7) years\nAll measurements are in cm\nChest: 56 (61, 66)\nLength: 35 (39, 43)',
    '2-3 4-5 6-7',
    [
      ['Chest', 'chest', 'ask', { cm: cm(56, 61, 66) }],
      ['Length', 'body-length', 'ask', { cm: cm(35, 39, 43) }],
    ],
    { kind: 'pullover-yoke' },
  ],
  [
    'Size\tS\tM\tL\nChest (cm)\t86\t96\t106\nYoke depth (cm)\t20\t20,5\t21\n',
    'S M L',
    [
      ['Chest', 'chest', 'ask', { cm: CHEST_CM }],
      ['Yoke depth', 'yoke-depth', 'ask', { cm: cm(20, 20.5, 21) }],
    ],
  ],
  [
    'Size;S;M;L\nChest;86,5;96;106\nBack neck depth;2;;2,5\n',
    'S M L',
    [
      ['Chest', 'chest', 'ask', { cm: cm(86.5, 96, 106) }],
      ['Back neck depth', 'back-neck-depth', 'ask', { cm: [20, 'none', 25] }],
    ],
    { unit: 'cm' },
  ],
  [
    'Size,Chest (in),Body length (in)\nS,34,20\nM,38,21 1/2\nL,42,"22 1/2"\n',
    'S M L',
    [
      ['Chest', 'chest', 'ask', { in: CHEST }],
      ['Body length', 'body-length', 'ask', { in: inch(20, 21.5, 22.5) }],
    ],
  ],
  [
    '"Size","S","M","L"\r\n"Chest","34""","38""","42"""\r\n',
    'S M L',
    [['Chest', 'chest', 'ask', { in: CHEST }]],
  ],
  [
    '\tUnit\tS\tM\tL\nChest\tin\t34\t38\t42\nChest\tcm\t86\t96\t106\nLower edge\tcm\t84\t94\t104\n',
    'S M L',
    [
      ['Chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }],
      ['Lower edge', 'hem', 'ask', { cm: cm(84, 94, 104) }],
    ],
  ],
  [
    'Size\tS\tM\tL\nHem, around\t34" / 86 cm\t38" / 96 cm\t42" / 106 cm',
    'S M L',
    [['Hem, around', 'hem', 'around', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'Size\tS\tM\tL\nChest\t34 (86)\t38 (96)\t42 (106)',
    'S M L',
    [['Chest', 'chest', 'ask', { in: CHEST, cm: CHEST_CM }]],
  ],
  [
    'Chest: 86 (96: 106) cm [34 (38: 42) in]',
    '1 2 3',
    [['Chest', 'chest', 'ask', { cm: CHEST_CM, in: CHEST }]],
  ],
  [
    'Finished measurements: Chest 34 (38, 42) in; Sleeve length 17 (17½, 18) in',
    '1 2 3',
    [
      ['Finished measurements: Chest', 'chest', 'ask', { in: CHEST }],
      ['Sleeve length', 'sleeve-length', 'ask', { in: inch(17, 17.5, 18) }],
    ],
  ],
  ['S (M, L)\nChest 34 (38, 42) in', 'S M L', [['Chest', 'chest', 'ask', { in: CHEST }]]],
  ['Size  S  M  L\nchest in  34  38  42', 'S M L', [['chest', 'chest', 'ask', { in: CHEST }]]],
  ['Size: One size\nChest: 86 cm', 'One size', [['Chest', 'chest', 'ask', { cm: cm(86) }]]],
  ['Chest | 86 | 96 | 106 cm', '1 2 3', [['Chest', 'chest', 'ask', { cm: CHEST_CM }]]],
];

test.each(SHAPES)('P1: %j', (text, sizes, rows, options) => {
  const table = readSizeTable(text, options);
  expect(brief(table)).toEqual({ sizes, rows });
  expect(table.unread).toEqual([]);
  expect(table.misprints).toEqual([]);
  expect([...table.faults, ...table.rows.flatMap((row) => row.faults)]).toEqual([]);
});

test('P2: every cell says where in the pasted text it stands', () => {
  const text = 'Brim: 18½ (20, —)” / 47 (51, —) cm';
  const [row] = readSizeTable(text).rows;
  const cells = row?.printed.flatMap((version) => version.cells) ?? [];
  expect(cells.map(({ from }) => text.slice(...from))).toEqual(['18½', '20', '—', '47', '51', '—']);
  expect(cells.map(({ text }) => text)).toEqual(['18½', '20', '—', '47', '51', '—']);
});

test('P3: the unit asked for is preferred where it is printed, and given to bare numbers', () => {
  const text = 'Chest: 34 (38) in / 86 (96) cm\nWaist: 80 (90)';
  const inCm = readSizeTable(text, { unit: 'cm' }).rows.map((row) => numbers(row.cells));
  expect(inCm).toEqual([
    [860, 960],
    [800, 900],
  ]);
  expect(numbers(readSizeTable(text, { unit: 'in' }).rows[0]!.cells)).toEqual(inch(34, 38));
  expect(numbers(readSizeTable(text).rows[0]!.cells)).toEqual(inch(34, 38));
});

test.each([
  ['Chest 96 cm around', 'around', [960]],
  ['Chest circumference 96 cm around', 'around', [960]],
  ['Chest: 86 (96, 106) cm all the way around', 'around', [860, 960, 1060]],
  ['Chest: 86 cm (around) / 34 in (around)', 'around', [860]],
  ['Chest: 34 (38, 42)" around / 86 (96, 106) cm', 'around', CHEST],
  ['Chest 48 cm flat/across', 'flat', [480]],
  ['Chest: 48 (53, 58) cm, laid flat', 'flat', [480, 530, 580]],
  ['Chest 48 cm pit to pit', 'flat', [480]],
  ['Chest circumference: 48 cm, measured flat', undefined, [480]],
  ['Chest 48 cm', undefined, [480]],
])('P10: %j is said to be measured %j by the words beside its numbers', (text, span, lengths) => {
  const { rows, unread } = readSizeTable(text);
  expect(unread).toEqual([]);
  expect(rows.map((row) => [row.landmark, row.span, numbers(row.cells)])).toEqual([
    ['chest', span, lengths],
  ]);
});

test('P4: a body measurement is not taken for one of the garment', () => {
  const { rows } = readSizeTable('To fit chest: 32 (36) in\nFinished chest: 36 (40) in');
  expect(rows.map((row) => row.measures)).toEqual(['body', 'garment']);
});

test('P1: a finished size in words is no list of sizes', () => {
  const { sizesFrom, rows } = readSizeTable('Finished size: 60 in wide and 30 in deep');
  expect(sizesFrom).toBe('counted');
  expect(rows.map(({ cells }) => numbers(cells))).toEqual([[1524]]);
});

test('P1: sizes may stand on the line below their heading', () => {
  const { sizes, sizesFrom, rows } = readSizeTable('Sizes\n1 (2, 3)\nChest: 86 (96, 106) cm');
  expect([sizesFrom, ...sizes]).toEqual(['text', '1', '2', '3']);
  expect(rows.map(({ name }) => name)).toEqual(['Chest']);
});
