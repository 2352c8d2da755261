import type { PaceForecast, Route, RoutesResult, SizeAtNeedle } from '@dryflat/engine/routes';
import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';

export interface RoutesAsk {
  readonly turn: number;
  readonly record: GarmentRecord;
  /** The knitter's day. */
  readonly today: string;
}

export type RoutesAnswer =
  /** One route, before it is compared with the others. */
  | { readonly kind: 'route'; readonly turn: number; readonly route: Route }
  | {
      readonly kind: 'routes';
      readonly turn: number;
      readonly result: RoutesResult;
      readonly sizes: readonly SizeAtNeedle[];
    }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };

export type PaceAnswer =
  | { readonly kind: 'pace'; readonly turn: number; readonly forecast: PaceForecast }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
