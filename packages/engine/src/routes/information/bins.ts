/** Which of `count` bins each value falls into, bins as full as each other; ties share a bin. */
const cut = (
  values: Float64Array,
  indices: Int32Array,
  count: number,
  first: number,
  bins: Int32Array,
): void => {
  const sorted = Float64Array.from(indices, (i) => values[i]!).sort();
  const edges = Array.from(
    { length: count - 1 },
    (_, k) => sorted[Math.floor(((k + 1) * sorted.length) / count)]!,
  );
  for (const i of indices) {
    let bin = 0;
    while (bin < edges.length && values[i]! >= edges[bin]!) bin++;
    bins[i] = first + bin;
  }
};

/** Draws in a bin: enough that its mean is known to a twelfth of a draw's SD. */
const PER_BIN = 150;
const MOST_BINS = 64;

export interface Bins {
  readonly of: Int32Array;
  readonly count: number;
}

/**
 * Draws that would give nearly the same readings, in bins: by one reading, or by the first and within it by
 * the second.
 */
export const binsOf = (readings: readonly Float64Array[]): Bins => {
  const [first, second] = readings;
  if (first === undefined) throw new RangeError('a measurement without a reading');
  const n = first.length;
  const room = Math.max(1, Math.min(MOST_BINS, Math.floor(n / PER_BIN)));
  const all = Int32Array.from({ length: n }, (_, i) => i);
  const bins = new Int32Array(n);
  const outer = second === undefined ? room : Math.max(1, Math.floor(Math.sqrt(room)));
  cut(first, all, outer, 0, bins);
  if (second === undefined) return { of: bins, count: room };
  const of = new Int32Array(n);
  for (let bin = 0; bin < outer; bin++)
    cut(
      second,
      all.filter((i) => bins[i] === bin),
      outer,
      bin * outer,
      of,
    );
  return { of, count: outer * outer };
};
