import type { AskedWorker } from '../asker.ts';
import type { DryingAnswer, DryingAsk } from './protocol.ts';

export type * from './protocol.ts';

export const makeDryingWorker = (): AskedWorker<DryingAsk, DryingAnswer> =>
  new Worker(new URL('./drying.worker.ts', import.meta.url), { type: 'module' }) as AskedWorker<
    DryingAsk,
    DryingAnswer
  >;
