import type { Route, RoutesResult, SizeAtNeedle } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';
import {
  type Asked,
  type Good,
  type Taking,
  useRoutesWorker,
} from '../result/use-routes-worker.ts';

export interface RoutesNow extends Asked {
  /** Routes as they come, not yet in order; empty when the result is there. */
  readonly arriving: readonly Route[];
  /** The newest result; stays while the next one is worked out. */
  readonly result: RoutesResult | null;
  /** Every size by needle; stays likewise, empty where there are none. */
  readonly sizes: readonly SizeAtNeedle[];
}

const good = (was: RoutesNow, answer: Good): RoutesNow => {
  if (answer.kind === 'route') return { ...was, arriving: [...was.arriving, answer.route] };
  if (answer.kind === 'routes')
    return { ...was, pending: false, arriving: [], result: answer.result };
  return answer.kind === 'sizes' ? { ...was, sizes: answer.sizes } : was;
};

export const ROUTES: Taking<RoutesNow> = {
  what: 'routes',
  start: { arriving: [], result: null, sizes: [], pending: true, faults: [], broken: null },
  again: { arriving: [] },
  good,
};

/** The routes of a garment. */
export const useRoutes = (record: GarmentRecord): RoutesNow => useRoutesWorker(ROUTES, record);
