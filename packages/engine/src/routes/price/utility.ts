import type { Judgement } from '../knit/judge.ts';
import type { Draft } from '../open/draft.ts';
import type { RoutesQuestion, RouteWeights } from '../types.ts';
import type { Cost } from './cost.ts';

/** What a route is worth: each part 0 to 1, its mean and its draws, weighted as the knitter does. */
export interface Utility {
  readonly worth: RouteWeights;
  readonly score: number;
  /** Weighted worth of each draw; its mean is the score. */
  readonly draws: Float64Array;
}

/** A route of so many hours is worth half of one that takes none. Assumption. */
export const HALF_HOURS = 20;
/** Yarn to be bought or used up beyond what ripping returns: so many metres are worth half. Assumption. */
export const HALF_METRES = 600;
/** The wearer goes without. Assumption. */
export const OF_OTHERS = 0.5;

const halving = (amount: number, half: number): number => half / (half + Math.max(0, amount));

/** The mean of a quantity that is certain or not with one that halves. */
const both = (certain: Uint8Array | null, i: number, graded: number): number =>
  certain === null ? graded : (certain[i]! + graded) / 2;

const mean = (values: Float64Array): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

/**
 * Worth of each draw. Fit: 1 where all that is wanted is in range, half of it on somebody else. Time: hours of
 * work, halving every `HALF_HOURS` and averaged with meeting the date where there is one. Yarn: metres beyond
 * what ripping returns, likewise, averaged with having enough where that is known. Where nothing is made, nobody
 * is fitted, and no time is won by it.
 */
export const utilityOf = (
  { weights }: Pick<RoutesQuestion, 'weights'>,
  draft: Pick<Draft, 'recipient' | 'makes'>,
  { fits }: Pick<Judgement, 'fits'>,
  cost: Pick<Cost, 'work' | 'inTime' | 'enough' | 'neededM' | 'returnedM'>,
): Utility => {
  const n = cost.work.length;
  const ofOthers = draft.recipient === undefined ? 1 : OF_OTHERS;
  const made = draft.makes !== null;
  const fit = new Float64Array(n);
  const time = new Float64Array(n);
  const yarn = new Float64Array(n);
  const draws = new Float64Array(n);
  const total = weights.fit + weights.time + weights.yarn;
  for (let i = 0; i < n; i++) {
    fit[i] = fits === null ? 0 : ofOthers * fits[i]!;
    time[i] = made ? both(cost.inTime, i, halving(cost.work[i]!, HALF_HOURS)) : 0;
    yarn[i] = both(cost.enough, i, halving(cost.neededM[i]! - cost.returnedM[i]!, HALF_METRES));
    draws[i] = (weights.fit * fit[i]! + weights.time * time[i]! + weights.yarn * yarn[i]!) / total;
  }
  const worth = { fit: mean(fit), time: mean(time), yarn: mean(yarn) };
  const score =
    (weights.fit * worth.fit + weights.time * worth.time + weights.yarn * worth.yarn) / total;
  return { worth, score, draws };
};
