import * as z from 'zod';
import { day, id, label } from './parts.ts';

/** The most that one photo may hold, in characters of base64: 300 kB of picture. */
export const PHOTO_CHARACTERS = 400_000;

/** A picture in the record itself, made small, its camera's notes (place, time, device) taken out. */
export const photo = z.strictObject({
  id,
  when: z.enum(['before', 'pinned', 'dried', 'other']),
  on: day.optional(),
  caption: label,
  type: z.enum(['image/jpeg', 'image/webp', 'image/png']),
  widthPx: z.int().min(1).max(10_000),
  heightPx: z.int().min(1).max(10_000),
  data: z.base64().max(PHOTO_CHARACTERS),
});

export type Photo = z.infer<typeof photo>;
