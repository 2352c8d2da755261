import type { DryingForecast } from '@dryflat/engine/drying';
import type { Drying, GarmentRecord } from '@dryflat/record';

/** A drying of a record, and what is forecast of it. */
export interface ToldDrying {
  readonly record: GarmentRecord;
  readonly drying: Drying;
  readonly forecast: DryingForecast;
}
