import {
  mirroredPins,
  mirroredPlan,
  type PiecePlan,
  type PinPlaced,
} from '@dryflat/engine/blocking';
import type { MatStep, MatWork, PinMat } from '@dryflat/record';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** To a tenth of a millimetre, and without a negative zero. */
const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0;

const flat = (points: readonly Point[]): number[] =>
  points.flatMap(({ x, y }) => [tenth(x), tenth(y)]);

export const stepOf = ({ xMm, yMm, kind, edge, on, from, along, pullN }: PinPlaced): MatStep => ({
  xMm,
  yMm,
  kind,
  edge,
  on: { ...on },
  from: from.map((each) => ({ ...each })),
  ...(along && { along: { ...along } }),
  pullN,
});

/** A kept step as the engine has it; `order` from 1. Null for one that does not say what it holds. */
export const placedOf = (step: MatStep, order: number, piece: string): PinPlaced | null => {
  const { xMm, yMm, kind, edge, on, from, along, pullN } = step;
  const [a, b] = from;
  if (on === undefined || a === undefined || b === undefined) return null;
  return { xMm, yMm, kind, edge, on, from: [a, b], along: along ?? null, pullN, order, piece };
};

export const liesOf = (plan: PiecePlan, mat: PinMat): NonNullable<MatWork['lies']> => ({
  mat: { ...mat },
  outline: flat(plan.outlines.pinned),
  reaches: plan.measurements.map(({ landmark, targetMm, reachedMm, afterDryingMm }) => ({
    landmark,
    targetMm,
    pinnedMm: reachedMm.p50Mm,
    dryLowMm: afterDryingMm.p05Mm,
    dryHighMm: afterDryingMm.p95Mm,
  })),
});

export interface WorkBegun {
  readonly id: string;
  readonly copy: string;
  readonly gentle: boolean;
  readonly mirrored: boolean;
  /** ISO moment. */
  readonly begun: string;
}

/** A plan laid down as work to be done: nothing in it is worked out again. */
export const freeze = (plan: PiecePlan, mat: PinMat, begun: WorkBegun): MatWork => {
  const laid = begun.mirrored ? mirroredPlan(plan, mat) : plan;
  return {
    ...begun,
    piece: plan.name,
    layers: plan.layers,
    steps: laid.pins.map(stepOf),
    lies: liesOf(laid, mat),
    at: 0,
    told: [],
    pinsForWires: plan.pinsForWires,
  };
};

/**
 * The same steps again for another copy of the piece, from the first, or their mirror. Null where the work
 * was kept without what is needed to exchange left and right.
 */
export const layAgain = (
  work: MatWork,
  begun: Pick<WorkBegun, 'id' | 'copy' | 'begun'>,
  mirror: boolean,
): MatWork | null => {
  const { lies, piece, layers, gentle, pinsForWires } = work;
  const placed = work.steps.flatMap((step, k) => placedOf(step, k + 1, piece) ?? []);
  if (lies === undefined || placed.length < work.steps.length) return null;
  const { widthMm } = lies.mat;
  const other = lies.outline.map((v, k) => (k % 2 === 0 ? tenth(widthMm - v) : v));
  return {
    ...begun,
    piece,
    layers,
    gentle,
    pinsForWires,
    mirrored: work.mirrored !== mirror,
    steps: (mirror ? mirroredPins(placed, lies.mat) : placed).map(stepOf),
    lies: structuredClone(mirror ? { ...lies, outline: other } : lies),
    at: 0,
    told: [],
  };
};
