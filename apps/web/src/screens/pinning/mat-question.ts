import {
  type InMat,
  type MatReading,
  mirroredPins,
  type PinPlaced,
  placeFromTape,
  referencesOnMat,
  stockWithout,
} from '@dryflat/engine/blocking';
import type { Point } from '@dryflat/engine/garment';
import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import {
  type GarmentRecord,
  type MatStep,
  type MatTold,
  type MatWork,
  type PinStock,
  pinsForEachWire,
} from '@dryflat/record';
import { USUAL_MAT, USUAL_STOCK } from '@dryflat/record/block';
import type { AgainQuestion } from '../../worker/mat/index.ts';
import { withoutPictures } from '../../worker/without-pictures.ts';
import { placedOf } from './freeze.ts';

/** What the tape said last at a step, if anything. */
export const toldAt = ({ told }: Pick<MatWork, 'told'>, at: number): MatTold | undefined =>
  told.findLast(({ step }) => step === at);

/** The two readings of a step; null where one was not taken. */
const tapeOf = (told: MatTold | undefined): [number | null, number | null] => [
  told?.tapeMm[0] ?? null,
  told?.tapeMm[1] ?? null,
];

const unheld = (at: number): Fault => ({
  code: 'mat-step-unheld',
  field: `step ${at + 1}`,
  given: '',
  problem: `Step ${at + 1} was kept without what it holds of the edge`,
  mend: 'Go on with the steps as they are, or start the piece anew from the mat.',
});

/** Farther from its planned place than the mat is long: no pull of hands, but another unit or a slip. */
const isAway = (
  { xMm, yMm }: Pick<PinPlaced, 'xMm' | 'yMm'>,
  { x, y }: Point,
  { widthMm, heightMm }: AgainQuestion['mat'],
): boolean => Math.hypot(x - xMm, y - yMm) > Math.max(widthMm, heightMm);

const away = ({ tapeMm }: MatTold): Fault => ({
  code: 'mat-tape-away',
  field: 'tape',
  given: tapeMm.flatMap((mm) => mm ?? []).join(', '),
  problem: 'By the tape it would stand farther from its planned place than the mat is long',
  mend: 'Measure it again and look at the unit, or clear what was told.',
});

type Kept = Pick<MatWork, 'steps' | 'told' | 'piece'>;

const matOf = (work: Pick<MatWork, 'lies'>, record: GarmentRecord) =>
  work.lies?.mat ?? record.plan.mat ?? USUAL_MAT;

/** What is in the mat, where the tape found it; else where it was planned. A fault names the step and the field. */
export const inMatOf = (work: Kept, mat: AgainQuestion['mat']): Result<InMat[]> => {
  const inMat: InMat[] = [];
  for (const [at, step] of work.steps.entries()) {
    if (step.done !== 'in') continue;
    const placed = placedOf(step, at + 1, work.piece);
    if (placed === null) return { ok: false, faults: [unheld(at)] };
    const place = placeFromTape(placed, referencesOnMat(inMat, mat), tapeOf(toldAt(work, at)));
    if (!place.ok) return fail(...onStep(place.faults, at));
    if (isAway(placed, place.value, mat)) return fail(...onStep([away(toldAt(work, at)!)], at));
    const { kind, on, along } = placed;
    inMat.push({ kind, on, along, to: place.value, order: at + 1 });
  }
  return ok(inMat);
};

const onStep = (faults: readonly Fault[], at: number): [Fault, ...Fault[]] => {
  const [first, ...rest] = faults.map((fault) => ({
    ...fault,
    field: `step ${at + 1}, ${fault.field}`,
  }));
  return [first!, ...rest];
};

const readingsOf = ({ told }: Kept, inMat: readonly InMat[]): MatReading[] =>
  told.flatMap(({ step, felt, measured }) => {
    const afterStep = inMat.filter(({ order = 0 }) => order <= step + 1).length;
    return afterStep > 0 ? [{ afterStep, felt, measured }] : [];
  });

/** What is in the box: as was said, else what the plan began with less what is in the mat. */
export const leftInBox = (work: MatWork, record: GarmentRecord): PinStock => {
  if (work.left) return work.left;
  const forWires = pinsForEachWire(work);
  const taken = work.steps.flatMap(({ done, kind, along }, k) =>
    done === 'in' ? [{ kind, along: along ?? null, pins: forWires[k]! }] : [],
  );
  const { straight = 0, tPins = 0 } = work.extra ?? {};
  const pins = taken.reduce((sum, each) => sum + each.pins, 0);
  const left = stockWithout(record.plan.stock ?? USUAL_STOCK, taken, pins + straight);
  return structuredClone({ ...left, tPins: Math.max(0, left.tPins - tPins) }) as PinStock;
};

const toCome = (work: MatWork): PinPlaced[] =>
  work.steps.flatMap((step: MatStep, k) =>
    step.done === undefined ? (placedOf(step, k + 1, work.piece) ?? []) : [],
  );

/** The question of the rest of a piece that is half pinned. Fails where a reading cannot be. */
export const againQuestion = (work: MatWork, record: GarmentRecord): Result<AgainQuestion> => {
  const mat = matOf(work, record);
  const inMat = inMatOf(work, mat);
  if (!inMat.ok) return inMat;
  const { piece, gentle, mirrored, lies } = work;
  const pins = toCome(work);
  const measurements = (lies?.reaches ?? []).map(({ landmark, pinnedMm }) => ({
    landmark,
    name: landmark,
    reachedMm: { p50Mm: pinnedMm },
  }));
  return ok({
    record: withoutPictures(record),
    piece,
    gentle,
    mirrored,
    mat,
    inMat: inMat.value,
    readings: readingsOf(work, inMat.value),
    left: leftInBox(work, record),
    before: { pins: mirrored ? mirroredPins(pins, mat) : pins, measurements },
  });
};
