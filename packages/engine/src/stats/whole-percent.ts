/**
 * A chance, 0 to 1, as it is printed: whole percent, 0 where it is under 1 % and 100 where it is over 99 %, for
 * draws cannot tell never from seldom. Chances that come to the same are not told apart in words either.
 */
export const wholePercent = (chance: number): number => {
  if (chance < 0.01) return 0;
  return chance > 0.99 ? 100 : Math.round(100 * chance);
};

/** `74 %`, and at the ends `under 1 %` and `over 99 %`. */
export const percentText = (chance: number): string => {
  const whole = wholePercent(chance);
  if (whole === 0) return 'under 1 %';
  return whole === 100 ? 'over 99 %' : `${whole} %`;
};
