/** `74 %`, at the ends `< 1 %` and `> 99 %`: for columns that are too narrow for words. */
export const shortPercent = (chance: number): string => {
  if (chance < 0.005) return '<\u00a01\u00a0%';
  if (chance > 0.995) return '>\u00a099\u00a0%';
  return `${Math.round(chance * 100)}\u00a0%`;
};
