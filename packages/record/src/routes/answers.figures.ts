import { forecast, outlineOf } from '@dryflat/engine/garment';
import {
  paceForecast,
  pacePlan,
  type RoutesQuestion,
  routes,
  sizeByNeedle,
  skeinPlan,
} from '@dryflat/engine/routes';
import { contradictedSizes, contradictedYarn, promisesBroken } from '@dryflat/engine/routes/check';
import type { Result } from '@dryflat/engine/units';
import { EXAMPLES } from '../examples.ts';
import { askRoutes } from './ask-routes.ts';

const TODAY = '2031-01-20';
/** Chances are compared with each other, not with the truth: few draws tell as much as many. */
const OPTIONS = { seed: 1, draws: 200 } as const;

const right = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

/** Every example as it is, and with so much of each piece knit. */
const questions = (shares: readonly number[]): RoutesQuestion[] =>
  EXAMPLES.flatMap(({ record }) => {
    const question = right(askRoutes(record, TODAY));
    const { pieces } = outlineOf(record.kind, {});
    return [
      question,
      ...shares.map((share) => ({
        ...question,
        progress: pieces.map(({ name }) => ({ piece: name, share })),
        progressSaid: true,
      })),
    ];
  });

const sizesWrong = (question: RoutesQuestion): number =>
  contradictedSizes({
    needleMm: question.forecast.needle,
    sizes: question.forecast.sizes,
    forecast: forecast(question.forecast, OPTIONS),
    result: right(routes(question, OPTIONS)),
    table: right(sizeByNeedle(question, OPTIONS)),
  }).length;

const yarnWrong = (question: RoutesQuestion): number => {
  const plan = right(skeinPlan(question, OPTIONS));
  const planned = right(routes(question, OPTIONS)).routes.find((route) => route.planned);
  const pace = right(paceForecast(right(pacePlan(question, OPTIONS)), OPTIONS));
  return plan === null || planned === undefined
    ? 0
    : contradictedYarn({ plan, planned, pace }).length;
};

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** What is said of the examples, and contradicted or not kept. */
export async function* figures(full: boolean) {
  const all = questions(full ? [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1] : [0.5, 1]);
  const told = all.map((question) => ({ question, result: right(routes(question, OPTIONS)) }));
  const ways = sum(
    told.map(({ result }) => result.routes.filter(({ knitting }) => knitting !== null).length),
  );
  yield {
    name: `measurements that a route promises and does not give, carried out row by row: ${ways} routes of the examples`,
    value: sum(told.map(({ question, result }) => promisesBroken(question, result).length)),
    unit: 'measurements',
    goal: { exactly: 0 },
  };
  yield {
    name: `statements about size and needle that another contradicts, of the examples at ${all.length} stages`,
    value: sum(all.map(sizesWrong)),
    unit: 'statements',
    goal: { exactly: 0 },
  };
  yield {
    name: `statements about yarn that another contradicts, of the examples at ${all.length} stages`,
    value: sum(all.map(yarnWrong)),
    unit: 'statements',
    goal: { exactly: 0 },
  };
}
