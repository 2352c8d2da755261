import { type EachSize, type Forecast, keyMeasurements } from '@dryflat/engine/garment';
import { Card, useLengths } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent } from '../result/chance-words.ts';
import { sizeTitle } from '../result/size-title.ts';
import { spannedName } from '../result/span-words.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import { Told } from '../result/told.tsx';
import { ChooseSize } from './size-list.tsx';

/** Which size? Each as it would come out, with its chance that all fits, and the way to choose it. */
export const WhichSize = ({ each: { sizes, best, notices } }: { each: EachSize }) => {
  const { record } = useGarment();
  const wanted = sizes.some(({ chanceAllFit }) => chanceAllFit !== null);
  const state = STATE_NAMES[sizes[0]?.judgedAt ?? 'dried'].label.toLowerCase();
  return (
    <>
      <Card title="Which size?">
        <p className="df-lead">
          {best === null
            ? wanted
              ? 'In none of them all that is wanted is likely to fit.'
              : 'None is chosen yet.'
            : `${sizeTitle(best)} fits best.`}
        </p>
        <p className="df-soft">
          Each as it would come out if it were begun now, {state}: the likeliest number, with the
          range that should hold nine times in ten.
          {wanted && ' In percent, the chance that all that is wanted fits.'}
        </p>
        {!wanted && (
          <p>
            <a href={garmentHash(record.id, 'wearer')}>Say what is wanted, under Wearer</a>, and
            each has its chance.
          </p>
        )}
        <ul className="df-sizes">
          {sizes.map((forecast) => (
            <Size
              key={forecast.chosenSize}
              forecast={forecast}
              best={forecast.chosenSize === best}
            />
          ))}
        </ul>
      </Card>
      <Told label="Whatever the size" notices={notices} />
    </>
  );
};

const Size = ({ forecast, best }: { forecast: Forecast; best: boolean }) => {
  const { length, range } = useLengths();
  const { chosenSize, chanceAllFit, judgedAt } = forecast;
  const size = chosenSize ?? '';
  return (
    <li>
      <div className="df-size-head">
        <h3>
          {sizeTitle(size)}
          {best && <span className="df-kind"> fits best</span>}
        </h3>
        {chanceAllFit !== null && (
          <>
            <span className="df-size-chance">{chancePercent(chanceAllFit)}</span>
            <span className="df-unseen"> chance that all fits</span>
          </>
        )}
      </div>
      {chanceAllFit !== null && <ChanceBar fits={chanceAllFit} />}
      <ul className="df-size-lines">
        {keyMeasurements(forecast).map((each) => {
          const { p05Mm, p50Mm, p95Mm } = each.states[judgedAt];
          return (
            <li key={each.id}>
              {spannedName(each)} <strong>{length(p50Mm)}</strong>{' '}
              <span className="df-soft">({range(p05Mm, p95Mm)})</span>
            </li>
          );
        })}
      </ul>
      <ChooseSize size={size} chosen={false} />
    </li>
  );
};
