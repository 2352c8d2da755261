import { type Bins, binsOf } from './bins.ts';

/** What a measurement is worth, from draws of what it would read and of what each route is worth. */
export interface SampleInformation {
  /** Expected gain of choosing after it: 0 or more. */
  readonly gain: number;
  /** Chance that it changes the choice. */
  readonly chanceOfChange: number;
  /** Share of the variance of each route's worth that it explains, 0 to 1. */
  readonly explains: readonly number[];
}

/** Sums of a route's worth over the draws of each bin, even and odd draws apart. */
interface Sums {
  readonly halves: readonly [Float64Array, Float64Array];
  readonly squares: number;
}

const sumsOf = (worth: Float64Array, { of, count }: Bins): Sums => {
  const halves = [new Float64Array(count), new Float64Array(count)] as const;
  let squares = 0;
  for (let i = 0; i < worth.length; i++) {
    halves[i % 2]![of[i]!]! += worth[i]!;
    squares += worth[i]! * worth[i]!;
  }
  return { halves: [halves[0], halves[1]], squares };
};

const sizes = ({ of, count }: Bins): readonly [Float64Array, Float64Array] => {
  const out = [new Float64Array(count), new Float64Array(count)] as const;
  for (let i = 0; i < of.length; i++) out[i % 2]![of[i]!]!++;
  return out;
};

const best = (values: readonly number[]): number =>
  values.reduce((top, value, k) => (value > values[top]! ? k : top), 0);

const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);

/** Share of the variance between bins, corrected for the noise of their means (ω² of Hays 1963, from memory). */
const explained = (
  { halves, squares }: Sums,
  sized: readonly [Float64Array, Float64Array],
): number => {
  const count = sized[0].length;
  let n = 0;
  let total = 0;
  let between = 0;
  let filled = 0;
  for (let bin = 0; bin < count; bin++) {
    const size = sized[0][bin]! + sized[1][bin]!;
    if (size === 0) continue;
    const worth = halves[0][bin]! + halves[1][bin]!;
    between += (worth * worth) / size;
    total += worth;
    n += size;
    filled++;
  }
  const all = squares - (total * total) / n;
  if (!(all > 1e-12 * n) || filled >= n) return 0;
  const within = squares - between;
  return Math.min(1, Math.max(0, 1 - ((n - 1) * within) / ((n - filled) * all)));
};

/** Choosing by one half of the draws, judged by the other: no luck of the draws is taken for insight. */
const halfGain = (
  all: readonly Sums[],
  sized: readonly [Float64Array, Float64Array],
  train: 0 | 1,
) => {
  const test = train === 0 ? 1 : 0;
  const n = sum(sized[test]);
  const before = best(all.map(({ halves }) => sum(halves[train])));
  let after = 0;
  let changed = 0;
  for (let bin = 0; bin < sized[0].length; bin++) {
    const pick = best(all.map(({ halves }) => halves[train][bin]!));
    const gained = all[pick]!.halves[test][bin]! - all[before]!.halves[test][bin]!;
    after += gained;
    if (pick !== before && gained > 0) changed += sized[test][bin]!;
  }
  return { gain: after / n, changed: changed / n };
};

/**
 * Expected value of sample information: the mean, over what may be read, of the best expected worth then, less
 * the best expected worth now. The expectation given a reading is the mean over the draws whose readings are
 * near (a regression on the same draws, as Strong, Oakley and Brennan 2014, Med. Decis. Making 34, 311, do by
 * other means); it is estimated on half of the draws and judged on the other.
 *
 * @param worths one column a route, equally long.
 * @param readings one or two columns: what the measurement reads in each draw, its own error included.
 */
export const sampleInformation = (
  worths: readonly Float64Array[],
  readings: readonly Float64Array[],
): SampleInformation => {
  const bins = binsOf(readings);
  const sized = sizes(bins);
  const all = worths.map((worth) => sumsOf(worth, bins));
  const [even, odd] = [halfGain(all, sized, 0), halfGain(all, sized, 1)];
  const gain = Math.max(0, (even.gain + odd.gain) / 2);
  return {
    gain,
    chanceOfChange: gain > 0 ? (even.changed + odd.changed) / 2 : 0,
    explains: all.map((each) => explained(each, sized)),
  };
};
