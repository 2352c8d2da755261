import { STITCHES } from '@dryflat/engine/textile';
import * as z from 'zod';
import { count, direction, id, label, lengthMm, massG } from './parts.ts';

const state = z.enum(['asKnit', 'wet', 'dried', 'rewashed']);

/** Of a reading in the state `dried`; left out while nobody said. */
const pinned = z
  .boolean()
  .describe('true: it dried on pins; false: it dried laid flat; left out: not said.');

/** Stitches or rows counted over a ruler's length. */
export const countReading = z.strictObject({
  kind: z.literal('count'),
  id,
  direction,
  count,
  overMm: lengthMm,
  state,
  pinned: pinned.optional(),
  /** `stretched`: read while pulling the fabric; an upper bound on its pitch, not a gauge. */
  read: z.enum(['flat', 'stretched']),
  place: label.optional(),
});

/** The whole extent of the specimen by tape, with the exact count of stitches or rows where known. */
export const extentReading = z.strictObject({
  kind: z.literal('extent'),
  id,
  direction,
  mm: lengthMm,
  count: count.optional(),
  state,
  pinned: pinned.optional(),
  read: z.enum(['flat', 'stretched']),
  place: label.optional(),
});

/** A known weight hung from a clipped strip: two lengths tell how stiff this fabric is. */
export const hangReading = z.strictObject({
  kind: z.literal('hang'),
  id,
  direction,
  massG,
  clippedMm: lengthMm,
  beforeMm: lengthMm,
  afterMm: lengthMm,
  state,
});

/** The same marks before, while pinned, and after drying: tells how much of a stretch stays. */
export const setReading = z.strictObject({
  kind: z.literal('set'),
  id,
  direction,
  restMm: lengthMm,
  pinnedMm: lengthMm,
  driedMm: lengthMm,
});

export const reading = z.discriminatedUnion('kind', [
  countReading,
  extentReading,
  hangReading,
  setReading,
]);

/** A thing that was measured: all readings of one specimen share how it differs from the garment. */
export const specimen = z.strictObject({
  id,
  name: label,
  kind: z.enum(['swatch', 'part', 'piece', 'past-garment']),
  /** Of a part or a whole piece: which piece of this garment, by its name in the outline. */
  piece: label.optional(),
  stitch: z.enum(STITCHES),
  needleMm: lengthMm.optional(),
  /** Worked flat or in the round; and whether that is how the garment is worked. */
  workedAsGarment: z.boolean(),
  widthMm: lengthMm.optional(),
  heightMm: lengthMm.optional(),
  /** How it was washed and dried, in the knitter's choice of these. */
  washed: z.enum(['not', 'as-garment', 'otherwise']),
  /** Mass of the whole specimen: with its counts, the yarn in a stitch. */
  massG: massG.optional(),
  readings: z.array(reading),
});

export type CountReading = z.infer<typeof countReading>;
export type ExtentReading = z.infer<typeof extentReading>;
export type HangReading = z.infer<typeof hangReading>;
export type SetReading = z.infer<typeof setReading>;
export type Reading = z.infer<typeof reading>;
export type Specimen = z.infer<typeof specimen>;
