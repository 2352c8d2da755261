import type { EachSize, Forecast, GaugeStep } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import { createContext, type ReactNode, useContext, useEffect, useRef, useState } from 'react';
import { useGarment } from '../store/index.ts';
import { type Forecaster, forecaster, type WorkerLike } from './forecaster.ts';
import type { Answer } from './protocol.ts';

export interface ForecastNow {
  /** The newest forecast; stays while the next one is worked out, null where there is none. */
  readonly forecast: Forecast | null;
  /** Where no size is chosen: the forecast of each; null otherwise. */
  readonly sizes: EachSize | null;
  /** How the gauge narrowed, reading by reading. */
  readonly steps: readonly GaugeStep[];
  /** A newer forecast is being worked out. */
  readonly pending: boolean;
  /** What stands in the way of a forecast. */
  readonly faults: readonly Fault[];
  /** The calculation itself failed: a bug of ours, told in its own words; null otherwise. */
  readonly broken: string | null;
}

const START: ForecastNow = {
  forecast: null,
  sizes: null,
  steps: [],
  pending: true,
  faults: [],
  broken: null,
};

const Now = createContext<ForecastNow>(START);

const makeWorker = (): WorkerLike =>
  new Worker(new URL('./forecast.worker.ts', import.meta.url), { type: 'module' }) as WorkerLike;

/** What an answer makes of what was shown before it. */
export const afterAnswer = (answer: Answer): ForecastNow => ({
  ...START,
  pending: false,
  ...(answer.kind === 'forecast' && { forecast: answer.forecast, steps: answer.steps }),
  ...(answer.kind === 'sizes' && {
    sizes: answer.each,
    steps: answer.steps,
    faults: answer.faults,
  }),
  ...(answer.kind === 'faults' && { faults: answer.faults }),
  ...(answer.kind === 'broken' && { broken: answer.message }),
});

/** Keeps the forecast of the open garment up to date, in a worker, for everything inside. */
export const ForecastProvider = ({ children }: { children: ReactNode }) => {
  const { record } = useGarment();
  const [now, setNow] = useState(START);
  const asks = useRef<Forecaster | null>(null);
  useEffect(() => {
    asks.current = forecaster(makeWorker, (answer) => setNow(afterAnswer(answer)));
    return () => asks.current?.stop();
  }, []);
  useEffect(() => {
    setNow((was) => (was.pending ? was : { ...was, pending: true }));
    asks.current?.ask(record);
  }, [record]);
  return <Now value={now}>{children}</Now>;
};

/** The forecast of the open garment. */
export const useForecast = (): ForecastNow => useContext(Now);
