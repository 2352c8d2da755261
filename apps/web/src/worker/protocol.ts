import type { EachSize, Forecast, GaugeStep } from '@dryflat/engine/garment';
import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';

/** A question to the worker; `turn` counts up, and only the newest turn's answer is used. */
export interface Ask {
  readonly turn: number;
  readonly record: GarmentRecord;
}

export type Answer =
  | {
      readonly kind: 'forecast';
      readonly turn: number;
      readonly forecast: Forecast;
      readonly steps: readonly GaugeStep[];
    }
  | {
      /** No size is chosen: what each would be, and the question which. */
      readonly kind: 'sizes';
      readonly turn: number;
      readonly each: EachSize;
      readonly steps: readonly GaugeStep[];
      readonly faults: readonly Fault[];
    }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };

/** The same luck for every forecast, so that only what the knitter changed changes it; that of the command line, so that both say the same. */
export const SEED = 1;
