import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testFaces } from '../testing/faces.ts';
import { wrap } from './wrap.ts';

const look = { sizeMm: 3.4, weight: 'regular' } as const;
const word = fc.string({ minLength: 1, maxLength: 14, unit: fc.constantFrom(...'abcWim13⅜–é') });

test('PA15: no line is wider than its room, and no letter is lost', () => {
  fc.assert(
    fc.property(
      fc.array(word, { maxLength: 20 }),
      fc.integer({ min: 8, max: 90 }),
      (words, width) => {
        const lines = wrap(words.join(' '), width, look, testFaces);
        for (const line of lines)
          expect(testFaces.widthOf(line, look.sizeMm, look.weight)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
      },
    ),
    { numRuns: 60 },
  );
});

test('PA15: lines break at spaces but not at those that hold together, and where they are told to', () => {
  const width = testFaces.widthOf('34.5 cm and 13⅜', look.sizeMm, look.weight);
  expect(wrap('34.5\u00a0cm and 13⅜\u00a0in', width, look, testFaces)).toEqual([
    '34.5\u00a0cm and',
    '13⅜\u00a0in',
  ]);
  expect(wrap('a\n\nb', 50, look, testFaces)).toEqual(['a', '', 'b']);
  expect(wrap('', 50, look, testFaces)).toEqual(['']);
});
