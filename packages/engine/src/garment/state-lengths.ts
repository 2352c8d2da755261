import type { ForecastState } from '../fabric/index.ts';
import type { Draws } from './draws.ts';

/** How one measurement passes through the states. */
export interface Passage {
  /** Index of the measurement. */
  readonly at: number;
  readonly direction: 'width' | 'length';
  /** Length that it is pinned to; null where it dries without pins. */
  readonly pinnedTo: number | null;
  /** Largest stretch that a pin is trusted with, as a strain of the wet rest length. */
  readonly pinLimit: number;
  /** Strain while worn: positive for lengths that hang, negative for widths that draw in. */
  readonly hang: number;
  /** SD of the logarithm of that strain. */
  readonly hangLogSd: number;
}

/** The same in a garment `factor` times as large. */
export const scaledBy = (passage: Passage, factor: number): Passage =>
  passage.pinnedTo === null ? passage : { ...passage, pinnedTo: passage.pinnedTo * factor };

/** A strain is never carried past what the fabric can give, nor a width drawn in to nothing. */
const HANG_BOUND = 0.6;

/**
 * Lengths in one state, a value per draw, in millimetres. `logAsKnit` has the log lengths as knit. Pins pull
 * and do not push: where the wet fabric is already larger than the pinned length it stays as it lies.
 */
export const lengthsIn = (
  draws: Draws,
  logAsKnit: Float64Array,
  passage: Passage,
  state: ForecastState,
): Float64Array => {
  const out = new Float64Array(draws.n);
  const { direction, at } = passage;
  const own = draws.own[at]!;
  const growth = plus(draws.driedOverAsKnit[direction], own.dried);
  const ratio =
    state === 'rewashed'
      ? plus(draws.rewashedOverDried[direction], own.rewashed)
      : plus(draws.wetOverDried[direction], own.wet);
  for (let i = 0; i < draws.n; i++) {
    const knit = logAsKnit[i]!;
    if (state === 'asKnit') out[i] = Math.exp(knit);
    else if (state === 'wet' || state === 'rewashed')
      out[i] = Math.exp(knit + growth[i]! + ratio[i]!);
    else {
      const dried =
        Math.exp(knit + growth[i]!) *
        (1 + gained(draws, passage, i, knit + growth[i]! + ratio[i]!));
      out[i] = state === 'dried' ? dried : dried * (1 + worn(draws, passage, i));
    }
  }
  return out;
};

const plus = (a: Float64Array, b: Float64Array | undefined): Float64Array =>
  b === undefined ? a : a.map((value, i) => value + b[i]!);

/** Share of length that pinning leaves behind in draw i. */
const gained = (draws: Draws, passage: Passage, i: number, logWet: number): number => {
  if (passage.pinnedTo === null) return 0;
  const stretch = passage.pinnedTo / Math.exp(logWet) - 1;
  return draws.kept[i]! * Math.min(Math.max(stretch, 0), passage.pinLimit);
};

const worn = (draws: Draws, passage: Passage, i: number): number => {
  if (passage.hang === 0) return 0;
  const strain = passage.hang * Math.exp(passage.hangLogSd * draws.give[i]!);
  return Math.min(Math.max(strain, -HANG_BOUND), HANG_BOUND);
};
