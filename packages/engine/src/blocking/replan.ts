import { fail, ok } from '../units/index.ts';
import { standingOf } from './choose-pins.ts';
import { couldNot, cutOf } from './could-not.ts';
import { dimensionsDrawn } from './draws.ts';
import { Effort } from './effort.ts';
import { checked } from './faults.ts';
import { stoppedOnMat } from './forward-on-mat.ts';
import { gentlerOf } from './gentler.ts';
import { goingsOn } from './goings-on.ts';
import { MOST_PULL } from './hand-pull.ts';
import { type HeldThing, heldOnMat, middlesOf } from './held-on-mat.ts';
import { kindsLeft } from './kinds.ts';
import { inMatFaults } from './mat-faults.ts';
import type { InMat, Replan, Replanned, ReplanQuestion } from './mat-types.ts';
import { rulersOf } from './measure.ts';
import { measurementsOf } from './measurements.ts';
import { moreStock } from './more-stock.ts';
import { layOnMat, layThrough, matReferences, onTheMat } from './on-mat.ts';
import { orderAround } from './order-around.ts';
import { openSheet, type PieceSheet } from './piece-sheet.ts';
import { PinState } from './pin-state.ts';
import { scallopTolerance } from './pinned-piece.ts';
import { pinsAround } from './pins-around.ts';
import { orderIn, pinsIn } from './place-from-tape.ts';
import { type Placement, placementsOf } from './placements.ts';
import { DEFAULT_NODES } from './plan-piece.ts';
import { rehearse } from './rehearsal.ts';
import { replanChanges, replanNotices } from './replan-words.ts';
import { Supplies } from './supplies.ts';
import { pinsTold, scallopsTold, stretchTold } from './told.ts';
import { repairedOrder } from './tried-order.ts';
import type { BlockQuestion, PieceToBlock, Stock } from './types.ts';

/** Share by which a scallop may be deeper than planned before it counts: another mesh tells it that differently. */
const ANOTHER_MESH = 1.1;

const asBlock = (piece: PieceToBlock, stock: Stock, question: ReplanQuestion): BlockQuestion => {
  const { before: _, ...rest } = question;
  return { ...rest, pieces: [piece], stock };
};

/** As it lies by what is in; by itself in the middle of the mat while nothing is. */
const layOf = (state: PinState, inMat: readonly InMat[], { mat }: ReplanQuestion) =>
  inMat.length === 0
    ? layOnMat(state.startTargets, mat)
    : {
        on: mat,
        ...layThrough(
          middlesOf(state.sheet, state.startTargets, inMat),
          inMat.map(({ to }) => to),
        ),
      };

const stateOf = (sheet: PieceSheet, inMat: readonly InMat[], question: ReplanQuestion) => {
  const rulers = rulersOf(sheet);
  const cut = cutOf(rulers, sheet.piece.fabric.safe, question);
  const state = new PinState(sheet, question.mostPullN ?? MOST_PULL, cut.share);
  const lay = layOf(state, inMat, question);
  const given = heldOnMat(sheet, state.startTargets, inMat, lay);
  state.putIn(given);
  return { rulers, cut, state, lay, given };
};

/** The placement that each thing in the mat is, in their order. */
const placementsIn = (all: readonly Placement[], given: readonly HeldThing[]): Placement[] => {
  const found = given.flatMap(({ run, nodes }) => {
    const own = all.find((each) =>
      run === null
        ? each.kind === 'pin' && each.nodes[0] === nodes[0]
        : each.kind === run.kind && each.nodes === run.nodes,
    );
    return own === undefined ? [] : [own];
  });
  return [...new Set(found)];
};

/**
 * The rest of the plan from where things stand: what is in the mat stays as it is, what was still to come
 * is kept where it still serves, and pins are added or left out as the stock and the fabric ask. `piece`
 * is as it is now thought to be; `stockLeft` is what is not in the mat. Orders go on from the last one in.
 * Pure, and the same question gives the same bytes. Faults as `planBlock` has them, and for what is in.
 */
