import { knitSoFar } from '../knit/knit-so-far.ts';
import type { GarmentRecord, Pace, Weights } from '../schema/index.ts';

/** An hour on each day from Monday to Friday, two on the others: assumption, for a record without a pace. */
const USUAL_HOURS = [1, 1, 1, 1, 1, 2, 2] as const;
/** A week from asking for a skein to holding it: assumption, for a record without a pace. */
const USUAL_SHOP_DAYS = 7;
/** Fit counts twice as much as time, or as yarn: assumption, for a record that does not say. */
export const USUAL_WEIGHTS: Weights = { fit: 1, time: 0.5, yarn: 0.5 };

/** Pace of a record that says nothing of it. */
export const USUAL_PACE: Pace = {
  log: [],
  hours: [...USUAL_HOURS],
  away: [],
  shopDays: USUAL_SHOP_DAYS,
};

/** What the record does not say about routes and was taken as usual, a sentence each. */
export const routesAssumed = (record: GarmentRecord): string[] => {
  const { pace, plan } = record;
  return [
    ...knitSoFar(record).assumed,
    ...(pace === undefined
      ? [
          'Hours for knitting are not entered: 1 hour on each day from Monday to Friday and 2 on the others are assumed (pace.hours).',
          `How long another skein takes is not entered: ${USUAL_SHOP_DAYS} days are assumed (pace.shopDays).`,
        ]
      : []),
    ...(plan.weights === undefined
      ? ['What counts is not entered: fit counts twice as much as time, or as yarn (plan.weights).']
      : []),
  ];
};
