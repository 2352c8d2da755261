import { quantilesInPlace, type Spread } from '../../stats/index.ts';
import { ok, type Result } from '../../units/index.ts';
import { type Judgement, judge, worstOf } from '../knit/judge.ts';
import type { Draft } from '../open/draft.ts';
import type { Route, RouteMeasurement, RoutesQuestion } from '../types.ts';
import { type Cost, costOf, type Supply } from './cost.ts';
import { dependsOn } from './depends.ts';
import { reasonsOf } from './reasons.ts';
import { type Utility, utilityOf } from './utility.ts';

/** A route with its columns, one value for each draw. */
export interface Priced {
  readonly route: Route;
  readonly cost: Cost;
  readonly utility: Utility;
}

export const spreadOf = (values: Float64Array): Spread => {
  const [p5, p50, p95] = quantilesInPlace(values.slice(), [0.05, 0.5, 0.95]);
  return { p5: p5!, p50: p50!, p95: p95! };
};

/** Works that are the same cost the same: the same luck, so the same columns. */
export type CostOf = (draft: Draft) => Result<Told>;

/** A cost with its ranges. */
type Told = { readonly cost: Cost } & Pick<
  Route,
  'hours' | 'yarnM' | 'chanceOfYarn' | 'chanceByDate' | 'doneDay'
>;

const figuresOf = (cost: Cost): Omit<Told, 'cost'> => {
  const { hours, done } = cost;
  return {
    hours: {
      total: spreadOf(cost.work),
      knit: spreadOf(hours.knit),
      rip: spreadOf(hours.rip),
      sew: spreadOf(hours.sew),
      block: spreadOf(hours.block),
      dry: spreadOf(hours.dry),
    },
    yarnM: {
      needed: spreadOf(cost.neededM),
      returned: spreadOf(cost.returnedM),
      left: cost.leftM === null ? null : spreadOf(cost.leftM),
      over: over(cost),
    },
    chanceOfYarn: shareOfOnes(cost.enough),
    chanceByDate: cost.chanceByDate,
    doneDay: { p05: done.at(0.05), p50: done.at(0.5), p95: done.at(0.95) },
  };
};

export const costsOf = (question: RoutesQuestion, supply: Supply): CostOf => {
  const made = new Map<string, Result<Told>>();
  return ({ work, luck }) => {
    const key = JSON.stringify(work);
    const had = made.get(key);
    if (had !== undefined) return had;
    const cost = costOf(question, work, supply, luck.normals);
    const told = cost.ok ? ok({ cost: cost.value, ...figuresOf(cost.value) }) : cost;
    made.set(key, told);
    return told;
  };
};

const STATES = ['asKnit', 'dried', 'worn', 'rewashed'] as const;

const measurementsOf = ({ luck, makes }: Draft): RouteMeasurement[] =>
  makes === null
    ? []
    : luck.known.model.measurements.map(({ wanted }, at) => ({
        id: wanted.id,
        name: wanted.name,
        landmark: wanted.landmark,
        span: wanted.span,
        pinnedMm: makes[at]!.pinnedTo,
        states: Object.fromEntries(
          STATES.map((state) => [state, luck.range(at, makes[at]!, state)]),
        ) as RouteMeasurement['states'],
      }));

const over = ({ leftM, returnedM, neededM }: Cost): Spread | null =>
  leftM === null ? null : spreadOf(leftM.map((left, i) => left + returnedM[i]! - neededM[i]!));

const shareOfOnes = (column: Uint8Array | null): number | null =>
  column === null ? null : column.reduce((sum, each) => sum + each, 0) / column.length;

const judgementOf = (question: RoutesQuestion, { luck, makes, judged }: Draft): Judgement =>
  makes === null
    ? { fit: [], chanceAll: null, fits: null }
    : judge(luck, makes, judged, question.forecast.judgeAt);

/** The figures of a route. What needs the other routes (order, dominance, what to measure) comes later. */
export const priced = (question: RoutesQuestion, draft: Draft, costs: CostOf): Result<Priced> => {
  const paid = costs(draft);
  if (!paid.ok) return paid;
  const { cost, ...told } = paid.value;
  const judgement = judgementOf(question, draft);
  const utility = utilityOf(question, draft, judgement, cost);
  const { worth, score } = utility;
  const figures: Omit<Route, 'reasons'> = {
    id: draft.id,
    kind: draft.kind,
    name: draft.name,
    recipient: draft.recipient ?? null,
    planned: draft.planned ?? false,
    measurements: measurementsOf(draft),
    fit: judgement.fit,
    chanceAllFit: judgement.chanceAll,
    worst: worstOf(judgement.fit),
    counts: draft.counts ?? [],
    knitting: draft.knitting ?? null,
    steps: draft.steps ?? [],
    ...told,
    chanceByDate: draft.makes === null ? null : told.chanceByDate,
    dependsOn: dependsOn(draft, question),
    worth,
    score,
    dominatedBy: null,
    measureFirst: null,
  };
  return ok({ route: { ...figures, reasons: reasonsOf(figures, draft) }, cost, utility });
};
