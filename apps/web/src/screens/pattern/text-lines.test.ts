import { readSizeTable } from '@dryflat/engine/garment';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textLines } from './text-lines.ts';

const joined = (text: string): string[] =>
  textLines(text, readSizeTable(text)).map(({ parts }) => parts.map((part) => part.text).join(''));

test('P7: every letter of the text is shown once, in its line', () => {
  const word = fc.constantFrom('Chest:', '34', '(38, 42)', '"', 'cm', '/', '???', '\n', '\t', ' ');
  fc.assert(
    fc.property(fc.array(word, { maxLength: 25 }), (words) => {
      const text = words.join(' ');
      expect(joined(text)).toEqual(text.split(/[\r\n]+/).filter((line) => line !== ''));
    }),
  );
});

test('P7: what was not read is marked in the line where it stands, with its fault', () => {
  const text = 'Chest: 34 (38, 42) in\nWaist: 30 (tbc, 38) in\nLength: 20 (21, 22) in';
  const lines = textLines(text, readSizeTable(text));
  expect(lines.map(({ unread }) => unread.length > 0)).toEqual([false, true, false]);
  expect(lines[1]?.parts.some(({ as }) => as === 'unread')).toBe(true);
  expect(lines[0]?.parts.filter(({ as }) => as === 'value').map((part) => part.text)).toEqual([
    '34',
    '38',
    '42',
  ]);
});

test('P12: a line that holds no measurement is told from one that was not read', () => {
  const text =
    'Chest: 34 (38, 42) in\n  see page seven \nWaist: 30 (tbc, 38) in\nRnd 1: k2; repeat from * 3 times.\nChest 34 in; see page 2';
  expect(textLines(text, readSizeTable(text)).map(({ idle }) => idle)).toEqual([
    false,
    true,
    false,
    true,
    false,
  ]);
});
