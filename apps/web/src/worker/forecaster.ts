import type { GarmentRecord } from '@dryflat/record';
import type { Answer, Ask } from './protocol.ts';

/** The part of a Worker that is used here, so that tests can hand in one of their own. */
export interface WorkerLike {
  postMessage: (ask: Ask) => void;
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  terminate: () => void;
}

export interface Forecaster {
  readonly ask: (record: GarmentRecord) => void;
  readonly stop: () => void;
}

/**
 * Asks the worker, latest question wins: an answer to an older question is dropped. A worker that
 * dies is told as `broken` and replaced at the next question.
 */
export const forecaster = (make: () => WorkerLike, tell: (answer: Answer) => void): Forecaster => {
  let worker: WorkerLike | null = null;
  let turn = 0;
  const start = (): WorkerLike => {
    const started = make();
    started.onmessage = ({ data }) => {
      if (data.turn === turn) tell(data);
    };
    started.onerror = (event) => {
      started.terminate();
      worker = null;
      tell({ kind: 'broken', turn, message: event.message || 'the forecast could not be loaded' });
    };
    return started;
  };
  return {
    ask: (record) => {
      turn += 1;
      worker ??= start();
      worker.postMessage({ turn, record });
    },
    stop: () => {
      worker?.terminate();
      worker = null;
    },
  };
};
