import { expect, test } from 'vitest';
import { commaMeaning } from './comma.ts';
import { sourceOf } from './source.ts';
import { valuePieces } from './value-pieces.ts';

test.each<[string, number | null, 'decimal' | 'separator' | 'unclear']>([
  ['86,5 (96,5; 106,5)', null, 'decimal'],
  ['86,5 (96,5, 106,5)', null, 'decimal'],
  ['86 (96,106) (117,127,137)', null, 'separator'],
  ['34.5 (38.5,42.5)', null, 'separator'],
  ['86,5 (96,5)', null, 'decimal'],
  ['86 (96,106)', null, 'separator'],
  ['34,25 (38,25)', null, 'decimal'],
  ['34,25 (38,40)', null, 'unclear'],
  ['34,25 (38,40)', 2, 'decimal'],
  ['86 (96,106)', 3, 'separator'],
  ['34,25 (38,40) in / 86 (96,97) cm', 2, 'decimal'],
  ['34,25 (38,40) in / 86,8 (97,2) cm', 2, 'decimal'],
  ['38,5,42 (46; 50)', null, 'unclear'],
  ['34 (38, 42)', null, 'decimal'],
])('P5: the tight commas of %j, for %s sizes, are %s', (text, sizes, meaning) => {
  expect(commaMeaning(valuePieces(sourceOf(text)), sizes)).toBe(meaning);
});
