import * as z from 'zod';
import { id, label, massG, moment, text } from './parts.ts';
import { pinCounts } from './stock.ts';

/** The air that it dries in. */
export const roomAir = z.strictObject({
  temperatureC: z.number().min(0).max(45),
  humidityPercent: z.number().gt(0).lt(100),
  movement: z.enum(['still', 'moving']),
  altitudeM: z.number().min(-500).max(6000).optional(),
});

/** One drying, from the towels to dry: after a block, or after a later wash. */
export const drying = z.strictObject({
  id,
  /** When it was laid out; every hour of the forecast counts from here. */
  begun: moment,
  /** Mass before the wash, and the air it had then: this room, the sum of the balls' labels, or a relative humidity in percent. */
  dry: z
    .strictObject({
      massG,
      air: z.union([z.literal('here'), z.literal('label'), z.number().gt(0).lt(100)]),
    })
    .optional(),
  /** Mass after pressing, or without a scale how the water was taken out. */
  wet: z.union([massG, z.enum(['towel', 'spun', 'dripping'])]),
  air: roomAir,
  on: z.enum(['mat', 'rack']),
  layers: z.union([z.literal(1), z.literal(2)]),
  pinned: z.boolean(),
  /** One face of the fabric, all layers counted, m². */
  fabricM2: z.number().positive().max(100).optional(),
  /** Thick places: share of the mass (0 to 1), and how many times as thick as the rest. */
  thick: z
    .array(
      z.strictObject({
        id,
        name: label,
        share: z.number().gt(0).lt(1),
        times: z.number().gt(1).max(50),
      }),
    )
    .max(20)
    .optional(),
  weighings: z.array(z.strictObject({ id, at: moment, massG })).max(200),
  /** What the hand says at a place; thick ones last. */
  touches: z
    .array(z.strictObject({ id, at: moment, where: label, feels: z.enum(['wet', 'cool', 'dry']) }))
    .max(200),
  turned: z.array(moment).max(50),
  /** When the knitter took it for dry. */
  dried: moment.optional(),
});

/** The garment is done; pins that were not found are said, kind by kind, or it is not. */
export const finished = z.strictObject({
  on: z.iso.date(),
  /** Pins that went in, did not come out, and were looked for. */
  missing: pinCounts.optional(),
  remark: text,
});

export type RoomAirKept = z.infer<typeof roomAir>;
export type Drying = z.infer<typeof drying>;
export type Finished = z.infer<typeof finished>;
