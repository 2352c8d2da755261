import type { Cited } from '../../textile/index.ts';
import type { Millimetres } from '../../units/index.ts';
import { type BodyRange, centimetres } from './body-table.ts';

/** Letter codes of EN 13402-3 by chest (men) or bust (women) girth; each band runs up to the next. */
export type LetterBand = Cited & {
  readonly letter: string;
  readonly women: BodyRange;
  readonly men: BodyRange;
};

const band = (
  letter: string,
  women: readonly [number, number],
  men: readonly [number, number],
): LetterBand => ({
  letter,
  women: centimetres(women)[0]!,
  men: centimetres(men)[0]!,
  source: 'en-13402-3',
  standing: 'read-second-hand',
});

export const LETTER_BANDS: readonly LetterBand[] = [
  band('XXS', [66, 74], [70, 78]),
  band('XS', [74, 82], [78, 86]),
  band('S', [82, 90], [86, 94]),
  band('M', [90, 98], [94, 102]),
  band('L', [98, 107], [102, 110]),
  band('XL', [107, 119], [110, 118]),
  band('XXL', [119, 131], [118, 129]),
  band('3XL', [131, 143], [129, 141]),
];

/** The letter whose band holds a girth, its lower end included; null outside all bands. */
export const letterForGirth = (who: 'women' | 'men', girth: Millimetres): string | null =>
  LETTER_BANDS.find((each) => girth >= each[who].low && girth < each[who].high)?.letter ?? null;
