import * as z from 'zod';

/** Pieces of schema that several parts share. Lengths are millimetres, masses grams, dates ISO days. */
export const id = z.string().min(1).max(80);
export const text = z.string().max(4000);
export const label = z.string().max(200);
export const lengthMm = z.number().positive().max(100_000);
/** Signed: ease may be negative. */
export const signedMm = z.number().min(-100_000).max(100_000);
export const massG = z.number().positive().max(100_000);
export const count = z.number().positive().max(100_000);
export const day = z.iso.date();
/** `flat`: across one layer laid flat. `around`: all the way around. Left out: not answered yet. */
export const span = z.enum(['flat', 'around']);
export const direction = z.enum(['width', 'length']);
