import { STITCHES } from '@dryflat/engine/textile';
import * as z from 'zod';
import { count, direction, id, label, lengthMm, span } from './parts.ts';
import { repeat } from './work.ts';

/** One line of the pattern's table of finished measurements; values run along `pattern.sizes`. */
export const patternMeasurement = z.strictObject({
  id,
  name: label,
  /** A known landmark, or `custom`. */
  landmark: id,
  /** Needed where the landmark is custom; a known landmark brings its own. */
  direction: direction.optional(),
  /** Left out while the knitter has not said; only asked where the number may be either. */
  span: span.optional(),
  /** `counted`: stitches or rows fix it. `to-length`: knit until the tape says so. */
  worked: z.enum(['counted', 'to-length']),
  values: z.array(lengthMm.nullable()),
  /** Stitches (width) or rows (length) per size, as the pattern prints them, over the whole span. */
  counts: z.array(count.nullable()).optional(),
  /** Left out where it is the garment's main stitch. */
  stitch: z.enum(STITCHES).optional(),
});

/** The pattern's own gauge: this many stitches and rows over this length. */
export const patternGauge = z.strictObject({
  stitches: count,
  /** Left out where the pattern gives none. */
  rows: count.optional(),
  overMm: lengthMm,
  /** The state that the designer's numbers are in; patterns nearly always mean washed and dried. */
  state: z.enum(['asKnit', 'dried']),
});

export const pattern = z.strictObject({
  name: label,
  gauge: patternGauge.optional(),
  needleMm: lengthMm.optional(),
  sizes: z.array(label),
  /** Label of the size that is being knit, one of `sizes`. */
  chosen: label.optional(),
  measurements: z.array(patternMeasurement),
  /** Of the main stitch pattern. */
  repeat: repeat.optional(),
});

export type PatternMeasurement = z.infer<typeof patternMeasurement>;
export type PatternGauge = z.infer<typeof patternGauge>;
export type Pattern = z.infer<typeof pattern>;
