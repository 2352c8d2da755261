/**
 * What a result stands on. Every input of a forecast is listed with its kind, so that a knitter
 * sees which numbers are hers, which are published and which are only the custom of the trade.
 */
export type BasisKind =
  | 'measured'
  | 'from-pattern'
  | 'published'
  | 'common-practice'
  | 'from-memory'
  | 'assumption';

export interface Basis {
  /** Stable id: `growth-length-prior`, `evidence:swatch-1:r2`. */
  readonly id: string;
  readonly kind: BasisKind;
  /** One line: what the input says, with its number and unit spelled in millimetres or percent. */
  readonly text: string;
  /** Key into references.ts for `published`; null otherwise. */
  readonly source: string | null;
}
