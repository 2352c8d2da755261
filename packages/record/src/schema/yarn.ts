import { FIBRES, TREATMENTS } from '@dryflat/engine/textile';
import * as z from 'zod';
import { count, id, label, massG } from './parts.ts';

/** Skeins of one dye lot. */
export const lot = z.strictObject({
  dyeLot: label,
  skeins: count,
  gramsEach: massG.optional(),
  metresEach: count.optional(),
});

export const yarn = z.strictObject({
  id,
  name: label,
  fibres: z.array(
    z.strictObject({ fibre: z.enum(FIBRES), percent: z.number().positive().max(100) }),
  ),
  treatment: z.enum(TREATMENTS),
  weightClass: z.int().min(0).max(7).optional(),
  metresPer100g: count.optional(),
  lots: z.array(lot),
});

export type Lot = z.infer<typeof lot>;
export type Yarn = z.infer<typeof yarn>;
