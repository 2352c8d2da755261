import type { AskedWorker } from '../asker.ts';
import type { CountsAnswer, CountsAsk } from './protocol.ts';

export type * from './protocol.ts';

export const makeCountsWorker = (): AskedWorker<CountsAsk, CountsAnswer> =>
  new Worker(new URL('./counts.worker.ts', import.meta.url), { type: 'module' }) as AskedWorker<
    CountsAsk,
    CountsAnswer
  >;
