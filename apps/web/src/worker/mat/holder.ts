import { died, type MatWorker } from './mat-worker.ts';
import type { MatAsk, MatTold, OpenAsk, Places } from './protocol.ts';

export interface Holder {
  /** Lays another piece under the hand. */
  readonly open: (what: Pick<OpenAsk, 'piece' | 'plan'>) => void;
  /** Puts the pins there. While an answer is awaited, only the last places wait for their turn. */
  readonly move: (places: Places) => void;
  readonly stop: () => void;
}

/**
 * Moves pins in a worker. One question is under way at a time; of those that come in between only the
 * last is asked, so that the fabric is never further behind the finger than one solve.
 */
export const holder = (make: () => MatWorker, tell: (told: MatTold) => void): Holder => {
  let worker: MatWorker | null = null;
  let turn = 0;
  let awaited = false;
  let waiting: Places | null = null;
  let asked: Places | null = null;
  let opened = 0;
  const stop = (): void => {
    worker?.terminate();
    worker = null;
    awaited = false;
    waiting = null;
  };
  const send = (ask: MatAsk): void => {
    awaited = true;
    worker?.postMessage(ask);
  };
  const next = (): void => {
    awaited = false;
    if (waiting === null) return;
    const places = waiting;
    asked = places;
    waiting = null;
    send({ kind: 'move', turn: ++turn, places });
  };
  const start = (): MatWorker => {
    const started = make();
    started.onmessage = ({ data }) => {
      if (worker !== started) return;
      // Answers about a piece that was put away are of no use.
      if (data.turn >= opened) tell(data);
      // What was told before it was done goes on, unless the pins have moved since.
      if (data.kind === 'lying' && data.lying.stopped && data.turn === turn) waiting ??= asked;
      if (data.turn === turn) next();
    };
    started.onerror = (event) => {
      if (worker !== started) return;
      stop();
      tell({ kind: 'broken', turn, message: died(event) });
    };
    return started;
  };
  return {
    open: (what) => {
      worker ??= start();
      waiting = null;
      opened = ++turn;
      send({ kind: 'open', turn, ...what });
    },
    move: (places) => {
      if (worker === null) return;
      waiting = places;
      if (!awaited) next();
    },
    stop,
  };
};
