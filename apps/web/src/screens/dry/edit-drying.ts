import type { Drying } from '@dryflat/record';
import { useCallback } from 'react';
import { useGarment } from '../../store/index.ts';

export type EditDrying = (recipe: (drying: Drying) => void) => void;

/** Changes one drying of the open garment. */
export const useEditDrying = (id: string): EditDrying => {
  const { change } = useGarment();
  return useCallback(
    (recipe) =>
      change((draft) => {
        const found = draft.dryings?.find((each) => each.id === id);
        if (found) recipe(found);
      }),
    [change, id],
  );
};

export interface DryingProps {
  readonly drying: Drying;
  readonly edit: EditDrying;
}
