import * as z from 'zod';

// No code is made from text at run time: the page is served under a policy that forbids it.
z.config({ jitless: true });

/** Pieces of schema that several parts share. Lengths are millimetres, masses grams, dates ISO days. */
export const id = z.string().min(1).max(80).describe('Short id, unique within its list.');
export const text = z.string().max(4000);
export const label = z.string().max(200);
export const lengthMm = z.number().positive().max(100_000).describe('Length in millimetres.');
/** Signed: ease may be negative. */
export const signedMm = z
  .number()
  .min(-100_000)
  .max(100_000)
  .describe('Length in millimetres; may be negative.');
export const massG = z.number().positive().max(100_000).describe('Mass in grams.');
export const count = z
  .number()
  .positive()
  .max(100_000)
  .describe('A count; halves and quarters may be counted.');
export const day = z.iso.date().describe('Day, ISO 8601: 2031-04-09.');
/** `flat`: across one layer laid flat. `around`: all the way around. Left out: not answered yet. */
export const span = z
  .enum(['flat', 'around'])
  .describe('flat: across one layer; around: all the way around; left out: not answered yet.');
export const direction = z
  .enum(['width', 'length'])
  .describe('width: along the stitches of a row; length: along the rows.');
export const moment = z.iso
  .datetime()
  .describe('Moment in universal time, ISO 8601: 2031-04-09T18:30:00Z.');
/** A whole number of things that may be none. */
export const tally = z.int().min(0).max(100_000);
