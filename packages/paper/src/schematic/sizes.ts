import type { Forecast, MeasurementForecast, OutlineSizes, Range } from '@dryflat/engine/garment';
import { type FlatMillimetres, flat } from '@dryflat/engine/units';
import type { ForecastSizes } from './drawn-piece.ts';

type Placed = Pick<MeasurementForecast, 'landmark' | 'span'>;

/** A length of a measurement as it lies in a piece laid flat: girths halved. */
const lying = ({ span }: Placed, valueMm: number): FlatMillimetres =>
  flat(span === 'around' ? valueMm / 2 : valueMm);

/** Flat sizes by landmark; the first measurement of a landmark stands for it. */
const sizesOf = <M extends Placed>(
  measurements: readonly M[],
  lengthOf: (measurement: M) => number | null,
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

/** Sizes in one state, of a forecast or of anything else that tells ranges by state. */
export const forecastSizes = <S extends string>(
  {
    measurements,
  }: {
    readonly measurements: readonly (Placed & { readonly states: Readonly<Record<S, Range>> })[];
  },
  state: S,
): ForecastSizes => ({
  p05: sizesOf(measurements, ({ states }) => states[state].p05Mm),
  p50: sizesOf(measurements, ({ states }) => states[state].p50Mm),
  p95: sizesOf(measurements, ({ states }) => states[state].p95Mm),
});
