import * as z from 'zod';
import { id, label, lengthMm, signedMm, span } from './parts.ts';

/** One body measurement. Girths of a body are around; `span` is asked only where both are possible. */
export const bodyMeasure = z.strictObject({
  landmark: id,
  mm: lengthMm,
  /** Where it comes from: a tape on this body, or a published table as a start. */
  from: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('measured') }),
    z.strictObject({ kind: z.literal('table'), table: id, size: label }),
  ]),
});

/** What is wanted at one landmark: ease over the body, or a finished measurement where no body part sets it. */
export const wantedFit = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('ease'), landmark: id, minMm: signedMm, maxMm: signedMm }),
  z.strictObject({
    kind: z.literal('finished'),
    landmark: id,
    minMm: lengthMm,
    maxMm: lengthMm,
    span: span.optional(),
  }),
]);

export const wearer = z.strictObject({
  name: label,
  /** `not-said` until the knitter says so; `nobody` for what is worn by none. */
  group: z.enum(['woman', 'man', 'child', 'baby', 'nobody', 'not-said']),
  body: z.array(bodyMeasure),
  wanted: z.array(wantedFit),
});

/** Somebody else whom the garment might fit. */
export const person = z.strictObject({
  id,
  name: label,
  group: z.enum(['woman', 'man', 'child', 'baby']),
  body: z.array(bodyMeasure),
});

export type Person = z.infer<typeof person>;
export type BodyMeasure = z.infer<typeof bodyMeasure>;
export type WantedFit = z.infer<typeof wantedFit>;
export type Wearer = z.infer<typeof wearer>;
