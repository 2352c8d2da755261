import type { GarmentRecord } from '@dryflat/record';
import { type AskedWorker, asker } from './asker.ts';
import type { Answer, Ask } from './protocol.ts';
import { withoutPictures } from './without-pictures.ts';

export type WorkerLike = AskedWorker<Ask, Answer>;

export interface Forecaster {
  readonly ask: (record: GarmentRecord) => void;
  readonly stop: () => void;
}

/** Asks the worker for the forecast of a record. */
export const forecaster = (make: () => WorkerLike, tell: (answer: Answer) => void): Forecaster => {
  const { ask, stop } = asker(make, tell, 'the forecast');
  return { ask: (record) => ask({ record: withoutPictures(record) }), stop };
};
