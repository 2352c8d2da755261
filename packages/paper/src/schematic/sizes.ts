import type { ForecastState } from '@dryflat/engine/fabric';
import type { Forecast, MeasurementForecast, OutlineSizes } from '@dryflat/engine/garment';
import { type FlatMillimetres, flat } from '@dryflat/engine/units';
import type { ForecastSizes } from './drawn-piece.ts';

/** A length of a measurement as it lies in a piece laid flat: girths halved. */
const lying = ({ span }: MeasurementForecast, valueMm: number): FlatMillimetres =>
  flat(span === 'around' ? valueMm / 2 : valueMm);

/** Flat sizes by landmark; the first measurement of a landmark stands for it. */
const sizesOf = (
  measurements: readonly MeasurementForecast[],
  lengthOf: (measurement: MeasurementForecast) => number | null,
): OutlineSizes => {
  const sizes: Record<string, FlatMillimetres> = {};
  for (const measurement of measurements) {
    const value = lengthOf(measurement);
    if (value !== null) sizes[measurement.landmark] ??= lying(measurement, value);
  }
  return sizes;
};

export const wantedSizes = ({ measurements }: Forecast): OutlineSizes =>
  sizesOf(measurements, ({ targetMm }) => targetMm);

export const forecastSizes = ({ measurements }: Forecast, state: ForecastState): ForecastSizes => ({
  p05: sizesOf(measurements, ({ states }) => states[state].p05Mm),
  p50: sizesOf(measurements, ({ states }) => states[state].p50Mm),
  p95: sizesOf(measurements, ({ states }) => states[state].p95Mm),
});
