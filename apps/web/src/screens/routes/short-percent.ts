import { wholePercent } from '@dryflat/engine/stats';

/** `74 %`, at the ends `< 1 %` and `> 99 %`: for columns that are too narrow for words. */
export const shortPercent = (chance: number): string => {
  const whole = wholePercent(chance);
  if (whole === 0) return '<\u00a01\u00a0%';
  return whole === 100 ? '>\u00a099\u00a0%' : `${whole}\u00a0%`;
};
