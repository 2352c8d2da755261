import type { Pace } from '@dryflat/record';
import { useGarment } from '../../store/index.ts';

/** An hour each evening: what is taken until the knitter says otherwise. Assumption. */
export const USUAL_PACE: Pace = { log: [], hours: [1, 1, 1, 1, 1, 1, 1], away: [] };

/** The pace of the record, or the usual one, and how to change it. */
export const usePace = () => {
  const { record, change } = useGarment();
  const edit = (recipe: (pace: Pace) => void): void =>
    change((draft) => {
      draft.pace ??= structuredClone(USUAL_PACE);
      recipe(draft.pace);
    });
  return { pace: record.pace ?? USUAL_PACE, assumed: record.pace === undefined, edit };
};
