import { type LogNormal, quantilesInPlace, Z95 } from '../stats/index.ts';
import { fail, ok, type Result } from '../units/index.ts';
import { checked } from './faults.ts';
import { plannedMat } from './open/afresh.ts';
import { benchOf, drawLuck } from './open/bench.ts';
import { finishing } from './open/drying.ts';
import type { PaceQuestion } from './pace/index.ts';
import { costOf, paceQuestion, supplyOf } from './price/cost.ts';
import { knitNow } from './price/work.ts';
import type { RoutesOptions, RoutesQuestion } from './types.ts';
import { underStock, yarnQuestion } from './yarn-question.ts';

/** Nothing is ever so far off that it counts: no skein is to be had. */
const NEVER_DAYS = 1000;
/** A share of the yarn below this is none. */
const NONE = 1e-6;

const logNormalOf = (shares: Float64Array): LogNormal => {
  const logs = shares.map((share) => Math.log(Math.max(share, NONE)));
  const [low, middle, high] = quantilesInPlace(logs, [0.05, 0.5, 0.95]);
  return { median: Math.exp(middle!), logSd: (high! - low!) / (2 * Z95) };
};

/**
 * What is left to do as the garment is planned, asked as a question of pace: the pieces with their stitches,
 * the seams, the drying, and yarn that may run out. The same work as the planned route's, which counts the
 * handling on the mat beside it. Faults as `routes` has them.
 */
export const pacePlan = (
  given: RoutesQuestion,
  options: Omit<RoutesOptions, 'onRoute'> = {},
): Result<PaceQuestion> => {
  const asked = checked(given, options);
  if (!asked.ok) return asked;
  const { seed = 1, draws = 10_000 } = options;
  const question = asked.value;
  const bench = benchOf(question, drawLuck(question, seed, draws));
  const { normals } = bench.luck;
  const knit = knitNow(bench.pieces, question.progress);
  const supply = supplyOf(question, yarnQuestion(question, bench.luck), knit, normals);
  if (!supply.ok) return fail(...supply.faults.map(underStock));
  const work = finishing(bench, question.dried ? 'none' : plannedMat(bench.forecast));
  const cost = costOf(question, work, supply.value, normals);
  if (!cost.ok) return cost;
  const { leftM, neededM, enough } = cost.value;
  const plain = paceQuestion(question, work);
  if (leftM === null || enough === null || neededM.every((m) => m === 0)) return ok(plain);
  const shares = leftM.map((left, i) => left / neededM[i]!);
  return ok({
    ...plain,
    yarn: {
      heldOverNeeded: logNormalOf(shares),
      shopDays: question.pace.shopDays ?? NEVER_DAYS,
      order: 'at-once',
      chanceShort: 1 - enough.reduce((sum, each) => sum + each, 0) / enough.length,
    },
  });
};
