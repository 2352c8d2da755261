import type { AskedWorker } from '../asker.ts';
import type { RoutesAnswer, RoutesAsk } from './protocol.ts';

export type * from './protocol.ts';

export const makeRoutesWorker = (): AskedWorker<RoutesAsk, RoutesAnswer> =>
  new Worker(new URL('./routes.worker.ts', import.meta.url), { type: 'module' }) as AskedWorker<
    RoutesAsk,
    RoutesAnswer
  >;
