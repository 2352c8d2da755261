import type { Spread } from './types.ts';

const LEVELS = [0.05, 0.5, 0.95] as const;

/**
 * 5, 50 and 95 % points of weighted draws, linear between the middles of their weights; at the
 * ends the first and last draw. Weights are 0 or more and add up to 1; at least one draw.
 */
export const weightedSpread = (values: Float64Array, weights: Float64Array): Spread => {
  const order = Array.from(values.keys()).sort((a, b) => values[a]! - values[b]!);
  const middles = new Float64Array(order.length);
  let below = 0;
  order.forEach((index, rank) => {
    middles[rank] = below + weights[index]! / 2;
    below += weights[index]!;
  });
  const [p5, p50, p95] = LEVELS.map((level) => at(level, order, middles, values));
  return { p5: p5!, p50: p50!, p95: p95! };
};

const at = (
  level: number,
  order: readonly number[],
  middles: Float64Array,
  values: Float64Array,
): number => {
  const above = middles.findIndex((middle) => middle >= level);
  if (above === 0) return values[order[0]!]!;
  if (above < 0) return values[order.at(-1)!]!;
  const [low, high] = [values[order[above - 1]!]!, values[order[above]!]!];
  const gap = middles[above]! - middles[above - 1]!;
  const share = gap > 0 ? (level - middles[above - 1]!) / gap : 1;
  return low + share * (high - low);
};

/** Share of the weight whose draw passes. */
export const weightedChance = (
  values: Float64Array,
  weights: Float64Array,
  passes: (value: number) => boolean,
): number => weights.reduce((sum, weight, i) => sum + (passes(values[i]!) ? weight : 0), 0);
