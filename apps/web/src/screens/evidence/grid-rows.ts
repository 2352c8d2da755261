import type { CountReading, ExtentReading, Reading, Specimen } from '@dryflat/record';

export type GridReading = CountReading | ExtentReading;
export type GridState = GridReading['state'];

/** The same place read in one state after another, so that before and after stand side by side. */
export interface GridRow {
  /** The id of its first reading, which names the row for as long as it has one. */
  readonly id: string;
  readonly cells: Readonly<Partial<Record<GridState, GridReading>>>;
  readonly first: GridReading;
}

export const isGridReading = (reading: Reading): reading is GridReading =>
  reading.kind === 'count' || reading.kind === 'extent';

/** What readings of one row share. */
const sameRow = (a: GridReading, b: GridReading): boolean =>
  a.kind === b.kind &&
  a.direction === b.direction &&
  a.read === b.read &&
  (a.place ?? '') === (b.place ?? '') &&
  (a.kind === 'count'
    ? a.overMm === (b as CountReading).overMm
    : a.count === (b as ExtentReading).count);

/** Readings in rows, in the order in which they were entered; a second one of a state opens a row. */
export const gridRows = (readings: readonly Reading[]): GridRow[] => {
  const rows: GridRow[] = [];
  for (const reading of readings.filter(isGridReading)) {
    const at = rows.findIndex(
      (row) => sameRow(row.first, reading) && row.cells[reading.state] === undefined,
    );
    const row = rows[at] ?? { id: reading.id, cells: {}, first: reading };
    const filled = { ...row, cells: { ...row.cells, [reading.state]: reading } };
    if (at === -1) rows.push(filled);
    else rows[at] = filled;
  }
  return rows;
};

/** States that a specimen may be read in: one that was never washed only as knit. */
export const statesOf = ({ washed, readings }: Specimen): GridState[] => {
  const used = new Set(readings.filter(isGridReading).map(({ state }) => state));
  const shown = (state: GridState): boolean =>
    used.has(state) || state === 'asKnit' || (state === 'dried' && washed !== 'not');
  return (['asKnit', 'wet', 'dried', 'rewashed'] as const).filter(shown);
};

/** Half a stitch or row, the finest that most people count, in percent of what was counted. */
export const halfStitchPercent = (count: number): number => 50 / count;