export const replan: Replan = (piece, inMat, stockLeft, question, hooks = {}) => {
  const block = asBlock(piece, stockLeft, question);
  const asked = checked(block);
  if (!asked.ok) return asked;
  const faults = inMatFaults(piece, inMat);
  if (faults.length > 0) return fail(...faults);
  const going = goingsOn(
    hooks.onStep === undefined ? {} : { onStep: hooks.onStep },
    piece.name,
    0,
    1,
  );
  const effort = new Effort();
  const before = question.before?.pins ?? [];
  const through = [...inMat, ...before].flatMap(({ on }) => [on.from, on.to]);
  const opened = openSheet(piece, hooks.nodes ?? DEFAULT_NODES, effort, {}, through);
  if (!opened.ok) return opened;
  const sheet = opened.value;
  effort.whole = sheet.mesh.points.length / 2;
  const { rulers, cut, state, lay, given } = stateOf(sheet, inMat, question);
  const goOn = () => going.goOn() && effort.goOn();
  const choosing = {
    scallopTolerance: scallopTolerance(block) * (through.length > 0 ? ANOTHER_MESH : 1),
    goOn,
  };
  const supplies = new Supplies(stockLeft);
  const kept = pinsAround(state, before, supplies, choosing);
  effort.begin('rest');
  if (effort.cutShort.has('pins')) state.standStill();
  else state.putDown();
  const standing = standingOf(state);
  const singles = stockLeft.straight + stockLeft.tPins;
  const pinsForWires = singles - supplies.singles - state.planned().length;
  const within = standing.off.length === 0 && standing.scallop <= choosing.scallopTolerance;
  const stocked = within ? state.pins.size > 0 : supplies.singles > 0;
  going.reach(0.4);
  effort.begin('order');
  const placements = placementsOf(state);
  const already = placementsIn(placements, given);
  const rehearsed = rehearse(state, placements);
  if (!rehearsed.ok) return rehearsed;
  const start = orderAround(sheet, placements, already, kept);
  const ordered = repairedOrder(rehearsed.value, start, going.goOn, already.length);
  going.reach(0.7);
  effort.begin('ranges');
  const drawn = dimensionsDrawn(state, rulers, going.goOn);
  effort.begin('more-pins');
  const more = stocked ? { more: [], iterations: 0 } : moreStock(state, standing, choosing);
  if (going.stopped()) return stoppedOnMat();
  const orders = inMat.map(orderIn);
  const last = Math.max(0, ...orders);
  const coming = ordered.order.slice(already.length);
  const steps = coming.map((placement, k) => ({ placement, order: last + k + 1 }));
  const kinds = kindsLeft(coming, stockLeft, pinsForWires, kept);
  const pins = pinsTold(state, steps, { lay, kinds }, matReferences(lay.on), pinsIn(inMat));
  const places = (of: (k: number) => { x: number; y: number }) =>
    sheet.ring.map((_, k) => lay.place(of(k)));
  const numbered = [
    ...given.flatMap((held, k) =>
      placementsIn(placements, [held]).map((placement) => ({ placement, order: orders[k]! })),
    ),
    ...steps,
  ];
  const pinned = places((k) => state.place(k));
  const plan: Replanned['plan'] = {
    name: piece.name,
    layers: piece.layers,
    pins,
    pinsForWires,
    measurements: measurementsOf({ state, rulers }, drawn.drawn),
    stretchUse: stretchTold(state, lay),
    scallopMm: scallopsTold(standing, numbered),
    couldNot: couldNot(state, standing, { cut, tolerance: choosing.scallopTolerance, stocked }),
    orders: { planned: ordered.tried, other: null },
    moreStock: more.more,
    gentler: gentlerOf(state, rulers, () => false).gentler,
    beforeSewing: null,
    outlines: {
      rest: places((k) => sheet.ring[k]!.rest),
      wanted: places((k) => state.startTargets[k]!),
      pinned,
    },
    fitsMat: onTheMat(pinned, question.mat),
    laidOn: lay.on,
    iterations: state.iterations + ordered.iterations + drawn.iterations + more.iterations,
    effort: {
      evaluations: Math.ceil(effort.spent),
      most: effort.most,
      cutShort: [...effort.cutShort],
    },
    residual: state.eq.residual,
    converged: state.eq.converged,
  };
  return ok({
    plan,
    changes: replanChanges(plan, question.before),
    notices: replanNotices(state, plan, { given, orders, mat: question.mat }),
  });
};
