import type { DryingForecast } from '@dryflat/engine/drying';
import type { Fault } from '@dryflat/engine/units';
import type { Drying } from '@dryflat/record';
import { useEffect, useRef, useState } from 'react';
import { useGarment } from '../../store/index.ts';
import { type Asker, asker } from '../../worker/asker.ts';
import {
  type DryingAnswer,
  type DryingAsk,
  makeDryingWorker,
  type Otherwise,
} from '../../worker/drying/index.ts';
import { withoutPictures } from '../../worker/without-pictures.ts';
import { roomWordOf } from './humidity-words.ts';

export interface DryingNow {
  /** The newest forecast; stays while the next one is worked out, null where there is none. */
  readonly forecast: DryingForecast | null;
  readonly otherwise: Otherwise | null;
  readonly pending: boolean;
  readonly faults: readonly Fault[];
  readonly broken: string | null;
}

const START: DryingNow = {
  forecast: null,
  otherwise: null,
  pending: true,
  faults: [],
  broken: null,
};

const afterAnswer = (answer: DryingAnswer): DryingNow => ({
  ...START,
  pending: false,
  ...(answer.kind === 'drying' && { forecast: answer.forecast, otherwise: answer.otherwise }),
  ...(answer.kind === 'faults' && { faults: answer.faults }),
  ...(answer.kind === 'broken' && { broken: answer.message }),
});

/** Keeps the forecast of a drying up to date, in a worker. */
export const useDrying = ({ id, air }: Drying): DryingNow => {
  const { record } = useGarment();
  const [now, setNow] = useState(START);
  const asks = useRef<Asker<DryingAsk> | null>(null);
  const { humidityPercent } = air;
  useEffect(() => {
    asks.current = asker(makeDryingWorker, (told) => setNow(afterAnswer(told)), 'the forecast');
    return () => asks.current?.stop();
  }, []);
  useEffect(() => {
    setNow((was) => (was.pending ? was : { ...was, pending: true }));
    asks.current?.ask({
      record: withoutPictures(record),
      id,
      humidity: roomWordOf(humidityPercent),
    });
  }, [record, id, humidityPercent]);
  return now;
};
