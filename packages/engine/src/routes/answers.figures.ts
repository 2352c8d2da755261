import * as fc from 'fast-check';
import { forecast } from '../garment/index.ts';
import {
  contradictedSizes,
  contradictedYarn,
  garment,
  promisesBroken,
  stock,
} from './check/index.ts';
import { paceForecast } from './pace/index.ts';
import { pacePlan } from './plan.ts';
import { routes } from './routes.ts';
import { sizeByNeedle } from './size-by-needle.ts';
import { skeinPlan } from './skein-plan.ts';
import type { RoutesQuestion, RoutesResult } from './types.ts';

const SEED = 20;
/** Chances are compared with each other, not with the truth: few draws tell as much as many. */
const OPTIONS = { seed: 3, draws: 200 } as const;

const found = (question: RoutesQuestion): RoutesResult => {
  const result = routes(question, OPTIONS);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

const sizesWrong = (question: RoutesQuestion): number => {
  const table = sizeByNeedle(question, OPTIONS);
  if (!table.ok) throw new Error(JSON.stringify(table.faults));
  return contradictedSizes({
    needleMm: question.forecast.needle,
    sizes: question.forecast.sizes,
    forecast: forecast(question.forecast, OPTIONS),
    result: found(question),
    table: table.value,
  }).length;
};

const yarnWrong = (question: RoutesQuestion): number => {
  const [plan, pace] = [skeinPlan(question, OPTIONS), pacePlan(question, OPTIONS)];
  if (!plan.ok || !pace.ok || plan.value === null) throw new Error('it cannot be asked');
  const days = paceForecast(pace.value, OPTIONS);
  const planned = found(question).routes.find((route) => route.planned);
  if (!days.ok || planned === undefined) throw new Error('there is no plan');
  return contradictedYarn({ plan: plan.value, planned, pace: days.value }).length;
};

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** What is said of random garments, and contradicted or not kept. */
export async function* figures(full: boolean) {
  const many = full ? 1000 : 60;
  const garments = fc.sample(garment, { numRuns: many, seed: SEED });
  const results = garments.map((question) => ({ question, result: found(question) }));
  const told = sum(
    results.map(({ result }) => result.routes.filter(({ knitting }) => knitting !== null).length),
  );
  yield {
    name: `measurements that a route promises and does not give, carried out row by row: ${told} routes of ${many} random garments`,
    value: sum(results.map(({ question, result }) => promisesBroken(question, result).length)),
    unit: 'measurements',
    goal: { exactly: 0 },
  };
  const fewer = full ? 400 : 30;
  yield {
    name: `statements about size and needle that another contradicts, of ${fewer} random garments`,
    value: sum(garments.slice(0, fewer).map(sizesWrong)),
    unit: 'statements',
    goal: { exactly: 0 },
  };
  const stocks = fc.sample(fc.tuple(stock, fc.boolean()), { numRuns: fewer, seed: SEED });
  yield {
    name: `statements about yarn that another contradicts, of ${fewer} random garments and stocks`,
    value: sum(
      stocks.map(([held, progressSaid], k) =>
        yarnWrong({ ...garments[k]!, stock: held, progressSaid }),
      ),
    ),
    unit: 'statements',
    goal: { exactly: 0 },
  };
}
