/** A place with what was found there. */
export interface Found<T> {
  readonly z: readonly number[];
  readonly score: number;
  readonly found: T;
}

export interface CompassAsked {
  /** First step along each unknown, halved twice whenever no way is better; below `settled` it ends. */
  readonly step: number;
  readonly settled: number;
  /** Steps that are taken at most. */
  readonly most: number;
  /** Unknowns that may move. */
  readonly free: readonly number[];
}

export interface CompassEnd<T> extends Found<T> {
  readonly iterations: number;
  /** The shortest step by which no unknown was found better, each by itself. */
  readonly residual: number;
}

/**
 * Compass search (Hooke and Jeeves 1961; Kolda, Lewis and Torczon 2003, SIAM Review 45, 385): one unknown
 * at a time, either way, for a score with kinks that no slope tells of. `at` gives null where it was
 * stopped; then so is this. Ends with `residual` above `settled` where `most` steps were not enough.
 */
export const compassSearch = <T>(
  from: Found<T>,
  at: (z: readonly number[]) => Found<T> | null,
  { step, settled, most, free }: CompassAsked,
): CompassEnd<T> | null => {
  let [best, length, residual, iterations] = [from, step, step, 0];
  while (residual > settled && iterations < most) {
    const next = better(best, at, free, length);
    if (next === null) return null;
    iterations++;
    if (next !== best) {
      best = next;
      continue;
    }
    residual = length;
    length /= 4;
  }
  return { ...best, iterations, residual };
};

/** The first way that is better by a step of that length; where it stood if none is; null where stopped. */
const better = <T>(
  best: Found<T>,
  at: (z: readonly number[]) => Found<T> | null,
  free: readonly number[],
  length: number,
): Found<T> | null => {
  for (const k of free)
    for (const by of [length, -length]) {
      const tried = at(best.z.map((each, i) => (i === k ? each + by : each)));
      if (tried === null) return null;
      if (tried.score < best.score) return tried;
    }
  return best;
};
