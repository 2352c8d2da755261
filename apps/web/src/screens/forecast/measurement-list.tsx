import type { ForecastState } from '@dryflat/engine/fabric';
import type { Forecast, MeasurementForecast } from '@dryflat/engine/garment';
import { Icon, useLengths } from '../../kit/index.ts';
import { Key } from '../result/key.tsx';
import { RangeLine } from '../result/range-line.tsx';
import { scaleFor } from '../result/scale.ts';
import { spannedName } from '../result/span-words.ts';
import { STATE_NAMES, STATES_FORECAST } from '../result/state-names.ts';
import { wantedOf } from './wanted-range.ts';

/** Every measurement in one state; a row tells where its number comes from. */
export const MeasurementList = ({
  forecast,
  state,
  onPick,
}: {
  forecast: Forecast;
  state: ForecastState;
  onPick: (id: string) => void;
}) => (
  <div className="df-stack">
    <h3>{STATE_NAMES[state].label}, one by one</h3>
    <ul className="df-measurements">
      {forecast.measurements.map((measurement) => (
        <li key={measurement.id}>
          <Row
            measurement={measurement}
            state={state}
            wanted={wantedOf(forecast, measurement.id)}
            onPick={onPick}
          />
        </li>
      ))}
    </ul>
    <Key of={['range', 'wanted', 'target']} />
  </div>
);

const Row = ({
  measurement,
  state,
  wanted,
  onPick,
}: {
  measurement: MeasurementForecast;
  state: ForecastState;
  wanted: { min: number; max: number } | null;
  onPick: (id: string) => void;
}) => {
  const { length, range } = useLengths();
  const now = measurement.states[state];
  const { targetMm } = measurement;
  return (
    <button type="button" className="df-measurement" onClick={() => onPick(measurement.id)}>
      <span className="df-measurement-name">{spannedName(measurement)}</span>
      <span className="df-measurement-big">{length(now.p50Mm)}</span>
      <span className="df-measurement-line">
        <RangeLine
          scale={scaleOf(measurement, wanted)}
          range={now}
          wanted={wanted}
          target={targetMm}
        />
      </span>
      <span className="df-soft">
        likely {range(now.p05Mm, now.p95Mm)}
        {targetMm !== null && <>; the pattern says {length(targetMm)}</>}
      </span>
      <Icon name="info" />
    </button>
  );
};

/** One scale for all states, so that switching between them moves the bar and not the ruler. */
const scaleOf = (measurement: MeasurementForecast, wanted: { min: number; max: number } | null) =>
  scaleFor([
    ...STATES_FORECAST.flatMap((state) => [
      measurement.states[state].p05Mm,
      measurement.states[state].p95Mm,
    ]),
    wanted?.min,
    wanted?.max,
    measurement.targetMm,
  ]);
