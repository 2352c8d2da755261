import { LANDMARKS, LANDMARKS_OF } from '@dryflat/engine/garment';
import type { SelectGroup } from '../../kit/index.ts';
import { useLandmarkName } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';

/** Stands for a place that the knitter makes up. */
export const OWN_PLACE = 'custom';

/** Places to choose from: those of this kind of garment, all others, one's own. */
export const usePlaceOptions = (
  without: readonly string[] = [],
): readonly SelectGroup<string>[] => {
  const { kind } = useGarment().record;
  const nameOf = useLandmarkName();
  const here: readonly string[] = LANDMARKS_OF[kind];
  const others = LANDMARKS.map(({ id }) => id).filter((id) => !here.includes(id));
  const group = (label: string, ids: readonly string[]): SelectGroup<string> => ({
    label,
    options: ids
      .filter((id) => !without.includes(id))
      .map((id) => ({ value: id, label: nameOf(id) })),
  });
  return [
    group('Of this garment', here),
    { label: 'Your own', options: [{ value: OWN_PLACE, label: 'A place of your own' }] },
    group('Of other garments', others),
  ].filter(({ options }) => options.length > 0);
};
