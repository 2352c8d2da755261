import { findLandmark } from '@dryflat/engine/garment';
import type { PatternMeasurement } from '@dryflat/record';
import { formatCount, useLandmarkName } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { mayGoAround } from './change-pattern.ts';

const SPANS = { flat: 'flat', around: 'around' } as const;

/** `Chest, buttoned` tells its place already. */
const saysTheSame = (place: string, name: string): boolean =>
  name.toLowerCase().includes(place.toLowerCase()) ||
  place.toLowerCase().includes(name.toLowerCase());

/** Place, flat or around, how it is reached, and the count of the size being knit, in a few words. */
export const RowFacts = ({ row }: { row: PatternMeasurement }) => {
  const { sizes, chosen } = useGarment().record.pattern;
  const place = useLandmarkName()(row.landmark);
  const count = row.counts?.[sizes.indexOf(chosen ?? '')];
  const along = findLandmark(row.landmark)?.direction ?? row.direction;
  const facts = [
    saysTheSame(place, row.name) ? null : place.toLowerCase(),
    mayGoAround(row) && row.span ? SPANS[row.span] : null,
    row.worked === 'to-length' ? 'to length' : count == null ? 'counted' : null,
    count == null
      ? null
      : `${formatCount(count)} ${along === 'length' ? 'rows' : 'sts'} in size ${chosen}`,
  ].filter((fact) => fact !== null);
  return (
    <>
      {facts.join(' · ')}
      {mayGoAround(row) && !row.span && <strong className="pt-ask"> flat or around?</strong>}
    </>
  );
};
