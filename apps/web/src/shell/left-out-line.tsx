import { faultsBesidePhotos, isQuestion } from '@dryflat/record';
import { useMemo } from 'react';
import { useFaultText } from '../kit/index.ts';
import { PLACE_LABELS, placeOfField } from '../screens/result/mend-place.ts';
import { useGarment } from '../store/index.ts';
import { garmentHash } from './hash.ts';
import type { PlaceName } from './place-names.ts';

/** As many as are named one by one. */
const NAMED = 3;

/** Names what is left out of every answer until the knitter says what only she can; in its own place it is asked. */
export const LeftOutLine = ({ place }: { place: PlaceName }) => {
  const { record } = useGarment();
  const print = useFaultText();
  const open = useMemo(
    () =>
      faultsBesidePhotos(record)
        .filter(isQuestion)
        .map(({ problem, field }) => ({ problem, field, at: placeOfField(field) })),
    [record],
  );
  const elsewhere = open.filter(({ at }) => at !== place);
  const more = elsewhere.length - NAMED;
  return (
    elsewhere.length > 0 && (
      <ul className="df-left-out">
        {elsewhere.slice(0, NAMED).map(({ problem, field, at }) => (
          <li key={field}>
            <p>
              {print(problem)}.{' '}
              <a href={garmentHash(record.id, at)}>Say it under {PLACE_LABELS[at]}</a>
            </p>
          </li>
        ))}
        {more > 0 && <li>And {more} more.</li>}
      </ul>
    )
  );
};
