/** A scale that lengths are drawn on: from `low` to `high`, millimetres. */
export interface Scale {
  readonly low: number;
  readonly high: number;
}

/** A scale that holds all the given lengths with some air at both ends; nulls are left out. */
export const scaleFor = (values: readonly (number | null | undefined)[]): Scale => {
  const known = values.filter((value): value is number => typeof value === 'number');
  if (known.length === 0) return { low: 0, high: 1 };
  const low = Math.min(...known);
  const high = Math.max(...known);
  const air = Math.max((high - low) * 0.06, Math.abs(high) * 0.005, 0.5);
  return { low: low - air, high: high + air };
};

/** Where a length lies on the scale, in percent from its left end, kept between 0 and 100. */
export const percentOn = ({ low, high }: Scale, value: number): number =>
  Math.min(100, Math.max(0, (100 * (value - low)) / (high - low)));
