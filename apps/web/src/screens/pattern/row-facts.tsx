import type { PatternMeasurement } from '@dryflat/record';
import { formatCount, useLandmarkName } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { mayGoAround } from './change-pattern.ts';

const SPANS = { flat: 'flat', around: 'around' } as const;

/** Place, flat or around, how it is reached, and the count of the size being knit, in a few words. */
export const RowFacts = ({ row }: { row: PatternMeasurement }) => {
  const { sizes, chosen } = useGarment().record.pattern;
  const place = useLandmarkName()(row.landmark);
  const count = row.counts?.[sizes.indexOf(chosen ?? '')];
  const facts = [
    place.toLowerCase() === row.name.toLowerCase() ? null : place.toLowerCase(),
    mayGoAround(row) && row.span ? SPANS[row.span] : null,
    row.worked === 'counted' ? 'counted' : 'to length',
    count == null ? null : `${formatCount(count)} in size ${chosen}`,
  ].filter((fact) => fact !== null);
  return (
    <>
      {facts.join(' · ')}
      {mayGoAround(row) && !row.span && <strong className="pt-ask"> flat or around?</strong>}
    </>
  );
};
