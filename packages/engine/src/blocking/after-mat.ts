import type { Range } from '../garment/index.ts';
import { Z95 } from '../stats/index.ts';
import type { Drawn } from './draws.ts';
import type { Ruler } from './measure.ts';
import { restOf } from './measure.ts';
import type { AfterMat } from './types.ts';

/** Two pins set by tape: SD of the distance between them, mm. Assumption. */
const PINNED_SD = 2;

const rangeAbout = (middle: number, variance: number): Range => {
  const reach = Z95 * Math.sqrt(variance);
  return { p05Mm: Math.max(0, middle - reach), p50Mm: middle, p95Mm: middle + reach };
};

const spread = (middle: number, values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, v) => sum + (v - middle) ** 2, 0) / values.length;

export interface AfterMatRanges {
  readonly reachedMm: Range;
  readonly afterDryingMm: Range;
  readonly afterRewashMm: Range;
}

/**
 * A dimension on the mat, dried and unpinned, and rewashed: dried = rest · dried/wet · (1 + kept ·
 * stretch), with the stretch over the wet rest; a soak without pins gives all of the stretch back.
 */
export const rangesOf = (
  ruler: Ruler,
  reached: number,
  drawn: readonly Drawn[],
  { kept, driedOverWet, rewashedOverWet }: AfterMat,
): AfterMatRanges => {
  const { direction } = ruler.dimension;
  const rest = restOf(ruler);
  const dry = Math.exp(driedOverWet[direction].mean);
  const dried = (r: number, p: number) => dry * (r + kept.mean * (p - r));
  const rewashed = (r: number) => r * Math.exp(rewashedOverWet[direction].mean);
  const [middle, later] = [dried(rest, reached), rewashed(rest)];
  const own = PINNED_SD ** 2;
  return {
    reachedMm: rangeAbout(
      reached,
      own +
        spread(
          reached,
          drawn.map((d) => d.reached),
        ),
    ),
    afterDryingMm: rangeAbout(
      middle,
      (dry * kept.mean) ** 2 * own +
        spread(
          middle,
          drawn.map((d) => dried(d.rest, d.reached)),
        ) +
        (dry * kept.sd * (reached - rest)) ** 2 +
        (driedOverWet[direction].sd * middle) ** 2,
    ),
    afterRewashMm: rangeAbout(
      later,
      spread(
        later,
        drawn.map((d) => rewashed(d.rest)),
      ) +
        (rewashedOverWet[direction].sd * later) ** 2,
    ),
  };
};
