import * as z from 'zod';
import { count, day, id, label, massG, text } from './parts.ts';

/** Stitches or rows timed: what was knit on a day, and in how many minutes. */
export const paceEntry = z.strictObject({
  id,
  on: day.optional(),
  minutes: z.number().positive().max(10_000),
  stitches: count,
  /** Plain fabric, or stitches that are crossed, turned or worked in colours. */
  fabric: z.enum(['plain', 'worked']),
});

/** How fast she knits, and when she can. */
export const pace = z.strictObject({
  log: z.array(paceEntry).max(1000),
  /** Hours for knitting on each day of the week, Monday first. */
  hours: z.array(z.number().min(0).max(24)).length(7),
  /** Days on which nothing is knit. */
  away: z.array(day).max(1000),
  /** The day that the plan starts from; the day of asking where left out or past. */
  from: day.optional(),
  /** Days from asking for another skein to holding it; left out where none is to be had. */
  shopDays: z.int().min(0).max(1000).optional(),
});

/** How much of a piece is knit: a share of all its copies, 0 to 1. */
export const progress = z.strictObject({
  piece: label,
  share: z.number().min(0).max(1),
  on: day.optional(),
});

/** What is left of a yarn by the scale, and what is known of its use. */
export const yarnLeft = z.strictObject({
  yarn: id,
  massG: z.number().min(0).max(100_000),
  on: day.optional(),
});

/** The written counts of one piece, as the pattern has them; read by the counts' own reader. */
export const instruction = z.strictObject({ id, piece: label, text });

/** The stitch pattern repeats over so many stitches, plus those at the edges; rows likewise. */
export const repeat = z.strictObject({
  stitches: z.int().min(1).max(1000),
  plus: z.int().min(0).max(1000),
  rows: z.int().min(1).max(1000).optional(),
});

/** What counts when routes are put in order, each 0 to 1. */
export const weights = z.strictObject({
  fit: z.number().min(0).max(1),
  time: z.number().min(0).max(1),
  yarn: z.number().min(0).max(1),
});

/** What the report says beyond the record, and what of the record it leaves out. */
export const report = z.strictObject({
  changes: text,
  fitNotes: text,
  /** Ids of photos that go in. */
  photos: z.array(id).max(24),
  /** True: body measurements and the wearer's name go in; they are private where it is left out. */
  body: z.boolean(),
  /** Yarn used, by scale or by the balls. */
  usedG: massG.optional(),
  hours: z.number().positive().max(100_000).optional(),
});

export type PaceEntry = z.infer<typeof paceEntry>;
export type Pace = z.infer<typeof pace>;
export type Progress = z.infer<typeof progress>;
export type YarnLeft = z.infer<typeof yarnLeft>;
export type Instruction = z.infer<typeof instruction>;
export type Repeat = z.infer<typeof repeat>;
export type Weights = z.infer<typeof weights>;
export type ReportChoices = z.infer<typeof report>;
