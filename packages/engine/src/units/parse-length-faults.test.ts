import { expect, test } from 'vitest';
import { explain } from './fault.ts';
import { parseLength } from './parse-length.ts';

const LIKE = 'Write it like 34.5 cm or 13 3/8 in.';
const KEEP = 'these are two numbers where one length is wanted';
const RANGE = 'the length is not between 0.001 mm and 100 m';

test.each([
  ['', 'length-empty', `back: the length is missing. ${LIKE}`],
  [' \u00a0 ', 'length-empty', `back: the length is missing. ${LIKE}`],
  ['abc', 'length-unreadable', `back: this is not a length (given: abc). ${LIKE}`],
  ['NaN', 'length-unreadable', `back: this is not a length (given: NaN). ${LIKE}`],
  ['Infinity', 'length-unreadable', `back: this is not a length (given: Infinity). ${LIKE}`],
  ['—', 'length-unreadable', `back: this is not a length (given: —). ${LIKE}`],
  ['cm', 'length-unreadable', `back: this is not a length (given: cm). ${LIKE}`],
  ['٣ cm', 'length-unreadable', `back: this is not a length (given: ٣ cm). ${LIKE}`],
  ['34', 'length-unit-missing', 'back: the number has no unit (given: 34). Add cm, mm or in.'],
  [
    '3 hands',
    'length-unit-unknown',
    'back: “hands” is not a unit of length known here (given: 3 hands). Use cm, mm or in.',
  ],
  [
    '1e9 m',
    'length-unit-unknown',
    'back: “e” is not a unit of length known here (given: 1e9 m). Use cm, mm or in.',
  ],
  [
    '1,250',
    'length-comma-ambiguous',
    'back: the comma in 1,250 may mark decimals or thousands (given: 1,250). Write 1.250 for decimals, 1250 for thousands.',
  ],
  [
    '1.250,5 cm',
    'length-several-marks',
    'back: 1.250,5 has more than one decimal mark (given: 1.250,5 cm). Leave thousands unmarked, with one decimal mark at most, such as 1250.5.',
  ],
  [
    '1,250.5 cm',
    'length-several-marks',
    'back: 1,250.5 has more than one decimal mark (given: 1,250.5 cm). Leave thousands unmarked, with one decimal mark at most, such as 1250.5.',
  ],
  [
    '13..5 cm',
    'length-several-marks',
    'back: 13..5 has more than one decimal mark (given: 13..5 cm). Leave thousands unmarked, with one decimal mark at most, such as 13.5.',
  ],
  [
    '12, cm',
    'length-unfinished',
    'back: 12, stops at its decimal mark (given: 12, cm). Add the digits after it.',
  ],
  [
    '13 3/ in',
    'length-unfinished',
    'back: the fraction 3/ has nothing below it (given: 13 3/ in). Finish it, like 3/8.',
  ],
  [
    '13 3/0 in',
    'length-fraction-by-zero',
    'back: a fraction cannot have 0 below it (given: 13 3/0 in). Write it like 3/8.',
  ],
  [
    '1/2/3',
    'length-fraction-chained',
    'back: a fraction has one slash, this has more (given: 1/2/3). Write the whole, a space and one fraction, such as 13 3/8.',
  ],
  [
    '133/8 in',
    'length-fraction-improper',
    'back: the fraction 133/8 is not below one, so a space may be missing (given: 133/8 in). Write the whole and the fraction apart, such as 13 3/8 or 16 5/8.',
  ],
  [
    '8/8 in',
    'length-fraction-improper',
    'back: the fraction 8/8 is not below one, so a space may be missing (given: 8/8 in). Write the whole and the fraction apart, such as 1.',
  ],
  [
    '34/86',
    'length-fraction-odd',
    'back: 34/86 is not a fraction that a tape or a scale shows (given: 34/86). Keep one number, with a fraction like 3/8 or decimals.',
  ],
  [
    '13.5 3/8 in',
    'length-fraction-after-decimal',
    'back: 13.5 has decimals and a fraction after them (given: 13.5 3/8 in). Use one of the two, like 13.375 or 13 3/8.',
  ],
  [
    '1,5/2 in',
    'length-fraction-not-whole',
    'back: the fraction 1,5/2 is not made of two whole numbers (given: 1,5/2 in). Write it like 3/8, or as a decimal like 13.375.',
  ],
  ['13-14 in', 'length-two-values', `back: ${KEEP} (given: 13-14 in). Keep the one that counts.`],
  ['13 to 14', 'length-two-values', `back: ${KEEP} (given: 13 to 14). Keep the one that counts.`],
  [
    '34" / 86 cm',
    'length-two-values',
    `back: ${KEEP} (given: 34" / 86 cm). Keep the one that counts.`,
  ],
  [
    '34 cm 13 in',
    'length-two-values',
    `back: ${KEEP} (given: 34 cm 13 in). Keep the one that counts.`,
  ],
  ['2 in 1 ft', 'length-two-values', `back: ${KEEP} (given: 2 in 1 ft). Keep the one that counts.`],
  ['1 2 3', 'length-two-values', `back: ${KEEP} (given: 1 2 3). Keep the one that counts.`],
  [
    '-2 in',
    'length-negative',
    'back: a length cannot be below zero (given: -2 in). Leave the minus sign out.',
  ],
  [
    '0 cm',
    'length-zero',
    'back: a length of zero was given (given: 0 cm). Leave it empty if there is none.',
  ],
  [
    '99999999 m',
    'length-out-of-range',
    `back: ${RANGE} (given: 99999999 m). Check the number and its unit.`,
  ],
  [
    '100.01 m',
    'length-out-of-range',
    `back: ${RANGE} (given: 100.01 m). Check the number and its unit.`,
  ],
  [
    '0.0001 mm',
    'length-out-of-range',
    `back: ${RANGE} (given: 0.0001 mm). Check the number and its unit.`,
  ],
])('U5: %j is refused as %s', (given, code, message) => {
  const result = parseLength(given, { field: 'back' });
  if (result.ok) throw new Error(`read as ${result.value.value} mm`);
  expect(result.faults.map((fault) => [fault.code, explain(fault)])).toEqual([[code, message]]);
});

test('U5: a very long text is shown cut', () => {
  const result = parseLength('9'.repeat(500), { field: 'back' });
  if (result.ok) throw new Error('read');
  expect(result.faults[0]?.given).toBe(`${'9'.repeat(60)}…`);
});
