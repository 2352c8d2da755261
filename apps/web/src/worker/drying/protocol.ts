import type { DryingForecast, Spread } from '@dryflat/engine/drying';
import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';

/** Other humidities than the one that is taken, percent: where that one is a word for a room. */
export interface Doubt {
  readonly low: number;
  readonly high: number;
}

export interface DryingAsk {
  readonly turn: number;
  readonly record: GarmentRecord;
  /** Which drying of the record. */
  readonly id: string;
  readonly humidity: Doubt | null;
}

/** Hours until it is dry at the ends of the doubt about humidity. */
export interface Otherwise {
  readonly drier: Spread;
  readonly damper: Spread;
}

export type DryingAnswer =
  | {
      readonly kind: 'drying';
      readonly turn: number;
      readonly id: string;
      readonly forecast: DryingForecast;
      readonly otherwise: Otherwise | null;
    }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
