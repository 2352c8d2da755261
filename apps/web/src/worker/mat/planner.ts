import type { GarmentRecord } from '@dryflat/record';
import { withoutPictures } from '../without-pictures.ts';
import { died, type MatWorker } from './mat-worker.ts';
import type { AgainQuestion, MatAsk, MatChoices, MatTold } from './protocol.ts';

export interface Planner {
  /** Ends what is being worked on and plans this instead. */
  readonly ask: (record: GarmentRecord, choices: MatChoices) => void;
  /** Likewise, and plans the rest of a piece that is half pinned. */
  readonly again: (question: AgainQuestion) => void;
  /** Ends what is being worked on; nothing more is told of it. */
  readonly stop: () => void;
}

/**
 * Plans in a worker, latest question wins. A plan is one long calculation that cannot hear messages, so
 * that it is ended with its worker, at once; the next question starts another.
 */
export const planner = (make: () => MatWorker, tell: (told: MatTold) => void): Planner => {
  let worker: MatWorker | null = null;
  let busy = false;
  let turn = 0;
  const end = (): void => {
    worker?.terminate();
    worker = null;
    busy = false;
  };
  const start = (): MatWorker => {
    const started = make();
    const mine = (): boolean => worker === started;
    started.onmessage = ({ data }) => {
      if (!mine() || data.turn !== turn) return;
      busy = data.kind === 'progress';
      tell(data);
    };
    started.onerror = (event) => {
      if (!mine()) return;
      end();
      tell({ kind: 'broken', turn, message: died(event) });
    };
    return started;
  };
  const send = (asked: (turn: number) => MatAsk): void => {
    if (busy) end();
    turn += 1;
    busy = true;
    worker ??= start();
    worker.postMessage(asked(turn));
  };
  return {
    ask: (record, choices) =>
      send((turn) => ({ kind: 'plan', turn, record: withoutPictures(record), choices })),
    again: (question) => send((turn) => ({ kind: 'again', turn, question })),
    stop: end,
  };
};
