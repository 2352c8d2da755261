import { logNormal } from '../../stats/index.ts';
import type { Stitch } from '../../textile/index.ts';
import type { Relaxation } from '../loop-geometry.ts';
import type { RestState } from '../specimen.ts';

/**
 * Yarn in one stitch of one acrylic yarn, mm: Singal et al. 2024, Nature Communications 15, 2622,
 * configuration files of the open data set.
 */
export const PUBLISHED_LOOPS_MM = {
  stockinette: 11.28,
  garter: 10.55,
  'rib-1x1': 16.1,
  seed: 15.67,
} as const satisfies Partial<Record<Stitch, number>>;

/** A log ratio with its SD. */
export interface Ratio {
  readonly mean: number;
  readonly sd: number;
}

/** Beyond what one yarn showed: hands, needles, other yarns. Assumption. */
const RATIO_SD = 0.08;

/**
 * One data set says how far a pattern differs from stockinette; knitters hold that a stitch takes
 * about the same whatever it is (common practice, no source). The range spans both.
 */
const spanning = (stitch: keyof typeof PUBLISHED_LOOPS_MM): Ratio => {
  const published = Math.log(PUBLISHED_LOOPS_MM[stitch] / PUBLISHED_LOOPS_MM.stockinette);
  return { mean: published / 2, sd: Math.hypot(published / 2, RATIO_SD) };
};

/** Yarn in a stitch over that of stockinette in the same hand. Rows without a published length are assumptions. */
export const STITCH_RATIOS: Readonly<Record<Stitch, Ratio>> = {
  stockinette: { mean: 0, sd: 0 },
  garter: spanning('garter'),
  'rib-1x1': spanning('rib-1x1'),
  seed: spanning('seed'),
  lace: { mean: 0, sd: 0.2 },
  cables: { mean: 0.05, sd: 0.12 },
  colourwork: { mean: 0, sd: 0.15 },
  other: { mean: 0.05, sd: 0.25 },
};

/** Which published relaxation a state is nearest to: no wash is dry relaxed, a wash wet relaxed, several fully. */
export const RELAXATION_OF: Readonly<Record<RestState, Relaxation>> = {
  asKnit: 'dryRelaxed',
  wet: 'wetRelaxed',
  dried: 'wetRelaxed',
  rewashed: 'fullyRelaxed',
};

/** How far hand knitting departs from constants of machine-knit wool, and from its state: shared by both directions. Assumption. */
export const LOOP_SHARED_SD = 0.06;
/** What each direction errs by itself; 19.3 mm by width and 18.1 by row of one gauge differ by 6.5 %. Assumption. */
export const LOOP_OWN_SD = 0.05;

/** A label's metres per 100 g. Assumption. */
export const LABEL_SD = 0.03;
/** Beyond the printed range of a class. Assumption. */
export const CLASS_SD = 0.1;
/** From fine lace to jumbo, metres per 100 g, where nothing is known. */
export const ANY_METRES = logNormal(40, 900);
/** A ball as sold against its label, as a share. Assumption. */
export const BALL_SD = 0.02;
/** g; a kitchen scale of 1 g. Assumption. */
export const SCALE_SD_G = 1;
/** A weighed piece against the garment in the same stitch and hand. Assumption. */
export const DRIFT_SD = 0.025;
/** Stitches worked out from extents and gauge, not counted. Assumption. */
export const EXTENTS_SD = 0.04;

/** Yarn of a cast-on or bound-off stitch over that of one stitch: three widths, from memory, over kw = 3.8 widths. */
export const EDGE = { ...logNormal(0.55, 1.13), rows: 2 * 0.79, rowsSd: 0.5 } as const;
/** Sewing yarn over the seam's length. Common practice, no source. */
export const SEAM = logNormal(2.2, 4);
/** mm left at each end of a piece of yarn. Common practice, no source. */
export const TAIL_MM = logNormal(100, 250);
/** Share of ripped yarn that can be knit again. Common practice, no source. */
export const RETURNED = logNormal(0.85, 0.97);

/** A chance of running out below this counts as enough yarn. */
export const MOST_SHORT = 0.05;
