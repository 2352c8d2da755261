import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';
import { useEffect, useRef, useState } from 'react';
import { type Asker, asker } from '../../worker/asker.ts';
import {
  makeRoutesWorker,
  type RoutesAnswer,
  type RoutesAsk,
  type RoutesWhat,
} from '../../worker/routes/index.ts';
import { withoutPictures } from '../../worker/without-pictures.ts';
import { today } from './today.ts';

/** What every question to this worker can come to. */
export interface Asked {
  readonly pending: boolean;
  readonly faults: readonly Fault[];
  readonly broken: string | null;
}

export type Good = Exclude<RoutesAnswer, { kind: 'faults' | 'broken' }>;

/** How answers are taken in. */
export interface Taking<S extends Asked> {
  readonly what: RoutesWhat;
  readonly start: S;
  /** What a new question puts aside at once. */
  readonly again: Partial<S>;
  readonly good: (was: S, answer: Good) => S;
}

/** What an answer makes of what was shown before it. */
export const taken = <S extends Asked>(
  { start, good }: Taking<S>,
  was: S,
  told: RoutesAnswer,
): S => {
  if (told.kind === 'faults') return { ...start, pending: false, faults: told.faults };
  if (told.kind === 'broken') return { ...start, pending: false, broken: told.message };
  return good({ ...was, faults: [], broken: null }, told);
};

/** Typing pauses this long before it is worked out again, ms. Chosen by feel, no source. */
const PAUSE = 300;

/** Keeps an answer about a garment up to date, in a worker. `taking` has to stay the same object. */
export const useRoutesWorker = <S extends Asked>(taking: Taking<S>, record: GarmentRecord): S => {
  const [now, setNow] = useState(taking.start);
  const asks = useRef<Asker<RoutesAsk> | null>(null);
  useEffect(() => {
    asks.current = asker(
      makeRoutesWorker,
      (told: RoutesAnswer) => setNow((was) => taken(taking, was, told)),
      'the calculation',
    );
    return () => asks.current?.stop();
  }, [taking]);
  useEffect(() => {
    setNow((was) => ({ ...was, ...taking.again, pending: true }));
    const timer = setTimeout(
      () =>
        asks.current?.ask({ what: taking.what, record: withoutPictures(record), today: today() }),
      PAUSE,
    );
    return () => clearTimeout(timer);
  }, [record, taking]);
  return now;
};
