import { Z95 } from './quantile.ts';

/** A positive quantity known by its middle and the SD of its logarithm; 0 for one that is exact. */
export interface LogNormal {
  readonly median: number;
  readonly logSd: number;
}

/** Middle and ends of a range that holds with 90 %. */
export interface Spread {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

/** The log-normal whose 5 % and 95 % points these are; both above 0. */
export const logNormal = (p5: number, p95: number): LogNormal => ({
  median: Math.sqrt(p5 * p95),
  logSd: Math.log(p95 / p5) / (2 * Z95),
});

export const spreadOfLogNormal = ({ median, logSd }: LogNormal): Spread => ({
  p5: median * Math.exp(-Z95 * logSd),
  p50: median,
  p95: median * Math.exp(Z95 * logSd),
});
