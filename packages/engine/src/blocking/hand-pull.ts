/**
 * What a hand puts on one pin before it stops pulling, N, as a log-normal: the weight of half a kilogram,
 * by a factor of two either way. Assumption, no source; planned pulls on wool are about 1 N.
 */
export const HAND_PULL = { n: 5, logSd: 0.7 } as const;

/** A pull of no more than this is no pull to a hand, N: a standard deviation. Assumption. */
export const NO_PULL_SD = 0.3;

/** Keeps the logarithm of a pull finite where there is none, N. */
const LEAST = 0.1;

export const logPull = (n: number): number => Math.log(n + LEAST);
