import type { Cited } from '../../textile/index.ts';
import { type Millimetres, mm } from '../../units/index.ts';

/**
 * Classes of fit by ease at the chest: finished girth less body girth, signed. Two editions of the
 * craft council's guide differ, so the reader picks one. Null: open-ended.
 */
export type EaseClass = Cited & {
  readonly edition: 'older' | 'newer';
  readonly id: string;
  readonly name: string;
  readonly low: Millimetres | null;
  readonly high: Millimetres | null;
};

const ease = (
  edition: 'older' | 'newer',
  name: string,
  low: number | null,
  high: number | null,
): EaseClass => ({
  edition,
  id: `${edition}:${name.replaceAll(' ', '-')}`,
  name,
  low: low === null ? null : mm(low * 25.4),
  high: high === null ? null : mm(high * 25.4),
  source: 'cyc-body-sizes',
  standing: 'from-memory',
});

/** Tightest first within each edition; inches as printed, kept in millimetres. */
export const EASE_CLASSES: readonly EaseClass[] = [
  ease('older', 'very close', null, 0),
  ease('older', 'close', 1, 2),
  ease('older', 'standard', 2, 4),
  ease('older', 'loose', 4, 6),
  ease('older', 'oversized', 6, null),
  ease('newer', 'very close', -4, -2),
  ease('newer', 'close', 0, 0),
  ease('newer', 'classic', 2, 4),
  ease('newer', 'loose', 4, 6),
  ease('newer', 'oversized', 6, null),
];

/** Classes of an edition that hold an ease; two where it sits on a boundary, none in a gap. */
export const easeClassesOf = (
  edition: 'older' | 'newer',
  value: Millimetres,
): readonly EaseClass[] =>
  EASE_CLASSES.filter(
    (each) =>
      each.edition === edition &&
      value >= (each.low ?? Number.NEGATIVE_INFINITY) &&
      value <= (each.high ?? Number.POSITIVE_INFINITY),
  );
