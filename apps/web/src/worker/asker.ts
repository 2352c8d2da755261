import { longWork, STOPPED } from './long-work.ts';

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

/** Kinds of answers after which more come. */
const MORE_TO_COME = new Set(['progress', 'route', 'routes']);

/**
 * ms. A calculation cannot hear messages: one that a newer question finds at work for longer than this
 * is ended with its worker. Shorter ones are waited for, as a new worker takes about as long to start.
 */
const WAITED_FOR = 400;

/**
 * Asks a worker, latest question wins: an answer to an older question is dropped, and work on it is
 * ended. A worker that dies is told as `broken` and replaced at the next question; one that the knitter
 * stops, likewise. `what` names what could not be loaded.
 */
export const asker = <Q extends Turned, A extends Turned & { readonly kind: string }>(
  make: () => AskedWorker<Q, A>,
  tell: (answer: A | Broken) => void,
  what: string,
): Asker<Q> => {
  let worker: AskedWorker<Q, A> | null = null;
  let turn = 0;
  let since: number | null = null;
  let done = (): void => {};
  const rest = (): void => {
    since = null;
    done();
    done = () => {};
  };
  const end = (): void => {
    worker?.terminate();
    worker = null;
    rest();
  };
  const breakOff = (message: string): void => {
    end();
    tell({ kind: 'broken', turn, message });
  };
  const start = (): AskedWorker<Q, A> => {
    const started = make();
    started.onmessage = ({ data }) => {
      if (worker !== started || data.turn !== turn) return;
      if (!MORE_TO_COME.has(data.kind)) rest();
      tell(data);
    };
    started.onerror = (event) => {
      if (worker === started) breakOff(event.message || `${what} could not be loaded`);
    };
    return started;
  };
  return {
    ask: (question) => {
      if (since !== null && performance.now() - since > WAITED_FOR) end();
      turn += 1;
      worker ??= start();
      since ??= performance.now();
      done();
      done = longWork(() => breakOff(STOPPED));
      worker.postMessage({ ...question, turn } as Q);
    },
    stop: end,
  };
};
