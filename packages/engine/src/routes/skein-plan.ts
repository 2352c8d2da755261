import { type SkeinAdvice, skeinAdvice, type YarnAmount, yarnNeeded } from '../fabric/index.ts';
import { fail, ok, type Result } from '../units/index.ts';
import { checked } from './faults.ts';
import { plannedMat } from './open/afresh.ts';
import { benchOf, drawLuck } from './open/bench.ts';
import { finishing } from './open/drying.ts';
import { yarnWork } from './price/cost.ts';
import { knitNow, NO_WORK } from './price/work.ts';
import type { RoutesOptions, RoutesQuestion } from './types.ts';
import { stockNow, underStock, yarnQuestion } from './yarn-question.ts';

/** Whether the yarn lasts, as one account: what is knit, what is left to knit, what is at hand for it. */
export interface SkeinPlan extends SkeinAdvice {
  /** What is knit already took so much; null where nothing is. */
  readonly knit: YarnAmount | null;
  /** True where what was weighed is not counted, or counted as if nothing were knit, until somebody says how much is. */
  readonly asksProgress: boolean;
}

/**
 * Whether the yarn at hand lasts for the garment as it is planned, and what to buy: the planned route's work on
 * the same draws. What was weighed is held against what is still to be knit; so are skeins by their labels, less
 * what is knit. Null where no yarn is known. Faults as `routes` has them.
 */
export const skeinPlan = (
  given: RoutesQuestion,
  options: Omit<RoutesOptions, 'onRoute'> = {},
): Result<SkeinPlan | null> => {
  const asked = checked(given, options);
  if (!asked.ok) return asked;
  const { seed = 1, draws = 10_000 } = options;
  const question = asked.value;
  const stock = stockNow(question);
  if (stock === null) return ok(null);
  const bench = benchOf(question, drawLuck(question, seed, draws));
  const yarn = yarnQuestion(question, bench.luck);
  const work = finishing(bench, question.dried ? 'none' : plannedMat(bench.forecast));
  const knit = knitNow(bench.pieces, question.progress);
  const used = yarnWork({ ...NO_WORK, knit, stitch: bench.forecast.stitch });
  const advice = skeinAdvice(yarn, yarnWork(work), stock, { normals: bench.luck.normals, used });
  if (!advice.ok) return fail(...advice.faults.map(underStock));
  const taken = yarnNeeded(yarn, used);
  return ok({
    ...advice.value,
    knit: knit.length > 0 && taken.ok ? taken.value.needed : null,
    asksProgress: !question.progressSaid && question.stock?.leftG != null,
  });
};
