import type {
  PaceForecast,
  Route,
  RoutesResult,
  SizeAtNeedle,
  SkeinPlan,
} from '@dryflat/engine/routes';
import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';

/** `routes`: what to do now, and every size by needle. `pace`: when it is done. `yarn`: whether it lasts. */
export type RoutesWhat = 'routes' | 'pace' | 'yarn';

export interface RoutesAsk {
  readonly turn: number;
  readonly what: RoutesWhat;
  readonly record: GarmentRecord;
  /** The knitter's day. */
  readonly today: string;
}

export type RoutesAnswer =
  /** One route, before it is compared with the others. */
  | { readonly kind: 'route'; readonly turn: number; readonly route: Route }
  /** All of them in order; sizes follow. */
  | { readonly kind: 'routes'; readonly turn: number; readonly result: RoutesResult }
  | { readonly kind: 'sizes'; readonly turn: number; readonly sizes: readonly SizeAtNeedle[] }
  | { readonly kind: 'pace'; readonly turn: number; readonly forecast: PaceForecast }
  /** `advice` is null where no yarn at hand is known. */
  | {
      readonly kind: 'yarn';
      readonly turn: number;
      readonly advice: SkeinPlan | null;
      /** Last day to ask for more, and whether it is past; null where it need not be asked for. */
      readonly orderBy: { readonly day: string; readonly tooLate: boolean } | null;
    }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
