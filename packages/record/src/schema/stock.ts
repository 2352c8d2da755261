import * as z from 'zod';
import { lengthMm } from './parts.ts';

/** How many of a thing; whole. */
const pieces = z.int().min(0).max(10_000);
const runs = z.array(z.strictObject({ lengthMm, count: pieces })).max(100);

/** Pins at hand: singly, in combs with several prongs, and blocking wires, by their lengths. */
export const pinStock = z.strictObject({
  straight: pieces,
  tPins: pieces,
  combs: runs,
  wires: runs,
});

/** The mat, and the side of its square tiles; 0 where it has none. */
export const pinMat = z.strictObject({
  widthMm: lengthMm,
  heightMm: lengthMm,
  tileMm: z.number().min(0).max(100_000),
});

/** Pins and wires counted kind by kind, whatever their lengths. */
export const pinCounts = z.strictObject({
  straight: pieces,
  tPins: pieces,
  combs: pieces,
  wires: pieces,
});

export type PinStock = z.infer<typeof pinStock>;
export type PinMat = z.infer<typeof pinMat>;
export type PinCounts = z.infer<typeof pinCounts>;
