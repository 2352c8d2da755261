import type { Forecast } from '@dryflat/engine/garment';
import type { KeptForecast } from '@dryflat/record';
import { STATES_FORECAST } from '../result/state-names.ts';

/** What is kept: every measurement in every state, to a tenth of a millimetre. */
export const keptOf = (forecast: Forecast, id: string, on: string): KeptForecast => ({
  id,
  on,
  measurements: forecast.measurements.flatMap((measurement) =>
    STATES_FORECAST.map((state) => {
      const { p05Mm, p50Mm, p95Mm } = measurement.states[state];
      return {
        measurement: measurement.id,
        state,
        p05Mm: tenth(p05Mm),
        p50Mm: tenth(p50Mm),
        p95Mm: tenth(p95Mm),
      };
    }),
  ),
});

const tenth = (value: number): number => Math.max(0.1, Math.round(value * 10) / 10);
