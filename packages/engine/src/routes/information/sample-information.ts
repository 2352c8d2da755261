import { polynomialsOf } from './polynomials.ts';
import { halfFit } from './regression.ts';

/** What a measurement is worth, from draws of what it would read and of what each route is worth. */
export interface SampleInformation {
  /** Expected gain of choosing after it: 0 or more. */
  readonly gain: number;
  /** Chance that it changes the choice; 0 where that gains nothing. */
  readonly chanceOfChange: number;
  /** Share of the variance of each route's worth that it explains, 0 to 1. */
  readonly explains: readonly number[];
}

const best = (values: readonly number[]): number =>
  values.reduce((top, value, k) => (value > values[top]! ? k : top), 0);

/** Sum over the draws of one half. */
const halfSum = (values: Float64Array, half: 0 | 1): number => {
  let sum = 0;
  for (let i = half; i < values.length; i += 2) sum += values[i]!;
  return sum;
};

/** Largest of the fitted worths in a draw. */
const bestAt = (fitted: readonly Float64Array[], i: number): number => {
  let top = 0;
  for (let k = 1; k < fitted.length; k++) if (fitted[k]![i]! > fitted[top]![i]!) top = k;
  return top;
};

interface Half {
  readonly gain: number;
  readonly changed: number;
  /** Share of each worth's variance that the fit of the other half explains here; may be below 0. */
  readonly explains: readonly number[];
}

const explained = (worth: Float64Array, fitted: Float64Array, half: 0 | 1): number => {
  const mean = halfSum(worth, half) / Math.ceil((worth.length - half) / 2);
  let rest = 0;
  let all = 0;
  for (let i = half; i < worth.length; i += 2) {
    rest += (worth[i]! - fitted[i]!) ** 2;
    all += (worth[i]! - mean) ** 2;
  }
  return all > 1e-12 * worth.length ? 1 - rest / all : 0;
};

/** Learnt on one half of the draws, judged by the other: no luck of the draws is taken for insight. */
const judged = (
  worths: readonly Float64Array[],
  columns: readonly Float64Array[],
  learn: 0 | 1,
): Half => {
  const test = learn === 0 ? 1 : 0;
  const { predict } = halfFit(columns, learn);
  const fitted = worths.map(predict);
  const now = best(worths.map((worth) => halfSum(worth, learn)));
  const n = worths[0]!.length;
  let gain = 0;
  let changed = 0;
  let count = 0;
  for (let i: number = test; i < n; i += 2) {
    const pick = bestAt(fitted, i);
    gain += worths[pick]![i]! - worths[now]![i]!;
    if (pick !== now) changed++;
    count++;
  }
  return {
    gain: gain / count,
    changed: changed / count,
    explains: worths.map((worth, k) => explained(worth, fitted[k]!, test)),
  };
};

/**
 * Expected value of sample information: the mean, over what may be read, of the best expected worth then, less
 * the best expected worth now. The expectation given a reading is a regression over the same draws on
 * polynomials of the reading (as Strong, Oakley and Brennan 2014, Med. Decis. Making 34, 311, do with smoother
 * ones), learnt on half of the draws and judged on the other, both ways round. It errs downwards where the
 * choice hangs on a sharp edge of the reading.
 *
 * @param worths one column a route, equally long, one at least.
 * @param readings one or two columns: what the measurement reads in each draw, its own error included.
 */
export const sampleInformation = (
  worths: readonly Float64Array[],
  readings: readonly Float64Array[],
): SampleInformation => {
  const columns = polynomialsOf(readings);
  const [a, b] = [judged(worths, columns, 0), judged(worths, columns, 1)];
  const gain = Math.max(0, (a.gain + b.gain) / 2);
  return {
    gain,
    chanceOfChange: gain > 0 ? (a.changed + b.changed) / 2 : 0,
    explains: a.explains.map((one, k) => Math.min(1, Math.max(0, (one + b.explains[k]!) / 2))),
  };
};
