/// <reference lib="webworker" />
import { type RoutesQuestion, routes, sizeByNeedle } from '@dryflat/engine/routes';
import type { Fault, Result } from '@dryflat/engine/units';
import { askRoutes } from '@dryflat/record/routes';
import { SEED } from '../protocol.ts';
import type { RoutesAnswer, RoutesAsk, RoutesWhat } from './protocol.ts';

type Told = RoutesAnswer extends infer A ? (A extends unknown ? Omit<A, 'turn'> : never) : never;
type Tell = (told: Told) => void;

const compare = (question: RoutesQuestion, tell: Tell): Result<unknown> => {
  const result = routes(question, {
    seed: SEED,
    onRoute: (route) => {
      tell({ kind: 'route', route });
      return true;
    },
  });
  if (!result.ok) return result;
  tell({ kind: 'routes', result: result.value });
  const sizes = sizeByNeedle(question, { seed: SEED });
  if (sizes.ok) tell({ kind: 'sizes', sizes: sizes.value });
  return sizes;
};

const WORK: Readonly<
  Record<RoutesWhat, (question: RoutesQuestion, tell: Tell) => Result<unknown>>
> = { routes: compare, pace: compare, yarn: compare };

const answer = ({ what, record, today }: RoutesAsk, tell: Tell): void => {
  const asked = askRoutes(record, today);
  const done = asked.ok ? WORK[what](asked.value, tell) : asked;
  if (!done.ok) tell({ kind: 'faults', faults: done.faults as readonly Fault[] });
};

addEventListener('message', ({ data }: MessageEvent<RoutesAsk>) => {
  const tell: Tell = (told) => postMessage({ ...told, turn: data.turn });
  try {
    answer(data, tell);
  } catch (error) {
    tell({ kind: 'broken', message: error instanceof Error ? error.message : `${error}` });
  }
});
