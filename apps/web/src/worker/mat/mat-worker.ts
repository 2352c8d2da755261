import type { MatAsk, MatTold } from './protocol.ts';

/** The part of a Worker that is used here, so that tests can hand in one of their own. */
export interface MatWorker {
  postMessage: (ask: MatAsk) => void;
  onmessage: ((event: MessageEvent<MatTold>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  terminate: () => void;
}

export const makeMatWorker = (): MatWorker =>
  new Worker(new URL('./mat.worker.ts', import.meta.url), { type: 'module' }) as MatWorker;

/** What is told of a worker that died. */
export const died = (event: ErrorEvent): string =>
  event.message || 'the calculation could not be loaded';
