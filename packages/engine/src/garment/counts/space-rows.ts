import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { wholeFaults } from './whole.ts';

export interface RowSpacingQuestion {
  readonly rows: number;
  readonly times: number;
  /** `right-side`: on every second row only, so that all fall on right-side rows. */
  readonly on: 'any' | 'right-side';
}

/** So many times, each `every` rows after the one before. */
export interface Regular {
  readonly every: number;
  readonly times: number;
}

export interface RowSpacing {
  /** One or two runs, that with the shorter interval first. */
  readonly runs: readonly Regular[];
  /** Rows left over after the last. */
  readonly rest: number;
}

const tooOften = (q: RowSpacingQuestion, step: number): Fault => ({
  code: 'spacing-too-many',
  field: 'times',
  given: String(q.times),
  problem: `${q.times} times do not go into ${q.rows} rows, one every ${step} at the most`,
  mend: `Shape ${Math.floor(q.rows / step)} times at most, or take more stitches each time.`,
});

/**
 * Shaping so many times over so many rows: every n rows some of the times, every n + 1 (n + 2 on
 * right-side rows) the others. Intervals differ by one step and use up the rows but for less than a step.
 */
export const spaceRows = (q: RowSpacingQuestion): Result<RowSpacing> => {
  const faults = wholeFaults([
    ['rows', q.rows, 'the number of rows', 1],
    ['times', q.times, 'the number of times', 1],
  ]);
  if (faults.length > 0) return fail(...faults);
  const step = q.on === 'right-side' ? 2 : 1;
  const units = Math.floor(q.rows / step);
  if (q.times > units) return fail(tooOften(q, step));
  const shorter = Math.floor(units / q.times);
  const longer = units - shorter * q.times;
  const runs = [
    { every: shorter * step, times: q.times - longer },
    { every: (shorter + 1) * step, times: longer },
  ];
  return ok({ runs: runs.filter((run) => run.times > 0), rest: q.rows - units * step });
};
