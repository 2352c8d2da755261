import type { BlockPlan, OrderTried, PiecePlan } from '@dryflat/engine/blocking';
import type { Range } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';
import { inUnits, type Units } from '../faults.ts';

/** Hundredths of a millimetre, thousandths of a newton and of a share: finer than any hand. */
const length = (value: number): number => Math.round(value * 100) / 100 + 0;
const fine = (value: number): number => Math.round(value * 1000) / 1000 + 0;

const range = ({ p05Mm, p50Mm, p95Mm }: Range) => ({
  p05Mm: length(p05Mm),
  p50Mm: length(p50Mm),
  p95Mm: length(p95Mm),
});

const named = (list: readonly { readonly name: string; readonly mm: number }[]) =>
  list.map(({ name, mm }) => ({ name, mm: length(mm) }));

const pins = (plan: PiecePlan) =>
  plan.pins.map((pin) => ({
    order: pin.order,
    kind: pin.kind,
    xMm: length(pin.xMm),
    yMm: length(pin.yMm),
    edge: pin.edge,
    from: named(pin.from),
    pullN: fine(pin.pullN),
    along:
      pin.along === null
        ? null
        : {
            lengthMm: length(pin.along.lengthMm),
            dx: fine(pin.along.dx),
            dy: fine(pin.along.dy),
          },
  }));

const measurements = (plan: PiecePlan) =>
  plan.measurements.map((each) => ({
    name: each.name,
    landmark: each.landmark,
    direction: each.direction,
    restMm: length(each.restMm),
    targetMm: length(each.targetMm),
    toleranceMm: length(each.toleranceMm),
    reachedMm: range(each.reachedMm),
    afterDryingMm: range(each.afterDryingMm),
    afterRewashMm: range(each.afterRewashMm),
    within: each.within,
  }));

const order = (tried: OrderTried | null) =>
  tried === null
    ? null
    : {
        way: tried.way,
        highestPullN: fine(tried.highestPullN),
        slipped: tried.slipped,
        lowerEdgeRisesMm: length(tried.lowerEdgeRisesMm),
      };

const piece = (plan: PiecePlan, said: (text: string) => string) => ({
  name: plan.name,
  layers: plan.layers,
  pins: pins(plan),
  pinsForWires: plan.pinsForWires,
  measurements: measurements(plan),
  stretchUse: {
    max: fine(plan.stretchUse.max),
    overWet: fine(plan.stretchUse.overWet),
    where: { xMm: length(plan.stretchUse.where.x), yMm: length(plan.stretchUse.where.y) },
    along: plan.stretchUse.along,
    edge: plan.stretchUse.edge,
  },
  scallopMm: {
    max: length(plan.scallopMm.max),
    gaps: plan.scallopMm.gaps.map(({ from, to, mm }) => ({ from, to, mm: length(mm) })),
  },
  couldNot: plan.couldNot.map(({ what, why }) => ({ what: said(what), why: said(why) })),
  orders: { planned: order(plan.orders.planned), other: order(plan.orders.other) },
  moreStock: plan.moreStock.map(({ what, gains }) => ({ what, gains: said(gains) })),
  gentler: plan.gentler.map((each) => ({
    share: fine(each.share),
    largestStretch: fine(each.largestStretch),
    beyondSafe: each.beyondSafe,
    reached: named(each.reached),
  })),
  beforeSewing: plan.beforeSewing === null ? null : named(plan.beforeSewing),
  fitsMat: plan.fitsMat,
  laidOn: {
    widthMm: length(plan.laidOn.widthMm),
    heightMm: length(plan.laidOn.heightMm),
    tileMm: length(plan.laidOn.tileMm),
  },
  iterations: plan.iterations,
  effort: plan.effort,
  residual: plan.residual,
  converged: plan.converged,
});

/**
 * A plan as one JSON object, keys always in this order, lengths in millimetres to 0.01, forces in newtons.
 * Places are on the mat, from its top left corner. `gentle`: true where nothing was to be stretched beyond
 * what is published as safe. `notices` are those of the file, before the engine's.
 */
export const blockJson = (
  record: GarmentRecord,
  plan: BlockPlan,
  gentle: boolean,
  notices: readonly string[],
  unit: Units,
): string => {
  const said = (text: string) => inUnits(text, unit);
  const answer = {
    name: record.name,
    gentle,
    pieces: plan.pieces.map((each) => piece(each, said)),
    pinsInAll: plan.pinsInAll,
    notices: [
      ...notices.map((text) => ({ code: 'file', text: said(text) })),
      ...plan.notices.map(({ code, text }) => ({ code, text: said(text) })),
    ],
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
};
