import { type SkeinAdvice, skeinAdvice } from '../fabric/index.ts';
import { fail, ok, type Result } from '../units/index.ts';
import { checked } from './faults.ts';
import { plannedMat } from './open/afresh.ts';
import { benchOf, drawLuck } from './open/bench.ts';
import { finishing } from './open/drying.ts';
import { yarnWork } from './price/cost.ts';
import { knitNow } from './price/work.ts';
import type { RoutesOptions, RoutesQuestion } from './types.ts';
import { underStock, yarnQuestion } from './yarn-question.ts';

/**
 * Whether the yarn at hand lasts for the garment as it is planned, and what to buy: the planned route's work on
 * the same draws. What was weighed is held against what is still to be knit; skeins by their labels alone
 * against all of the garment, for they say nothing of what is used up. Null where no yarn is known. Faults as
 * `routes` has them.
 */
export const skeinPlan = (
  given: RoutesQuestion,
  options: Omit<RoutesOptions, 'onRoute'> = {},
): Result<SkeinAdvice | null> => {
  const asked = checked(given, options);
  if (!asked.ok) return asked;
  const { seed = 1, draws = 10_000 } = options;
  const { stock, progress, dried } = asked.value;
  if (stock === null) return ok(null);
  const bench = benchOf(asked.value, drawLuck(asked.value, seed, draws));
  const work = finishing(bench, dried ? 'none' : plannedMat(bench.forecast));
  const used = stock.leftG === null ? knitNow(bench.pieces, progress) : [];
  const advice = skeinAdvice(
    yarnQuestion(asked.value, bench.luck),
    yarnWork({ ...work, knit: together([...used, ...work.knit]) }),
    stock,
    { normals: bench.luck.normals },
  );
  return advice.ok ? advice : fail(...advice.faults.map(underStock));
};

/** A piece that is knit in part is one piece, in the order of knitting. */
const together = (fabrics: readonly { readonly name: string; readonly stitches: number }[]) => {
  const all = new Map<string, number>();
  for (const { name, stitches } of fabrics) all.set(name, (all.get(name) ?? 0) + stitches);
  return [...all].map(([name, stitches]) => ({ name, stitches }));
};
