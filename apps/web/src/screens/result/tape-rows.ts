import type { Measured } from '@dryflat/record';
import type { TapeState } from './state-names.ts';

/** One place of the garment by tape, in one state after another. */
export interface TapeRow {
  /** The pattern's measurement. */
  readonly measurement: string;
  /** Which one of this measurement, from 0: a second reading of a state opens a second row. */
  readonly nth: number;
  readonly cells: Readonly<Partial<Record<TapeState, Measured>>>;
}

/** Tape measurements in rows, in the order in which they came. */
export const tapeRows = (tapes: readonly Measured[]): TapeRow[] => {
  const rows: TapeRow[] = [];
  for (const tape of tapes) {
    const { measurement, state } = tape;
    const same = rows.filter((row) => row.measurement === measurement);
    const open = same.find((row) => row.cells[state] === undefined);
    const filled = {
      ...(open ?? { measurement, nth: same.length, cells: {} }),
    };
    const next = { ...filled, cells: { ...filled.cells, [state]: tape } };
    if (open === undefined) rows.push(next);
    else rows[rows.indexOf(open)] = next;
  }
  return rows;
};

/** The rows, and an empty one for every measurement that is about to be taken. */
export const withPending = (rows: readonly TapeRow[], pending: readonly string[]): TapeRow[] => [
  ...rows,
  ...[...new Set(pending)]
    .filter((measurement) => !rows.some((row) => row.measurement === measurement))
    .map((measurement) => ({ measurement, nth: 0, cells: {} })),
];

/** Measurements whose empty rows hold text that could not be used yet, told by the paths of drafts. */
export const draftedRows = (drafts: readonly string[], path: string): string[] =>
  drafts.flatMap((draft) => {
    const prefix = `${path}/rows/`;
    const measurement = draft.startsWith(prefix) ? draft.slice(prefix.length).split('/')[0] : null;
    return measurement ? [measurement] : [];
  });
