import type { Fault } from '../units/index.ts';

/** A fault of the drying question; its code begins with `dry-`. */
export const dryFault = (
  code: string,
  field: string,
  given: unknown,
  problem: string,
  mend: string,
): Fault => ({ code: `dry-${code}`, field, given: String(given), problem, mend });

/** False for what is no number. */
export const between = (value: number, least: number, most: number): boolean =>
  value >= least && value <= most;
