/** Share of the draws in which more is needed than is held and given back. */
export const chanceShort = (
  needed: Float64Array,
  returned: Float64Array,
  held: Float64Array,
): number => {
  let short = 0;
  for (let i = 0; i < needed.length; i++) if (needed[i]! > held[i]! + returned[i]!) short++;
  return short / needed.length;
};
