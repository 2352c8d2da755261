import type { SkeinPlan } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';
import {
  type Asked,
  type Good,
  type Taking,
  useRoutesWorker,
} from '../result/use-routes-worker.ts';

export interface YarnNow extends Asked {
  /** Null where no yarn at hand is known, and until the first answer. */
  readonly advice: SkeinPlan | null;
  readonly orderBy: Extract<Good, { kind: 'yarn' }>['orderBy'];
}

const YARN: Taking<YarnNow> = {
  what: 'yarn',
  start: { advice: null, orderBy: null, pending: true, faults: [], broken: null },
  again: {},
  good: (was, answer) =>
    answer.kind === 'yarn'
      ? { ...was, pending: false, advice: answer.advice, orderBy: answer.orderBy }
      : was,
};

/** Whether the yarn of a garment lasts. */
export const useYarnLasts = (record: GarmentRecord): YarnNow => useRoutesWorker(YARN, record);
