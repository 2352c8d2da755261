import type { Measuring } from '@dryflat/engine/routes';
import { Card } from '../../kit/index.ts';
import { chancePercent } from '../result/chance-words.ts';
import { useSentences } from '../result/craft-sentence.ts';

/** Cheap measurements, the one that clears up most first. */
export const MeasureFirst = ({ measurings }: { measurings: readonly Measuring[] }) => {
  const { own } = useSentences();
  const [first, ...others] = measurings;
  if (!first) return null;
  return (
    <Card title="Measure before you decide">
      <p className="df-lead">
        {own(first.name)}: {worthOf(first)}.
      </p>
      {others.length > 0 && (
        <ul className="df-list">
          {others.map((each) => (
            <li key={each.id}>
              <strong>{own(each.name)}</strong>: {worthOf(each)}.
            </li>
          ))}
        </ul>
      )}
    </Card>
  );
};

/** What taking it is worth, in words. */
const worthOf = ({ explains, chanceOfChange }: Measuring): string => {
  const clears = `clears up ${chancePercent(explains)} of the doubt about the first route`;
  return chanceOfChange < 0.01
    ? `${clears}, and will hardly make another first`
    : `${clears}, and makes another route first with a chance of ${chancePercent(chanceOfChange)}`;
};
