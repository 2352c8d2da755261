import type { ForecastState } from '@dryflat/engine/fabric';
import type { Forecast, MeasurementForecast } from '@dryflat/engine/garment';
import { Dialog, Icon, useLandmarkName, useLengths } from '../../kit/index.ts';
import { RangeBar } from '../../schematic/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { BasisList } from '../result/basis-list.tsx';
import { spannedName } from '../result/span-words.ts';
import { STATE_NAMES, STATES_FORECAST } from '../result/state-names.ts';
import { finishedWanted, type Interval, wantedOf } from './wanted-range.ts';

interface SheetProps {
  forecast: Forecast;
  /** Id of a measurement, or a landmark of the drawing. */
  picked: string;
  state: ForecastState;
  onClose: () => void;
}

/** Where a number comes from: its range in every state, its target, and what it stands on. */
export const DimensionSheet = (props: SheetProps) => {
  const { forecast, picked, onClose } = props;
  const measurement =
    forecast.measurements.find((each) => each.id === picked) ??
    forecast.measurements.find((each) => each.landmark === picked);
  if (measurement === undefined) return <NotGiven landmark={picked} onClose={onClose} />;
  return (
    <Dialog title={spannedName(measurement)} onClose={onClose}>
      <Numbers {...props} measurement={measurement} />
      <h3>What it stands on, strongest first</h3>
      <BasisList bases={forecast.evidence} ids={measurement.standsOn} />
    </Dialog>
  );
};

const Numbers = ({
  forecast,
  measurement,
  state,
}: SheetProps & { measurement: MeasurementForecast }) => {
  const { length } = useLengths();
  const wanted = wantedOf(forecast, measurement.id);
  return (
    <>
      <dl className="df-facts">
        <dt>The pattern says</dt>
        <dd>{measurement.targetMm === null ? 'nothing' : length(measurement.targetMm)}</dd>
        <Wanted forecast={forecast} measurement={measurement} />
        {measurement.pinnedMm !== null && (
          <>
            <dt>Pinned to</dt>
            <dd>{length(measurement.pinnedMm)}</dd>
          </>
        )}
      </dl>
      <StateBars measurement={measurement} wanted={wanted} current={state} />
    </>
  );
};

const Wanted = ({
  forecast,
  measurement,
}: {
  forecast: Forecast;
  measurement: MeasurementForecast;
}) => {
  const { length, range, easeRange } = useLengths();
  const fit = forecast.fit.find((each) => each.measurement === measurement.id);
  const finished = fit && finishedWanted(fit);
  if (!fit || !finished) return null;
  return (
    <>
      <dt>Wanted</dt>
      <dd>
        {range(finished.min, finished.max)}
        {fit.wantedMm.kind === 'ease' && fit.bodyMm !== null && (
          <span className="df-soft">
            {' '}
            (body {length(fit.bodyMm)}, ease {easeRange(fit.wantedMm.min, fit.wantedMm.max)})
          </span>
        )}
      </dd>
    </>
  );
};

/** All five states on one scale. */
const StateBars = ({
  measurement,
  wanted,
  current,
}: {
  measurement: MeasurementForecast;
  wanted: Interval | null;
  current: ForecastState;
}) => {
  const { length } = useLengths();
  const domain = commonDomain(measurement, wanted);
  return (
    <ul className="df-states">
      {STATES_FORECAST.map((state) => (
        <li key={state} data-now={state === current || undefined}>
          <h3>{STATE_NAMES[state].label}</h3>
          <RangeBar
            label={`${measurement.name}, ${STATE_NAMES[state].label.toLowerCase()}`}
            range={measurement.states[state]}
            wanted={wanted}
            print={length}
            domain={domain}
          />
        </li>
      ))}
    </ul>
  );
};

/** Room at each end for the outer numbers, as a share of what is drawn between. */
const MARGIN = 0.55;

const commonDomain = ({ states }: MeasurementForecast, wanted: Interval | null): Interval => {
  const all = STATES_FORECAST.flatMap((state) => [states[state].p05Mm, states[state].p95Mm]);
  const low = Math.min(...all, wanted?.min ?? Number.POSITIVE_INFINITY);
  const high = Math.max(...all, wanted?.max ?? Number.NEGATIVE_INFINITY);
  const margin = Math.max(high - low, 1) * MARGIN;
  return { min: low - margin, max: high + margin };
};

const NotGiven = ({ landmark, onClose }: { landmark: string; onClose: () => void }) => {
  const { record } = useGarment();
  const name = useLandmarkName();
  return (
    <Dialog title={name(landmark)} onClose={onClose}>
      <p>
        Nobody gave this measurement: it is drawn at a usual proportion and nothing is forecast of
        it.
      </p>
      <div>
        <a className="df-button" href={garmentHash(record.id, 'pattern')}>
          <Icon name="pattern" />
          Enter it under Pattern
        </a>
      </div>
    </Dialog>
  );
};
