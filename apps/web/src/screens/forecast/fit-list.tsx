import type { Forecast, LandmarkFit } from '@dryflat/engine/garment';
import { awaitsSpan, type GarmentRecord } from '@dryflat/record';
import { Card, Icon, useLandmarkName, useLengths } from '../../kit/index.ts';
import { RangeBar } from '../../schematic/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent, chanceWords } from '../result/chance-words.ts';
import { PLACE_LABELS } from '../result/mend-place.ts';
import { STATE_NAMES } from '../result/state-names.ts';

/** How it will fit, place by place. */
export const FitList = ({ forecast }: { forecast: Forecast }) => {
  const { record } = useGarment();
  const judged = STATE_NAMES[forecast.judgedAt].label.toLowerCase();
  return (
    <Card title={`How it will fit, ${judged}`}>
      {forecast.fit.length === 0 && record.wearer.wanted.length === 0 && <NothingWanted />}
      <ul className="df-list">
        {forecast.fit.map((fit) => (
          <FitRow key={fit.landmark} forecast={forecast} fit={fit} />
        ))}
        {unjudged(record, forecast).map((landmark) => (
          <Unjudged key={landmark} landmark={landmark} />
        ))}
      </ul>
      {forecast.fit.length > 0 && (
        <ul className="df-legend">
          <li>
            <i data-of="small" aria-hidden="true" /> too small
          </li>
          <li>
            <i data-of="fits" aria-hidden="true" /> as wanted
          </li>
          <li>
            <i data-of="large" aria-hidden="true" /> too large
          </li>
        </ul>
      )}
    </Card>
  );
};

const NothingWanted = () => {
  const { record } = useGarment();
  return (
    <>
      <p>
        Nothing is wanted yet. Say how much ease there should be, or which finished length, and the
        chance of each is worked out.
      </p>
      <div>
        <a className="df-button" href={garmentHash(record.id, 'wearer')}>
          <Icon name="wearer" />
          Say what is wanted, under Wearer
        </a>
      </div>
    </>
  );
};

const FitRow = ({ forecast, fit }: { forecast: Forecast; fit: LandmarkFit }) => {
  const { length, signed } = useLengths();
  const measurement = forecast.measurements.find((each) => each.id === fit.measurement);
  const name = measurement?.name ?? fit.landmark;
  const eased = fit.easeMm !== null;
  return (
    <li className="df-fit">
      <h3>{name}</h3>
      <p>
        <strong>Fits: {chanceWords(fit.chance)}</strong>{' '}
        <span className="df-soft">({chancePercent(fit.chance)})</span>. {missText(fit)}
      </p>
      <ChanceBar fits={fit.chance} small={fit.tooSmall} large={fit.tooLarge} />
      <p className="df-soft">
        {eased && fit.bodyMm !== null
          ? `Ease over the body’s ${length(fit.bodyMm)}: the hill is the forecast, the bracket what is wanted.`
          : 'Finished measurement: the hill is the forecast, the bracket what is wanted.'}
      </p>
      <RangeBar
        label={`${name}, ${eased ? 'ease' : 'finished'}`}
        range={fit.easeMm ?? fit.finishedMm}
        wanted={{ min: fit.wantedMm.min, max: fit.wantedMm.max }}
        print={eased ? signed : length}
      />
      <p className="df-soft">
        In other states: dried {chancePercent(fit.chanceByState.dried)}, worn{' '}
        {chancePercent(fit.chanceByState.worn)}, rewashed{' '}
        {chancePercent(fit.chanceByState.rewashed)}.
      </p>
    </li>
  );
};

/** Which way it would miss, the likelier way first. */
const missText = ({ tooSmall, tooLarge, miss }: LandmarkFit): string => {
  const ways = [`too small: ${chanceWords(tooSmall)}`, `too large: ${chanceWords(tooLarge)}`];
  const [first = '', second] = miss.side === 'large' ? ways.reverse() : ways;
  return `${first.charAt(0).toUpperCase()}${first.slice(1)}; ${second}.`;
};

/** Landmarks that are wanted but have no measurement or no body to be judged by. */
const unjudged = ({ wearer }: GarmentRecord, { fit }: Forecast): string[] =>
  wearer.wanted
    .map(({ landmark }) => landmark)
    .filter((landmark) => !fit.some((each) => each.landmark === landmark));

const Unjudged = ({ landmark }: { landmark: string }) => {
  const { record } = useGarment();
  const name = useLandmarkName()(landmark);
  const row = record.pattern.measurements.find((each) => each.landmark === landmark);
  const place = row !== undefined && !awaitsSpan(row) ? 'wearer' : 'pattern';
  return (
    <li className="df-mend">
      <p>
        <strong>{name} cannot be judged yet.</strong>{' '}
        {row === undefined
          ? 'The pattern gives no measurement there.'
          : awaitsSpan(row)
            ? 'Whether its number is flat or around is not said yet.'
            : 'Ease is wanted there, but the body measurement is missing.'}
      </p>
      <a className="df-button" href={garmentHash(record.id, place)}>
        <Icon name="pen" />
        Mend it under {PLACE_LABELS[place]}
      </a>
    </li>
  );
};
