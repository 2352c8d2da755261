/**
 * A chance in whole percent. Draws cannot tell never from seldom, so the ends are `under 1 %` and
 * `over 99 %`. The space inside does not break.
 */
export const chanceText = (chance: number): string => {
  if (chance < 0.005) return 'under\u00a01\u00a0%';
  if (chance > 0.995) return 'over\u00a099\u00a0%';
  return `${Math.round(chance * 100)}\u00a0%`;
};
