import type { Yarn } from '@dryflat/record';
import { useGarment } from '../../store/index.ts';

/** Changes one yarn by its id; does nothing where it is gone. */
export const useChangeYarn = (id: string): ((recipe: (yarn: Yarn) => void) => void) => {
  const { change } = useGarment();
  return (recipe) =>
    change((draft) => {
      const yarn = draft.yarns.find((each) => each.id === id);
      if (yarn) recipe(yarn);
    });
};
