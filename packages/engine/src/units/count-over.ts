import { type Millimetres, mm } from './brands.ts';

/** Stitches or rows counted over a length. */
export interface CountOver {
  readonly count: number;
  /** Smallest step that the writing tells apart: 1 for `20`, 0.5 for `18½`. */
  readonly resolution: number;
  readonly over: Millimetres;
}

/** Lengths that counts are customarily given over. 4 in is 101.6 mm: 1.6 % more than 10 cm, never the same. */
export const COUNT_SPANS = {
  '10cm': mm(100),
  '4in': mm(101.6),
  '1in': mm(25.4),
} as const;
export type CountSpan = keyof typeof COUNT_SPANS;

const SPAN_NAMES: Readonly<Record<CountSpan, string>> = {
  '10cm': '10 cm',
  '4in': '4 in',
  '1in': '1 in',
};

/** The same fabric counted over another length. Lengths in millimetres, above zero. */
export const countAcross = (count: number, over: number, wanted: number): number =>
  (count * wanted) / over;

/** How many stitches or rows of this pitch (millimetres each, above zero) lie in a customary span. */
export const countOfPitch = (pitch: number, span: CountSpan): number => COUNT_SPANS[span] / pitch;

/** Width of one stitch or height of one row, in millimetres. */
export const pitchOf = ({ count, over }: Pick<CountOver, 'count' | 'over'>): Millimetres =>
  mm(over / count);

/** `20.5 sts over 4 in`, to a tenth of a stitch: finer than anyone counts. */
export function formatCountOver(
  counted: Pick<CountOver, 'count' | 'over'>,
  what: 'stitches' | 'rows',
  span: CountSpan,
): string {
  const count = countAcross(counted.count, counted.over, COUNT_SPANS[span]);
  return `${Math.round(count * 10) / 10} ${what === 'rows' ? 'rows' : 'sts'} over ${SPAN_NAMES[span]}`;
}
