import type { AskedWorker } from '../asker.ts';
import type { PaperAnswer, PaperAsk } from './protocol.ts';

export type * from './protocol.ts';

export const makePaperWorker = (): AskedWorker<PaperAsk, PaperAnswer> =>
  new Worker(new URL('./paper.worker.ts', import.meta.url), { type: 'module' }) as AskedWorker<
    PaperAsk,
    PaperAnswer
  >;
