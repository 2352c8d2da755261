import { expect, test } from 'vitest';
import { findDelimiter } from './delimiter.ts';

test.each([
  ['Size\tS\tM\nChest\t86\t96', '\t'],
  ['Chest\t86\t96', '\t'],
  ['Chest:\t34 (38, 42) in\nWaist:\t30 (34, 38) in', null],
  ['Size;S;M\nChest;86,5;96,5', ';'],
  ['Size,S,M\nChest,86,96', ','],
  ['"Size","S","M"\n"Chest","86,5","96,5"', ','],
  ['Chest: 34, 38, 42 in\nWaist: 30, 34, 38 in', null],
  ['Chest 34, 38, 42 in\nWaist 30, 34, 38 in', null],
  ['Chest: 34 (38, 42) in\nWaist: 30 (34, 38) in', null],
  ['Chest: 86,5 (96,5; 106,5) cm\nWaist: 80 (90; 100) cm', null],
  ['', null],
])('P1: the cells of %j are parted by %j', (text, delimiter) => {
  expect(findDelimiter(text)).toBe(delimiter);
});
