/** z with P(Z ≤ z) = 0.95 for a standard normal, to full double precision. */
export const Z95 = 1.6448536269514722;

/**
 * Sample quantiles by linear interpolation between order statistics (Hyndman and Fan 1996, type 7,
 * the default of R). `values` is reordered. `levels` must rise, each in [0, 1]; values must be
 * finite and not empty. Cost is linear: order statistics are selected, not sorted.
 */
export const quantilesInPlace = (values: Float64Array, levels: readonly number[]): number[] => {
  if (values.length === 0) throw new RangeError('quantiles of nothing');
  let from = 0;
  return levels.map((level) => {
    const position = level * (values.length - 1);
    const below = Math.floor(position);
    const low = select(values, from, values.length - 1, below);
    from = below;
    const share = position - below;
    return share === 0 ? low : low + share * (smallestFrom(values, below + 1) - low);
  });
};

const smallestFrom = (values: Float64Array, from: number): number => {
  let smallest = values[from]!;
  for (let i = from + 1; i < values.length; i++) if (values[i]! < smallest) smallest = values[i]!;
  return smallest;
};

/** Hoare's selection: after it, values[k] is in place, nothing before it is larger. */
const select = (values: Float64Array, from: number, to: number, k: number): number => {
  let low = from;
  let high = to;
  while (low < high) {
    const pivot = medianOfThree(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const held = values[i]!;
      values[i++] = values[j]!;
      values[j--] = held;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else break;
  }
  return values[k]!;
};

const medianOfThree = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
