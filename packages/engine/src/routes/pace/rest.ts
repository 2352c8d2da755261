import { LONG_DAY_HOURS } from './assumptions.ts';

/**
 * A word of care where some day is planned with more than `LONG_DAY_HOURS` of knitting; null
 * otherwise. The limit is an assumption; pain is for qualified people to judge.
 */
export const restCaution = (hours: readonly number[]): string | null => {
  const most = Math.max(0, ...hours);
  return most > LONG_DAY_HOURS
    ? `Up to ${Number(most.toFixed(1))} hours of knitting in one day is a lot for hands and wrists. Rest and stretch often, stop when something hurts, and ask a doctor or a physiotherapist if it does not pass.`
    : null;
};
