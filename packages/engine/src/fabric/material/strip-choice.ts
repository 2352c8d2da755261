import type { FibreShare } from '../../textile/index.ts';
import { BETWEEN_YARNS_LOG_SD, leanOf } from '../extension-choice.ts';
import type { PulledYarn } from '../extension-data.ts';
import type { Direction } from '../specimen.ts';
import type { StretchLaw } from '../stretch/law.ts';
import { STRIPS } from '../stretch/strips.ts';
import { departureOf, type MaterialStitch } from './departures.ts';
import { givingLaw, lawBetween } from './scale-law.ts';

export interface StripChoice {
  /** Load of a dry strip that is free to narrow, from true rest. */
  readonly law: StretchLaw;
  /** SD of the log of its strain under a small load, yarn and stitch together. */
  readonly logSd: number;
  /** SD of the log of its limit. */
  readonly limitLogSd: number;
  /** True where yarn and stitch were both pulled. */
  readonly pulled: boolean;
  readonly because: string;
}

/**
 * Limits are surer than what it takes to come near them: the fitted limits of two yarns of one stitch
 * differ by a log-SD of 0.11, hardly related to how far they give under a small load.
 */
export const LIMIT_LOG_SD = 0.11;

/**
 * Fitted law for a stitch in a blend, dry: acrylic and cotton as pulled, every other fibre between or
 * beside them, every other stitch a departure from one that was pulled.
 */
export const stripFor = (
  stitch: MaterialStitch,
  fibres: readonly FibreShare[],
  direction: Direction,
): StripChoice => {
  const fibre = leanOf(fibres);
  const departure = departureOf(stitch);
  const of = (yarn: PulledYarn) => STRIPS[`${yarn} ${departure.as} ${direction}`]!;
  return {
    law: givingLaw(lawBetween(of('acrylic'), of('cotton'), fibre.cotton), departure[direction]),
    logSd: Math.hypot(fibre.logSd, departure.logSd),
    // Half of the doubt of a stitch that was not pulled is taken to be of its limit. Assumption.
    limitLogSd: Math.hypot(LIMIT_LOG_SD, departure.logSd / 2),
    pulled: fibre.logSd === BETWEEN_YARNS_LOG_SD && departure.logSd === 0,
    because: `${departure.because}; ${fibre.because}`,
  };
};
