import { Card, useLandmarkName, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { type PinnedDried, pinnedAndDried } from './pinned-dried.ts';

/** What lay on the mat, what its plan foretold, and what the same place dried to. */
export const OnTheMat = () => {
  const { record } = useGarment();
  const rows = pinnedAndDried(record);
  if (rows.length === 0) return null;
  return (
    <Card title="Pinned, foretold, dried">
      <ul className="df-comparison">
        {rows.map((row) => (
          <li key={row.key}>
            <Row row={row} />
          </li>
        ))}
      </ul>
      <p className="df-soft">Across one layer of the piece as it lies.</p>
    </Card>
  );
};

const Row = ({ row }: { row: PinnedDried }) => {
  const { length, range } = useLengths();
  const name = useLandmarkName();
  const { piece, landmark, pinnedMm, byTape, foretold, driedMm, inside } = row;
  return (
    <div className="df-compared" data-inside={inside || undefined}>
      <h3>
        {name(landmark)}, {piece}
      </h3>
      <p>
        {driedMm === null ? (
          'Not measured dry yet'
        ) : (
          <>
            <strong className="df-compared-big">{length(driedMm)}</strong> dry
          </>
        )}
        {inside !== null && (
          <>
            {' '}
            <span className="df-verdict">{inside ? 'as foretold' : 'not as foretold'}</span>
          </>
        )}
      </p>
      <p className="df-soft">
        Pinned {length(pinnedMm)} {byTape ? 'by the tape' : 'by the plan'}
        {foretold && `; foretold dry ${range(foretold.lowMm, foretold.highMm)}`}.
      </p>
    </div>
  );
};
