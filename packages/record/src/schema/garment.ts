import { GARMENT_KINDS } from '@dryflat/engine/garment';
import { STITCHES } from '@dryflat/engine/textile';
import * as z from 'zod';
import { drying, finished } from './drying.ts';
import { specimen } from './evidence.ts';
import { matWork } from './mat-work.ts';
import { day, id, label, lengthMm, massG, signedMm, span, text } from './parts.ts';
import { pattern } from './pattern.ts';
import { photo } from './photo.ts';
import { pinMat, pinStock } from './stock.ts';
import { CURRENT_VERSION, FORMAT } from './version.ts';
import { person, wearer } from './wearer.ts';
import { instruction, pace, progress, report, weights, yarnLeft } from './work.ts';
import { yarn } from './yarn.ts';

/** How it will be washed; `not-said` until the knitter says so. */
export const WASHINGS = ['by-hand', 'machine-wool', 'machine-warm', 'not-said'] as const;

const state = z.enum(['asKnit', 'wet', 'pinned', 'dried', 'worn', 'rewashed']);

/** One measurement of the garment itself, taken with a tape. `measurement` is an id of the pattern's. */
export const measured = z.strictObject({
  id,
  measurement: id,
  state,
  mm: lengthMm,
  span: span.optional(),
  on: day.optional(),
});

/** A piece that exists: a finished back, half a sleeve. */
export const piece = z.strictObject({ id, name: label, measured: z.array(measured) });

const place = z.strictObject({ xMm: signedMm, yMm: signedMm });

/**
 * A pin that the knitter put elsewhere than the plan has it: through the place `at` of the piece as it lies
 * before pins, to the place `to`. Both are places in the outline of the piece, x to the right and y down.
 */
export const movedPin = z.strictObject({
  /** Name of the piece. */
  piece: label,
  at: place,
  to: place,
  /** True: the plan is made around it. False: moved in a plan that had it elsewhere. */
  around: z.boolean(),
});

/** What the knitter means to do after the last stitch. */
export const plan = z.strictObject({
  washing: z.enum(WASHINGS),
  /** `lay`: dried flat without pins. `pin`: pinned to the pattern's measurements. */
  drying: z.enum(['lay', 'pin']),
  /** Measurements that are pinned to something else than the pattern says. */
  pinTo: z.array(z.strictObject({ measurement: id, mm: lengthMm, span: span.optional() })),
  /** The state whose fit counts most to the knitter. */
  judgeAt: z.enum(['dried', 'worn', 'rewashed']),
  finishBy: day.optional(),
  /** True: sewn before it is pinned, so that it lies double; pieces by themselves where left out. */
  sewn: z.boolean().optional(),
  stock: pinStock.optional(),
  mat: pinMat.optional(),
  pins: z.array(movedPin).max(1000).optional(),
  weights: weights.optional(),
});

/** A forecast as it stood on a day, kept so that it can be scored against what came. */
export const keptForecast = z.strictObject({
  id,
  on: day,
  measurements: z.array(
    z.strictObject({
      measurement: id,
      state: z.enum(['asKnit', 'wet', 'dried', 'worn', 'rewashed']),
      p05Mm: lengthMm,
      p50Mm: lengthMm,
      p95Mm: lengthMm,
    }),
  ),
});

/** What the garment did: measured again at rest, after wear, after a wash. */
export const outcome = z.strictObject({
  id,
  on: day.optional(),
  washes: z.int().min(0).max(10_000),
  remark: text,
  measured: z.array(measured),
});

export const note = z.strictObject({ id, on: day.optional(), text });

export const garmentRecord = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(CURRENT_VERSION),
  id,
  name: label,
  kind: z.enum(GARMENT_KINDS),
  /** Main stitch pattern of the garment. */
  stitch: z.enum(STITCHES),
  needleMm: lengthMm.optional(),
  /** Mass of the finished garment, or what it is expected to weigh. */
  massG: massG.optional(),
  wearer,
  pattern,
  yarns: z.array(yarn),
  evidence: z.array(specimen),
  pieces: z.array(piece),
  plan,
  forecasts: z.array(keptForecast),
  outcomes: z.array(outcome),
  notes: z.array(note),
  /** Pieces on the mat, oldest first. */
  onMat: z.array(matWork).max(100).optional(),
  dryings: z.array(drying).max(200).optional(),
  photos: z.array(photo).max(24).optional(),
  finished: finished.optional(),
  /** Others whom it might fit. */
  people: z.array(person).max(50).optional(),
  pace: pace.optional(),
  progress: z.array(progress).max(50).optional(),
  left: z.array(yarnLeft).max(50).optional(),
  instructions: z.array(instruction).max(50).optional(),
  report: report.optional(),
});

export type Measured = z.infer<typeof measured>;
export type Piece = z.infer<typeof piece>;
export type Plan = z.infer<typeof plan>;
export type MovedPin = z.infer<typeof movedPin>;
export type KeptForecast = z.infer<typeof keptForecast>;
export type Outcome = z.infer<typeof outcome>;
export type Note = z.infer<typeof note>;
export type GarmentRecord = z.infer<typeof garmentRecord>;
