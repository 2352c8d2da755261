import { type GarmentRecord, girthMm, type MatWork, mayGoAround } from '@dryflat/record';

/** A width or a length of a piece: as it was to lie and lay pinned, what was foretold, what came. */
export interface PinnedDried {
  readonly key: string;
  readonly piece: string;
  readonly landmark: string;
  /** Across the piece as it lay, mm: by the tape where it was told, else by the plan. */
  readonly pinnedMm: number;
  readonly byTape: boolean;
  /** What the plan of the mat foretold for dry, 9 times in 10. */
  readonly foretold: { readonly lowMm: number; readonly highMm: number } | null;
  /** The same of the dried garment, mm; null where it was not measured. */
  readonly driedMm: number | null;
  /** Null where there is nothing to compare. */
  readonly inside: boolean | null;
}

/** Pinned and dry differ by less than this; a width and a girth by a factor of 2. */
const ALIKE = 1.3;

/** A girth as the piece has it: all of it, or half where the piece is one face of the garment. */
const asPiece = (aroundMm: number, pinnedMm: number): number | null =>
  [aroundMm, aroundMm / 2].find((mm) => Math.max(mm / pinnedMm, pinnedMm / mm) < ALIKE) ?? null;

/** Latest tape of the dried garment at a landmark, across the piece. */
const driedAt = (
  { pattern, outcomes, pieces }: GarmentRecord,
  landmark: string,
  pinnedMm: number,
): number | null => {
  const rows = pattern.measurements.filter((row) => row.landmark === landmark);
  const tape = [...pieces, ...outcomes]
    .flatMap(({ measured }) => measured)
    .findLast(
      ({ state, measurement }) => state === 'dried' && rows.some(({ id }) => id === measurement),
    );
  const row = rows.find(({ id }) => id === tape?.measurement);
  if (tape === undefined || row === undefined) return null;
  if (!mayGoAround(row)) return tape.mm;
  return tape.span === undefined ? null : asPiece(girthMm(tape.mm, tape.span), pinnedMm);
};

const tapesOf = ({ told }: MatWork): Map<string, number> =>
  new Map(told.flatMap(({ measured }) => measured).map(({ landmark, mm }) => [landmark, mm]));

/** What was pinned, foretold and dried, piece by piece, each place once. */
export const pinnedAndDried = (record: GarmentRecord): PinnedDried[] =>
  (record.onMat ?? []).flatMap((work) => {
    const tapes = tapesOf(work);
    const plans = new Map((work.lies?.reaches ?? []).map((each) => [each.landmark, each]));
    return [...new Set([...plans.keys(), ...tapes.keys()])].map((landmark) => {
      const plan = plans.get(landmark);
      const tape = tapes.get(landmark);
      const pinnedMm = tape ?? plan!.pinnedMm;
      const driedMm = driedAt(record, landmark, pinnedMm);
      return {
        key: `${work.id} ${landmark}`,
        piece: work.copy === '' ? work.piece : `${work.piece}, ${work.copy}`,
        landmark,
        pinnedMm,
        byTape: tape !== undefined,
        foretold: plan ? { lowMm: plan.dryLowMm, highMm: plan.dryHighMm } : null,
        driedMm,
        inside:
          plan && driedMm !== null ? driedMm >= plan.dryLowMm && driedMm <= plan.dryHighMm : null,
      };
    });
  });
