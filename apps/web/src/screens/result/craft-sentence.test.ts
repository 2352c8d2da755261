import { expect, it } from 'vitest';
import { inWordsOf } from './craft-sentence.ts';

const british = (word: string): string =>
  ({ gauge: 'tension', swatch: 'tension square', stockinette: 'stocking stitch' })[word] ?? word;

it('exchanges whole words and leaves the rest', () => {
  expect(inWordsOf('Size 3 fits best at this gauge; swatch before…', british)).toBe(
    'Size 3 fits best at this tension; tension square before…',
  );
  expect(inWordsOf('gauges swatched in {mm:12.3}', british)).toBe('gauges swatched in {mm:12.3}');
});
