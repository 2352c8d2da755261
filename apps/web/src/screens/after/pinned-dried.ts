import { type GarmentRecord, girthMm, mayGoAround } from '@dryflat/record';

/** A width or a length as it lay pinned, and what the same place measured dry. */
export interface PinnedDried {
  readonly key: string;
  readonly piece: string;
  readonly landmark: string;
  /** Across the piece as it lay, mm. */
  readonly pinnedMm: number;
  /** The same of the dried garment, laid flat, mm; null where it was not measured. */
  readonly driedMm: number | null;
}

/** Latest tape of the dried garment at a landmark, laid flat: half of what goes around. */
const driedAt = ({ pattern, outcomes, pieces }: GarmentRecord, landmark: string): number | null => {
  const rows = pattern.measurements.filter((row) => row.landmark === landmark);
  const tapes = [...pieces, ...outcomes].flatMap(({ measured }) => measured);
  const tape = tapes.findLast(
    ({ state, measurement }) => state === 'dried' && rows.some(({ id }) => id === measurement),
  );
  const row = rows.find(({ id }) => id === tape?.measurement);
  if (tape === undefined || row === undefined) return null;
  if (!mayGoAround(row)) return tape.mm;
  return tape.span === undefined ? null : girthMm(tape.mm, tape.span) / 2;
};

/** What was told by tape on the mat, the newest of each place, beside what it dried to. */
export const pinnedAndDried = (record: GarmentRecord): PinnedDried[] =>
  (record.onMat ?? []).flatMap(({ id, piece, told }) => {
    const newest = new Map(
      told.flatMap(({ measured }) => measured).map(({ landmark, mm }) => [landmark, mm]),
    );
    return [...newest].map(([landmark, pinnedMm]) => ({
      key: `${id} ${landmark}`,
      piece,
      landmark,
      pinnedMm,
      driedMm: driedAt(record, landmark),
    }));
  });
