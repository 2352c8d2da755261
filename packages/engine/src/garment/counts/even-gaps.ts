import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { wholeFaults } from './whole.ts';

/** Rounds to the nearest whole; a half goes away from the middle of a row, so that both ends are alike. */
const rounded = (twice: number, by: number, before: boolean): number => {
  const whole = Math.floor(twice / (2 * by));
  const rest = twice - whole * 2 * by;
  if (rest === by) return before ? whole : whole + 1;
  return rest < by ? whole : whole + 1;
};

/**
 * `total` things in `groups` groups, as even as whole numbers allow: sizes differ by one at most, every
 * boundary is within a half of where it would ideally lie, and the list reads the same from both ends
 * where any list so even does. `groups` ≥ 1, `total` ≥ 0, both whole.
 */
export const evenGaps = (total: number, groups: number): number[] => {
  const edge = (i: number) => rounded(2 * i * total, groups, 2 * i < groups);
  return Array.from({ length: groups }, (_, i) => edge(i + 1) - edge(i));
};

export interface SpacingQuestion {
  /** Stitches in the row, or rows in the length, before anything is added or taken away. */
  readonly total: number;
  /** Increases, decreases, stitches picked up, buttonholes. */
  readonly places: number;
  /** Units that each place uses up: 2 for two stitches worked together, 0 for one made between two. */
  readonly uses: number;
  /** `flat`: with what is left over at both ends. `round`: the last gap meets the first. */
  readonly layout: 'flat' | 'round';
}

export interface Spacing {
  /** Plain units before each place; for `flat` also after the last, so one more than places. */
  readonly gaps: readonly number[];
  /** Sizes of gap that occur, rising: one, or two that differ by one. */
  readonly sizes: readonly number[];
  /** How far the worst place is from its ideal one, in units; half of one at most. */
  readonly worst: number;
}

const tooMany = (q: SpacingQuestion): Fault => ({
  code: 'spacing-too-many',
  field: 'places',
  given: String(q.places),
  problem: `${q.places} places that take ${q.uses} each do not go into ${q.total}`,
  mend: `Spread ${Math.max(1, Math.floor(q.total / Math.max(1, q.uses)))} at most, or use a longer stretch.`,
});

const worstOf = (gaps: readonly number[], plain: number): number => {
  let at = 0;
  let worst = 0;
  gaps.forEach((gap, i) => {
    at += gap;
    worst = Math.max(worst, Math.abs(at - ((i + 1) * plain) / gaps.length));
  });
  return worst;
};

/** Places spread evenly. Fails where they are not whole, or do not go in. */
export const spaceEvenly = (q: SpacingQuestion): Result<Spacing> => {
  const faults = wholeFaults([
    ['total', q.total, 'what they are spread over', 1],
    ['places', q.places, 'the number of places', 1],
    ['uses', q.uses, 'what each place uses', 0],
  ]);
  if (faults.length > 0) return fail(...faults);
  const plain = q.total - q.places * q.uses;
  if (plain < 0 || q.places > q.total) return fail(tooMany(q));
  const gaps = evenGaps(plain, q.layout === 'flat' ? q.places + 1 : q.places);
  return ok({
    gaps,
    sizes: [...new Set(gaps)].sort((a, b) => a - b),
    worst: worstOf(gaps, plain),
  });
};
