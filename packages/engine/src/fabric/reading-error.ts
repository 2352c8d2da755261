import type { CountReading, ExtentReading, Specimen } from './specimen.ts';

/**
 * How far a reading may be off, as standard deviations of the logarithm of a pitch. Reading a count
 * to the nearest ½ stitch is arithmetic; the rest is common practice without a source and is kept
 * in one place so that it can be seen and argued with.
 */

/** A rule laid on fabric: handling moves it this much of its length. Common practice, no source. */
export const RULE_SD = 0.005;
/** A tape across a garment or a piece of one, laid flat, in millimetres. Shops allow about ½ in on knits: two SDs. */
export const GARMENT_TAPE_SD_MM = 5;
/** A tape across a whole piece, in millimetres. Shops allow about ½ in on knits: two SDs and more. */
export const TAPE_SD_MM = 3;
/** From place to place on one fabric. Common practice, no source. */
export const PLACE_SD = 0.015;
/** Selvedges and curl, in stitches or rows over a whole extent. Common practice, no source. */
export const EDGE_SD_STITCHES = 0.4;

/** How finely a count was written: 21 → 1, 21.5 → ½, 21.25 → ¼, anything else 0.1. */
export const countResolution = (count: number): number =>
  [1, 0.5, 0.25].find((step) => Number.isInteger(count / step)) ?? 0.1;

/** SD of a count rounded to `resolution`: uniform over one step, step/√12 (0.29 stitch at 1). */
export const roundingSd = (count: number): number => countResolution(count) / Math.sqrt(12) / count;

/** Counting close to an edge reads the edge. Margins under 25 mm on a side cost doubt. */
export const edgeSd = (reading: CountReading, specimen: Specimen): number => {
  const across = reading.direction === 'width' ? specimen.width : specimen.height;
  if (across === null) return specimen.kind === 'swatch' ? 0.01 : 0;
  const margin = (across - reading.over) / 2;
  return margin >= 25 ? 0 : margin >= 10 ? 0.01 : 0.02;
};

/** SD of log(over / count), place to place spread left out. */
export const countSd = (reading: CountReading, specimen: Specimen): number =>
  Math.hypot(roundingSd(reading.count), RULE_SD, edgeSd(reading, specimen));

/** SD of log(extent) alone. */
export const tapeSd = (extentMm: number): number => Math.hypot(TAPE_SD_MM / extentMm, RULE_SD);

/** SD of log(extent / count); without a count only the tape errs. */
export const extentSd = (reading: ExtentReading): number =>
  reading.count === null
    ? tapeSd(reading.extent)
    : Math.hypot(tapeSd(reading.extent), EDGE_SD_STITCHES / reading.count);

/** SD of the log of a length of a garment, measured laid flat. */
export const garmentTapeSd = (flatMm: number): number =>
  Math.hypot(GARMENT_TAPE_SD_MM / flatMm, RULE_SD);
