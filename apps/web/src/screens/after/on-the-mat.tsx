import { Card, useLandmarkName, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { pinnedAndDried } from './pinned-dried.ts';

/** What the tape said on the mat, and what the same place dried to. */
export const OnTheMat = () => {
  const { record } = useGarment();
  const { length } = useLengths();
  const name = useLandmarkName();
  const rows = pinnedAndDried(record);
  if (rows.length === 0) return null;
  return (
    <Card title="Pinned, then dried">
      <ul className="df-comparison">
        {rows.map(({ key, piece, landmark, pinnedMm, driedMm }) => (
          <li key={key} className="df-compared">
            <h3>
              {name(landmark)}, {piece}
            </h3>
            <p>
              <strong className="df-compared-big">{length(pinnedMm)}</strong> pinned
              {driedMm === null ? (
                '; not measured dry yet, or flat or around is not said'
              ) : (
                <>
                  , <strong className="df-compared-big">{length(driedMm)}</strong> dried
                </>
              )}
            </p>
          </li>
        ))}
      </ul>
      <p className="df-soft">Across one layer as it lies.</p>
    </Card>
  );
};
