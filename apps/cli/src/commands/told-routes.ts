import type { RoutesQuestion, RoutesResult, SizeAtNeedle } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';

/** Everything that is told of what to do now. */
export interface ToldRoutes {
  readonly record: GarmentRecord;
  readonly question: RoutesQuestion;
  readonly result: RoutesResult;
  readonly sizes: readonly SizeAtNeedle[];
  /** Of the file, beside the engine's own. */
  readonly notices: readonly string[];
}
