import type { Fault } from '../../units/index.ts';
import type { Source } from './source.ts';
import type { PrintedUnit, TextSpan } from './types.ts';
import type { Value } from './value-at.ts';
import type { ValueRun } from './value-runs.ts';

/** A value with the source that its positions count in. */
export interface PlacedValue extends Value {
  readonly source: Source;
}

export interface DraftRun {
  readonly unit: PrintedUnit | null;
  readonly values: readonly PlacedValue[];
}

/** A row before its numbers are read: values under the units that were found beside them. */
export interface DraftRow {
  readonly name: string;
  readonly from: TextSpan;
  /** Words beside the numbers that say flat or around. */
  readonly spanWords: string;
  /** Unit in the name, in a column of units or in the head of the table. */
  readonly hint: PrintedUnit | null;
  readonly runs: readonly DraftRun[];
  /** Commas that may mark decimals or separate values: the row cannot be read as it stands. */
  readonly commasUnclear: boolean;
  /** What was seen to be wrong with the line as a whole. */
  readonly faults: readonly Fault[];
}

export const placed = (runs: readonly ValueRun[], source: Source): DraftRun[] =>
  runs.map(({ unit, values }) => ({
    unit,
    values: values.map((value) => ({ ...value, source })),
  }));

const unitsOf = ({ runs, hint }: DraftRow): (PrintedUnit | null)[] =>
  runs.map(({ unit }) => unit ?? hint);

/** May `next` be the same measurement in another unit? Only where no unit comes twice. */
function complements(row: DraftRow, next: DraftRow): boolean {
  const [here, there] = [unitsOf(row), unitsOf(next)];
  if (here.includes(null) || there.includes(null)) return false;
  return there.length > 0 && there.every((unit) => !here.includes(unit));
}

const withUnits = (row: DraftRow): DraftRun[] =>
  row.runs.map((run) => ({ ...run, unit: run.unit ?? row.hint }));

/**
 * Joins rows that are one measurement in two units: `Chest (in)` and `Chest (cm)`, or a line without
 * a name below one.
 */
export function joinVersions(rows: readonly DraftRow[]): DraftRow[] {
  const joined: DraftRow[] = [];
  for (const row of rows) {
    const at =
      row.name === ''
        ? joined.length - 1
        : joined.findIndex(({ name }) => name.toLowerCase() === row.name.toLowerCase());
    const before = joined[at];
    if (before && complements(before, row))
      joined[at] = {
        ...before,
        runs: [...withUnits(before), ...withUnits(row)],
        spanWords: `${before.spanWords} ${row.spanWords}`,
        faults: [...before.faults, ...row.faults],
      };
    else joined.push(row);
  }
  return joined;
}
