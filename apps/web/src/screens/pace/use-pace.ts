import type { Pace } from '@dryflat/record';
import { USUAL_PACE } from '@dryflat/record/routes';
import { useGarment } from '../../store/index.ts';

/** The pace of the record, or the usual one, and how to change it. */
export const usePace = () => {
  const { record, change } = useGarment();
  const edit = (recipe: (pace: Pace) => void): void =>
    change((draft) => {
      draft.pace ??= structuredClone(USUAL_PACE);
      recipe(draft.pace);
    });
  return { pace: record.pace ?? USUAL_PACE, edit };
};
