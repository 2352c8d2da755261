import { logNormal } from '../../stats/index.ts';

/** Stitches a minute in plain fabric, before any was timed. Common practice, no source. */
export const PLAIN_PACE = logNormal(15, 40);
/** Pace in crossed, turned or coloured stitches over plain: half. Common practice, no source; its SD is an assumption. */
export const WORKED_RATIO = { median: 0.5, logSd: 0.25 } as const;
/** Taking back over knitting plain. Common practice, no source. */
export const RIPPED_RATIO = logNormal(5, 20);

/** From one sitting to another. Assumption. */
export const SITTING_SD = 0.15;
/** A sitting's pace errs by minutes rounded to one: uniform, SD 1/√12. */
export const MINUTE_SD = 1 / Math.sqrt(12);
/** Timed stitches against whole evenings: counting, mistakes, interruptions. No timing narrows it. Assumption. */
export const LONG_RUN_SD = 0.1;
/** A piece against another: shaping and care differ. Assumption. */
export const PART_SD = 0.05;

/** Minutes for 100 mm of seam, and for an end woven in. Common practice, no source. */
export const SEAM_MINUTES = logNormal(4, 12);
export const END_MINUTES = logNormal(1.5, 5);

/** Hours that a week really gives over those meant, SD of the logarithm, the same all along. Assumption. */
export const KEPT_SD = 0.15;

/** The day's knitting ends at this hour, and washing begins. Assumption. */
export const EVENING = 20;
/** Ordered yarn comes earlier or later than promised, SD of the logarithm. Assumption. */
export const SHOP_SD = 0.25;

/** Days that are looked at: three years. */
export const HORIZON_DAYS = 1096;
/** Chance that a date has to be met with. */
export const SURE = 0.9;
/** Hours of one day that hardly anybody can knit for long. Assumption. */
export const MOST_HOURS = 12;

/** Hours of knitting in one day from which hands and wrists want care. Assumption. */
export const LONG_DAY_HOURS = 3;
