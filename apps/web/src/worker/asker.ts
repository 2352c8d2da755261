/** The part of a Worker that is used here, so that tests can hand in one of their own. */
export interface AskedWorker<Q, A> {
  postMessage: (ask: Q) => void;
  onmessage: ((event: MessageEvent<A>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  terminate: () => void;
}

/** What a question carries: `turn` counts up, and only the newest turn's answer is used. */
export interface Turned {
  readonly turn: number;
}

export interface Broken extends Turned {
  readonly kind: 'broken';
  readonly message: string;
}

export interface Asker<Q> {
  readonly ask: (question: Omit<Q, 'turn'>) => void;
  readonly stop: () => void;
}

/**
 * Asks a worker, latest question wins: an answer to an older question is dropped. A worker that
 * dies is told as `broken` and replaced at the next question. `what` names what could not be loaded.
 */
export const asker = <Q extends Turned, A extends Turned>(
  make: () => AskedWorker<Q, A>,
  tell: (answer: A | Broken) => void,
  what: string,
): Asker<Q> => {
  let worker: AskedWorker<Q, A> | null = null;
  let turn = 0;
  const start = (): AskedWorker<Q, A> => {
    const started = make();
    started.onmessage = ({ data }) => {
      if (data.turn === turn) tell(data);
    };
    started.onerror = (event) => {
      started.terminate();
      worker = null;
      tell({ kind: 'broken', turn, message: event.message || `${what} could not be loaded` });
    };
    return started;
  };
  return {
    ask: (question) => {
      turn += 1;
      worker ??= start();
      worker.postMessage({ ...question, turn } as Q);
    },
    stop: () => {
      worker?.terminate();
      worker = null;
    },
  };
};
