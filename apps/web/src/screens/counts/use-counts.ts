import type { Forecast } from '@dryflat/engine/garment';
import { wantedSizes } from '@dryflat/paper/schematic';
import { useEffect, useRef, useState } from 'react';
import { useGarment } from '../../store/index.ts';
import { type Asker, asker } from '../../worker/asker.ts';
import {
  type CountsAnswer,
  type CountsAsk,
  makeCountsWorker,
  type PieceAnswer,
  type TextAnswer,
} from '../../worker/counts/index.ts';
import { type GaugeState, myPitch, patternPitches } from './my-pitch.ts';

export interface CountsNow {
  /** Null until they were worked out for the first time; the last ones stay while the next are. */
  readonly pieces: readonly PieceAnswer[] | null;
  readonly texts: readonly TextAnswer[];
  readonly pending: boolean;
  readonly broken: string | null;
}

const START: CountsNow = { pieces: null, texts: [], pending: true, broken: null };

export const afterCounts = (was: CountsNow, answer: CountsAnswer): CountsNow =>
  answer.kind === 'broken'
    ? { ...was, pending: false, broken: answer.message }
    : { pieces: answer.pieces, texts: answer.texts, pending: false, broken: null };

/** Typing pauses this long before the counts are worked out again, ms. */
const PAUSE = 250;

/** Keeps the counts of the open garment up to date, in a worker. */
export const useCounts = (forecast: Forecast | null, state: GaugeState): CountsNow => {
  const { record } = useGarment();
  const [now, setNow] = useState(START);
  const asks = useRef<Asker<CountsAsk> | null>(null);
  const { kind, pattern, instructions } = record;
  useEffect(() => {
    asks.current = asker(
      makeCountsWorker,
      (told) => setNow((was) => afterCounts(was, told)),
      'the counts',
    );
    return () => asks.current?.stop();
  }, []);
  useEffect(() => {
    if (forecast === null) return;
    setNow((was) => ({ ...was, pending: true }));
    const timer = setTimeout(() => {
      asks.current?.ask({
        kind,
        sizes: wantedSizes(forecast),
        mine: myPitch(forecast.gauge, state),
        repeat: pattern.repeat,
        pattern: patternPitches(pattern, forecast.gauge),
        instructions: instructions ?? [],
      });
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [forecast, state, kind, pattern, instructions]);
  return now;
};
