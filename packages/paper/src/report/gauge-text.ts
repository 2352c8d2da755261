import type { Units } from '../input/telling.ts';

/** What gauge is counted over: 10 cm, or 4 in. */
const OVER: Readonly<Record<Units, number>> = { cm: 100, in: 101.6 };

/** Stitches or rows over a ruler's length from the width of one, to a quarter, as they are counted. */
export const countOf = (pitchMm: number, units: Units): string => {
  const quarters = Math.round((4 * OVER[units]) / pitchMm);
  const part = ['', '¼', '½', '¾'][quarters % 4]!;
  return `${Math.floor(quarters / 4)}${part}`;
};
