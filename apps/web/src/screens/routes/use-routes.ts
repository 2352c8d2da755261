import type { Route, RoutesResult, SizeAtNeedle } from '@dryflat/engine/routes';
import type { Fault } from '@dryflat/engine/units';
import { useEffect, useRef, useState } from 'react';
import { useGarment } from '../../store/index.ts';
import { type Asker, asker } from '../../worker/asker.ts';
import { makeRoutesWorker, type RoutesAnswer, type RoutesAsk } from '../../worker/routes/index.ts';
import { withoutPictures } from '../../worker/without-pictures.ts';
import { today } from '../result/today.ts';

export interface RoutesNow {
  /** Routes as they come, not yet in order; empty when the result is there. */
  readonly arriving: readonly Route[];
  /** The newest result; stays while the next one is worked out. */
  readonly result: RoutesResult | null;
  readonly sizes: readonly SizeAtNeedle[];
  readonly pending: boolean;
  readonly faults: readonly Fault[];
  readonly broken: string | null;
}

const START: RoutesNow = {
  arriving: [],
  result: null,
  sizes: [],
  pending: true,
  faults: [],
  broken: null,
};

/** What an answer makes of what was shown before it. */
export const afterRoutes = (was: RoutesNow, answer: RoutesAnswer): RoutesNow => {
  if (answer.kind === 'route') return { ...was, arriving: [...was.arriving, answer.route] };
  if (answer.kind === 'routes')
    return { ...START, pending: false, result: answer.result, sizes: answer.sizes };
  if (answer.kind === 'faults') return { ...START, pending: false, faults: answer.faults };
  return { ...START, pending: false, broken: answer.message };
};

/** Typing pauses this long before the routes are worked out again, ms. */
const PAUSE = 300;

/** Keeps the routes of the open garment up to date, in a worker; work on an older question is ended. */
export const useRoutes = (): RoutesNow => {
  const { record } = useGarment();
  const [now, setNow] = useState(START);
  const asks = useRef<Asker<RoutesAsk> | null>(null);
  useEffect(() => {
    asks.current = asker(
      makeRoutesWorker,
      (told) => setNow((was) => afterRoutes(was, told)),
      'the routes',
    );
    return () => asks.current?.stop();
  }, []);
  useEffect(() => {
    setNow((was) => ({ ...was, arriving: [], pending: true }));
    const timer = setTimeout(() => {
      asks.current?.stop();
      asks.current?.ask({ record: withoutPictures(record), today: today() });
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [record]);
  return now;
};
