/// <reference lib="webworker" />
import {
  type PaceForecast,
  paceForecast,
  pacePlan,
  type RoutesQuestion,
  routes,
  sizeByNeedle,
  skeinPlan,
} from '@dryflat/engine/routes';
import type { Fault, Result } from '@dryflat/engine/units';
import { askRoutes } from '@dryflat/record/routes';
import { SEED } from '../protocol.ts';
import type { RoutesAnswer, RoutesAsk } from './protocol.ts';

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

const pace = (question: RoutesQuestion, tell: Tell): Result<unknown> => {
  const forecast = paceOf(question);
  if (forecast.ok) tell({ kind: 'pace', forecast: forecast.value });
  return forecast;
};

const paceOf = (question: RoutesQuestion): Result<PaceForecast> => {
  const plan = pacePlan(question, { seed: SEED });
  return plan.ok ? paceForecast(plan.value, { seed: SEED }) : plan;
};

/** What to buy, and by when: the days are those of the pace. */
const yarn = (question: RoutesQuestion, tell: Tell): Result<unknown> => {
  const advice = skeinPlan(question, { seed: SEED });
  if (!advice.ok) return advice;
  const forecast = paceOf(question);
  const days = forecast.ok ? forecast.value.yarn : null;
  const orderBy = days?.lastOrderDay ? { day: days.lastOrderDay, tooLate: days.tooLate } : null;
  tell({ kind: 'yarn', advice: advice.value, orderBy });
  return advice;
};

const WORK = { routes: compare, pace, yarn } as const;

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
