import { rangesOf } from './after-mat.ts';
import type { Drawn } from './draws.ts';
import { measured, restOf } from './measure.ts';
import type { PinnedPiece } from './pinned-piece.ts';
import type { MeasurementPlanned } from './types.ts';

/** What each dimension measures on the mat and after it; `drawn[draw][dimension]` in other fabrics of the doubt. */
export const measurementsOf = (
  { state, rulers }: Pick<PinnedPiece, 'state' | 'rulers'>,
  drawn: readonly (readonly Drawn[])[],
): MeasurementPlanned[] =>
  rulers.map((ruler, k) => {
    const { sheet, eq } = state;
    const reached = measured(ruler, sheet.ring, eq.points);
    const ranges = rangesOf(
      ruler,
      reached,
      drawn.map((each) => each[k]!),
      sheet.piece.after,
    );
    const { name, landmark, direction, targetMm } = ruler.dimension;
    return {
      name,
      landmark,
      direction,
      restMm: restOf(ruler),
      targetMm,
      toleranceMm: ruler.tolerance,
      ...ranges,
      within: Math.abs(reached - targetMm) <= ruler.tolerance,
    };
  });
