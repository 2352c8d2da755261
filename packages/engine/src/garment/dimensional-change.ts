import type { Direction } from '../fabric/index.ts';
import type { Cited } from '../textile/index.ts';
import { fail, type Millimetres, mm, ok, type Result } from '../units/index.ts';

/**
 * Dimensional change in washing and drying: (after − before) / before · 100, in percent, length and
 * width reported apart. Negative is shrinkage, positive is growth.
 */
export const CHANGE_RULE: Cited = { source: 'iso-5077', standing: 'read-second-hand' };

const unusable = (field: string, given: number): Result<never> =>
  fail({
    code: 'change-needs-length',
    field,
    given: `${given} mm`,
    problem: 'a change needs a length above zero before and after',
    mend: 'Measure between the same two marks before and after the wash.',
  });

/** Percent change from one length to the other; a fault for a length that is not above zero. */
export const dimensionalChange = (before: Millimetres, after: Millimetres): Result<number> => {
  if (!(before > 0 && Number.isFinite(before))) return unusable('before', before);
  if (!(after > 0 && Number.isFinite(after))) return unusable('after', after);
  return ok(((after - before) / before) * 100);
};

/** The length after a change in percent, which must be above −100. */
export const applyChange = (before: Millimetres, changePercent: number): Millimetres => {
  if (!(changePercent > -100)) throw new RangeError(`change of ${changePercent} %`);
  return mm(before * (1 + changePercent / 100));
};

/** The same two marks before and after, in one direction. */
export interface MarkedPair {
  readonly direction: Direction;
  readonly before: Millimetres;
  readonly after: Millimetres;
}

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, each) => sum + each, 0) / values.length;

/** Mean change of each direction over all pairs, null where a direction has none. */
export const meanChanges = (
  pairs: readonly MarkedPair[],
): Result<Readonly<Record<Direction, number | null>>> => {
  const changes = pairs.map(({ direction, before, after }) => ({
    direction,
    change: dimensionalChange(before, after),
  }));
  const faults = changes.flatMap(({ change }, i) =>
    change.ok ? [] : change.faults.map((each) => ({ ...each, field: `pairs[${i}].${each.field}` })),
  );
  if (faults.length > 0) return fail(...faults);
  const of = (direction: Direction) =>
    mean(
      changes.flatMap((each) =>
        each.direction === direction && each.change.ok ? [each.change.value] : [],
      ),
    );
  return ok({ width: of('width'), length: of('length') });
};
