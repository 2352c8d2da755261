import type { Route, RouteFit } from '@dryflat/engine/routes';
import { useLandmarkName, useLengths } from '../../kit/index.ts';
import { RangeBar } from '../../schematic/index.ts';
import { chancePercent } from '../result/chance-words.ts';

/** Every place that is wanted, against what the route makes of it. */
export const RouteFits = ({ route: { fit, worst } }: { route: Route }) => {
  const { length } = useLengths();
  const nameOf = useLandmarkName();
  if (fit.length === 0) return null;
  return (
    <>
      <h3>How it fits</h3>
      <ul className="df-list">
        {fit.map((each) => (
          <li key={each.landmark}>
            <p>
              <strong>
                {nameOf(each.landmark)}: {chancePercent(each.chance)}
              </strong>
              {elseWords(each)}
              {fit.length > 1 && each.landmark === worst?.landmark && '. Fits least'}
            </p>
            <RangeBar
              label={nameOf(each.landmark)}
              range={each.finishedMm}
              wanted={each.wantedMm}
              print={length}
            />
          </li>
        ))}
      </ul>
    </>
  );
};

/** Below this chance it is said which way it goes wrong. */
const SURE = 0.95;

const elseWords = ({ chance, miss }: RouteFit): string =>
  chance >= SURE ? '' : `, else too ${miss.side}`;
