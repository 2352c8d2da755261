import type { Cited, ReferenceKey, Standing } from './references.ts';

/** A published number or range with its origin. Fractions and densities; `low` equals `high` for one number. */
export type Figure = { readonly low: number; readonly high: number } & Cited;

/** A figure printed in percent, kept as a fraction: `percent('x', 'read', 7, 8)` is 0.07 to 0.08. */
export const percent = (
  source: ReferenceKey,
  standing: Standing,
  low: number,
  high: number = low,
): Figure => ({ low: low / 100, high: high / 100, source, standing });

/** A figure kept in the unit that it is printed in. */
export const figure = (
  source: ReferenceKey,
  standing: Standing,
  low: number,
  high: number = low,
): Figure => ({ low, high, source, standing });

/** A range that rests on no work: from memory of the trade. */
export const remembered = (low: number, high: number = low): Figure => ({
  low,
  high,
  source: null,
  standing: 'from-memory',
});

export const middle = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  (low + high) / 2;
