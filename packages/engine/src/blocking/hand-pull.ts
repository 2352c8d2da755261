/**
 * What a hand puts on one pin before it stops pulling, N, as a log-normal: the weight of half a kilogram,
 * by a factor of two either way. Assumption, no source; planned pulls on wool are about 1 N.
 */
export const HAND_PULL = { n: 5, logSd: 0.7 } as const;

/**
 * The most that a pin is planned to bear, N: what a hand puts on it. A comb is put in by one hand and bears as
 * much in all; a wire as much at each of the pins along it.
 */
export const MOST_PULL = HAND_PULL.n;

/**
 * The most that a pin which is in the mat is thought to bear, N: three standard deviations beyond what a hand
 * puts on it. A fabric that would need more is not what lies there.
 */
export const EVER_PULLED = HAND_PULL.n * Math.exp(3 * HAND_PULL.logSd);

/** A pull of no more than this is no pull to a hand, N: a standard deviation. Assumption. */
export const NO_PULL_SD = 0.3;

/** Keeps the logarithm of a pull finite where there is none, N. */
const LEAST = 0.1;

export const logPull = (n: number): number => Math.log(n + LEAST);
