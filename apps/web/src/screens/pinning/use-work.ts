import type { MatWork } from '@dryflat/record';
import { useCallback, useState } from 'react';
import { useGarment } from '../../store/index.ts';

export interface WorkAtHand {
  readonly work: MatWork;
  /** Changes the work in the record; in a record that is only shown, only what is in sight. */
  readonly act: (recipe: (work: MatWork, now: string) => void) => void;
  readonly readOnly: boolean;
}

const nowIso = (): string => new Date().toISOString();

/** The work on one piece, and the way to go on with it. */
export const useWork = (kept: MatWork): WorkAtHand => {
  const { change, readOnly } = useGarment();
  const [at, setAt] = useState(kept.at);
  const work = readOnly ? { ...kept, at } : kept;
  const { id } = kept;
  const act = useCallback(
    (recipe: (work: MatWork, now: string) => void): void => {
      if (readOnly) {
        const shown = structuredClone({ ...kept, at });
        recipe(shown, nowIso());
        setAt(shown.at);
        return;
      }
      change((draft) => {
        const mine = draft.onMat?.find((each) => each.id === id);
        if (mine) recipe(mine, nowIso());
      });
    },
    [readOnly, kept, at, change, id],
  );
  return { work, act, readOnly };
};
