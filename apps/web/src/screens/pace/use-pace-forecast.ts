import type { PaceForecast } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';
import { type Asked, type Taking, useRoutesWorker } from '../result/use-routes-worker.ts';

export interface PaceNow extends Asked {
  /** The newest forecast; stays while the next one is worked out. */
  readonly forecast: PaceForecast | null;
}

const PACE: Taking<PaceNow> = {
  what: 'pace',
  start: { forecast: null, pending: true, faults: [], broken: null },
  again: {},
  good: (was, answer) =>
    answer.kind === 'pace' ? { ...was, pending: false, forecast: answer.forecast } : was,
};

/** When a garment is done. */
export const usePaceForecast = (record: GarmentRecord): PaceNow => useRoutesWorker(PACE, record);
