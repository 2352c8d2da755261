import * as z from 'zod';
import { id, label, lengthMm, moment, signedMm } from './parts.ts';
import { pinCounts, pinMat, pinStock } from './stock.ts';

const place = { xMm: signedMm, yMm: signedMm };

/** One thing to place, as the plan had it when it was laid out. Places are on the mat, mm from its top left. */
export const matStep = z.strictObject({
  ...place,
  kind: z.enum(['straight', 't-pin', 'comb', 'wire']),
  /** Part of the piece's outline that it holds: index of an edge and share of the way along it, at both ends. */
  on: z
    .strictObject({ from: z.number().min(0).max(100_000), to: z.number().min(0).max(100_000) })
    .optional(),
  edge: z.enum(['cast-on', 'bound-off', 'selvedge', 'seam', 'picked-up', 'rib', 'fold', 'open']),
  /** Two tape distances, each from something that is on the mat before it. */
  from: z.array(z.strictObject({ name: label, mm: z.number().min(0).max(100_000) })).length(2),
  /** Length and direction of a comb or a wire; left out for a pin. */
  along: z
    .strictObject({ lengthMm, dx: z.number().min(-1).max(1), dy: z.number().min(-1).max(1) })
    .optional(),
  pullN: z.number().min(0).max(10_000),
  /** `in`: it is in the mat. `passed`: left out on purpose. Left out: still to come. */
  done: z.enum(['in', 'passed']).optional(),
});

/** What the tape and the hand said at a step: an ordinal of `steps`, from 0. */
export const matTold = z.strictObject({
  id,
  step: z.int().min(0).max(10_000),
  at: moment,
  /** The two distances of the step as the tape has them; null where one was not read. */
  tapeMm: z.array(lengthMm.nullable()).length(2),
  /** `at-limit`: pulled as hard as she would, it came no farther. `slack`: it lies there without a pull. */
  felt: z.enum(['right', 'at-limit', 'slack']),
  /** Dimensions of the piece read while it lay so. */
  measured: z.array(z.strictObject({ landmark: id, mm: lengthMm })).max(20),
});

/** How the piece lies when all is in: kept, so that a return to it needs no new calculation. */
const matLies = z.strictObject({
  mat: pinMat,
  /** The edge of the piece on the mat, pinned: x0, y0, x1, y1, … in mm. */
  outline: z.array(signedMm).min(6).max(4000),
  /** What each dimension comes to: wanted, pinned, and dry without pins 9 times in 10. */
  reaches: z
    .array(
      z.strictObject({
        landmark: id,
        targetMm: lengthMm,
        pinnedMm: lengthMm,
        dryLowMm: lengthMm,
        dryHighMm: lengthMm,
      }),
    )
    .max(40),
});

/** A piece on the mat: the plan it was laid out with, how far the pinning has come, and what was told on the way. */
export const matWork = z.strictObject({
  id,
  /** Name of the piece as its outline has it. */
  piece: label,
  /** Which of several alike, as the knitter calls it: left, right; empty where there is one. */
  copy: label,
  /** True: it lies with the other face up, left and right exchanged. */
  mirrored: z.boolean(),
  layers: z.union([z.literal(1), z.literal(2)]),
  gentle: z.boolean(),
  begun: moment,
  steps: z.array(matStep).max(2000),
  lies: matLies.optional(),
  /** The step that is shown; the number of steps when all are done. */
  at: z.int().min(0).max(10_000),
  told: z.array(matTold).max(500),
  /** What is still in the box, once that was said: each pin that goes in is taken from it. */
  left: pinStock.optional(),
  /** Pins that went in beside the plan. */
  extra: pinCounts.optional(),
  /** Pins that hold the ends of wires, as the plan has them. */
  pinsForWires: z.int().min(0).max(10_000),
  /** When the last pin was in. */
  pinned: moment.optional(),
  /** Pins taken out, kind by kind; left out before unpinning. */
  out: pinCounts.optional(),
});

export type MatStep = z.infer<typeof matStep>;
export type MatTold = z.infer<typeof matTold>;
export type MatWork = z.infer<typeof matWork>;
