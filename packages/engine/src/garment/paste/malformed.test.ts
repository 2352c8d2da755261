import { expect, test } from 'vitest';
import { explain } from '../../units/index.ts';
import { readSizeTable } from './read-size-table.ts';

/** All faults of a table as lines; those of unread text with the text they stand at. */
function complaints(text: string): string[] {
  const table = readSizeTable(text);
  const unread = table.unread.map((piece) => {
    expect(text.slice(...piece.from)).toBe(piece.text);
    return `at ${JSON.stringify(piece.text)} ${explain(piece.fault)}`;
  });
  const faults = [...table.faults, ...table.rows.flatMap((row) => row.faults)];
  return [...faults.map(explain), ...unread];
}

const LEAVE = 'Leave it out, or type what it stands for into its cell.';
const ADD = 'Leave it out, or add a number for each size.';
const STRAY = 'this number has no unit and belongs to none of the sizes';
const ONE = 'Keep one number in it, or one for each unit.';
const MISSING = 'Find the missing ones, or put a dash where a size has none.';
const TOO_MANY = 'Take out what does not belong, or add the missing size.';
const UNCLEAR = 'the commas may mark decimals or separate sizes';
const SPACE = 'Put a space after each comma that separates, or use semicolons.';

test.each<[string, string[]]>([
  [
    'Worked in the round',
    [
      `at "Worked in the round" size table: this line holds no measurements (given: Worked in the round). ${ADD}`,
    ],
  ],
  [
    'Chest: as usual',
    [
      `at "Chest: as usual" size table: this line holds no measurements (given: Chest: as usual). ${ADD}`,
    ],
  ],
  ['Chest: 34 (38, 42)', ['Chest: the numbers have no unit. Choose cm or in for them.']],
  [
    'Chest: 34 (38, , 42) in',
    [
      'Chest: a place between two commas is empty. Type its number, or put a dash where the size has none.',
    ],
  ],
  [
    'Chest: 34 (38, 42 in',
    ['Chest: the brackets do not pair up. Check that the line was copied whole.'],
  ],
  [
    'Sizes: S (M, L)\nChest: 34 (38, 42, 46) in',
    [`Chest: 4 values in inches for 3 sizes. ${TOO_MANY}`],
  ],
  ['Sizes: S (M, L)\nChest: 34 (38) in', [`Chest: 2 values in inches for 3 sizes. ${MISSING}`]],
  ['Chest: 34 (38, 42) in / 86 (96) cm', [`Chest: 2 values in cm for 3 sizes. ${MISSING}`]],
  [
    'Sizes: S (M, L)\nRib depth: 5 cm',
    [
      'Rib depth: 1 value in cm for 3 sizes. Say whether it holds for every size, and type it into each.',
    ],
  ],
  [
    'Sizes: S (M, S)\nChest: 86 (96, 106) cm',
    ['sizes[2]: this size is named twice (given: S). Give each size a name of its own.'],
  ],
  [
    'Sizes: S (M)\nSizes: L (XL)\nChest: 86 (96) cm',
    [
      'at "Sizes: L (XL)" sizes: the sizes are named a second time (given: Sizes: L (XL)). Keep one line of sizes.',
    ],
  ],
  [
    'Sizes:\nChest: 86 (96) cm',
    // A heading and nothing more: the sizes may follow on the next line.
    [`at "Sizes:" size table: this line holds no measurements (given: Sizes:). ${ADD}`],
  ],
  [
    'Chest: 34 (tbc, 42) in',
    ['at "tbc" Chest: this is not a length (given: tbc). Write it like 34.5 cm or 13 3/8 in.'],
  ],
  [
    'Chest: 34 (38, 42) in*',
    [`at "*" size table: this piece was not understood (given: *). ${LEAVE}`],
  ],
  [
    'Chest: 34 (38, 42) in approx',
    [`at "approx" size table: this piece was not understood (given: approx). ${LEAVE}`],
  ],
  [
    'Chest: 34.5.1 (38, 42) in',
    [
      'at "34.5.1" Chest: 34.5.1 has more than one decimal mark (given: 34.5.1). Leave thousands unmarked, with one decimal mark at most, such as 345.1.',
    ],
  ],
  [
    'Chest: 1.250,5 (38, 42) cm',
    [
      'at "1.250,5" Chest: 1.250,5 has more than one decimal mark (given: 1.250,5). Leave thousands unmarked, with one decimal mark at most, such as 1250.5.',
    ],
  ],
  [
    'Chest: 1,250 (38, 42) cm',
    [
      'at "1,250" Chest: the comma in 1,250 may mark decimals or thousands (given: 1,250). Write 1.250 for decimals, 1250 for thousands.',
    ],
  ],
  [
    'Chest: 34,25 (38,40) cm',
    [
      `Chest: ${UNCLEAR}. ${SPACE}`,
      `at "34,25" Chest: ${UNCLEAR} (given: 34,25). ${SPACE}`,
      `at "38,40" Chest: ${UNCLEAR} (given: 38,40). ${SPACE}`,
    ],
  ],
  [
    'Chest: 999999 (38, 42) cm',
    [
      'at "999999" Chest: the length is not between 0.001 mm and 100 m (given: 999999). Check the number and its unit.',
    ],
  ],
  [
    'Chest: 0 (38, 42) cm',
    ['at "0" Chest: a length of zero was given (given: 0). Leave it empty if there is none.'],
  ],
  [
    'Chest: −5 (38, 42) in',
    ['at "−5" Chest: a length cannot be below zero (given: -5). Leave the minus sign out.'],
  ],
  [
    'Chest: 13 3/0 (14, 15) in',
    ['at "13 3/0" Chest: a fraction cannot have 0 below it (given: 13 3/0). Write it like 3/8.'],
  ],
  [
    'Chest: 34 (38, 42) in / 7',
    [`at "7" Chest: ${STRAY} (given: 7). Leave it out, or add its unit.`],
  ],
  [
    '86 (96, 106) cm',
    [
      'size table: the numbers have no name. Say what they measure, such as chest or sleeve length.',
    ],
  ],
  [
    'Size\tS\t\tL\nChest (cm)\t86\t96\t106',
    ['sizes[1]: this column has no size at its head. Type its size.'],
  ],
  [
    'Size\tS\tM\nChest (cm)\t86\ttbc',
    [`at "tbc" Chest: this cell does not hold one number (given: tbc). ${ONE}`],
  ],
  [
    'Size\tS\tM\nChest (cm)\t86\t96 98',
    [`at "96 98" Chest: this cell does not hold one number (given: 96 98). ${ONE}`],
  ],
  ['Size\tS\tM\nChest (cm)\t86\t96\t106', [`Chest: 3 values in cm for 2 sizes. ${TOO_MANY}`]],
  [
    'Chest: 34 (38, 42)", with 2" of ease',
    [
      `at "with 2\\" of ease" size table: this piece was not understood (given: with 2" of ease). ${LEAVE}`,
    ],
  ],
  [
    'S\tM\n86 cm\t96 cm',
    [
      'size table: the numbers have no name. Say what they measure, such as chest or sleeve length.',
    ],
  ],
  ['Size\tS\tM\nChest\t86\t96', ['Chest: the numbers have no unit. Choose cm or in for them.']],
])('P5: %j is shown with its faults', (text, expected) => {
  expect(complaints(text)).toEqual(expected);
});

test('P5: a place that cannot be read is kept, so the sizes after it do not move', () => {
  const cells = (text: string) => readSizeTable(text).rows[0]?.cells.map(({ mm }) => mm);
  expect(cells('Chest: 34 (tbc, 42) in')).toEqual([863.6, null, 1066.8]);
  expect(cells('Chest: 34 (38, , 42) in')).toEqual([863.6, 965.2, null, 1066.8]);
  expect(cells('Chest: 34 (4Z, 42) in')).toEqual([863.6, null, 1066.8]);
});

test('an empty text is an empty table', () => {
  const empty = {
    sizes: [],
    sizesFrom: 'counted',
    faults: [],
    rows: [],
    gauges: [],
    unread: [],
    misprints: [],
  };
  expect(readSizeTable('')).toEqual({ ...empty, marks: [] });
  expect(readSizeTable(' \n\t\u00a0')).toEqual({ ...empty, marks: [] });
});
