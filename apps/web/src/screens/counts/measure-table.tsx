import type { Measure } from '@dryflat/engine/counts';
import { formatOffBy } from '@dryflat/engine/units';
import { useLandmarkName, useLengths } from '../../kit/index.ts';

/** Every width and length: its count, what that comes to, and what rounding does. */
export const MeasureTable = ({
  title,
  measures,
  asKnitRowMm,
}: {
  title: string;
  measures: readonly Measure[];
  /** Height of a row as knit, to say what a tape shows while knitting; null where that is the gauge used. */
  asKnitRowMm: number | null;
}) => {
  const { length, bare, units } = useLengths();
  const name = useLandmarkName();
  if (measures.length === 0) return null;
  return (
    <table className="co-table">
      <caption className="df-unseen">{title}</caption>
      <thead>
        <tr>
          <th scope="col">Measurement</th>
          <th scope="col">Count</th>
          <th scope="col">Comes to, {units}</th>
          <th scope="col">Off by, {units}</th>
        </tr>
      </thead>
      <tbody>
        {measures.map(({ landmark, direction, wantedMm, count, mm }) => (
          <tr key={landmark}>
            <th scope="row">
              {name(landmark)}
              <span className="co-note">wanted {length(wantedMm)}</span>
            </th>
            <td>
              {count}
              <span className="co-note">{direction === 'width' ? 'stitches' : 'rows'}</span>
            </td>
            <td>
              {bare(mm)}
              {direction === 'length' && asKnitRowMm !== null && (
                <span className="co-note">as knit {bare(count * asKnitRowMm)}</span>
              )}
            </td>
            <td>{formatOffBy(mm, wantedMm, { unit: units, bare: true })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
