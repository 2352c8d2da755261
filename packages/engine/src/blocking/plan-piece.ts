import { fail, ok, type Result } from '../units/index.ts';
import { beforeSewing } from './before-sewing.ts';
import { couldNot } from './could-not.ts';
import { dimensionsDrawn } from './draws.ts';
import { Effort } from './effort.ts';
import { gentlerOf } from './gentler.ts';
import type { GoingsOn } from './goings-on.ts';
import { kindsOf } from './kinds.ts';
import { measurementsOf } from './measurements.ts';
import { moreStock } from './more-stock.ts';
import { layOnMat, matReferences } from './on-mat.ts';
import { openSheet } from './piece-sheet.ts';
import { pinPiece, scallopTolerance } from './pinned-piece.ts';
import { placementsOf } from './placements.ts';
import { rehearse } from './rehearsal.ts';
import { pinsTold, scallopsTold, stretchTold } from './told.ts';
import { orderOf } from './tried-order.ts';
import type { BlockHooks, BlockQuestion, PiecePlan, PieceToBlock } from './types.ts';

/** What a stopped plan answers. */
export const stopped = () =>
  fail({
    code: 'block-stopped',
    field: '',
    given: '',
    problem: 'The plan was stopped',
    mend: 'Ask again.',
  });

/** Nodes of a mesh, about: finer ones move no measurement of a sweater back by a millimetre. */
export const DEFAULT_NODES = 800;

/** The plan of one piece, laid on the mat by itself with all of the stock. */
export const planPiece = (
  piece: PieceToBlock,
  question: BlockQuestion,
  { nodes = DEFAULT_NODES, mostEvaluations }: BlockHooks,
  going: GoingsOn,
): Result<PiecePlan> => {
  const effort = new Effort(mostEvaluations);
  const opened = openSheet(piece, nodes, effort);
  if (!opened.ok) return opened;
  const sheet = opened.value;
  effort.whole = sheet.mesh.points.length / 2;
  const goOn = () => going.goOn() && effort.goOn();
  const choosing = { scallopTolerance: scallopTolerance(question), goOn };
  going.reach(0.1);
  const pinned = pinPiece(sheet, question, choosing);
  const { state, rulers, cut, standing, stocked, pinsForWires } = pinned;
  const lay = layOnMat(state.startTargets, question.mat);
  going.reach(0.4);
  effort.begin('order');
  const placements = placementsOf(state);
  const rehearsed = rehearse(state, placements);
  if (!rehearsed.ok) return rehearsed;
  const ordered = orderOf(rehearsed.value, placements, going.goOn);
  going.reach(0.7);
  effort.begin('ranges');
  const drawn = dimensionsDrawn(state, rulers, going.goOn);
  going.reach(0.9);
  effort.begin('less-stretch');
  const gentler = gentlerOf(state, rulers, going.goOn);
  effort.begin('before-sewing');
  const before = beforeSewing(state, rulers, nodes);
  effort.begin('more-pins');
  const more = stocked ? { more: [], iterations: 0 } : moreStock(state, standing, choosing);
  if (going.stopped()) return stopped();
  const numbered = ordered.order.map((placement, k) => ({ placement, order: k + 1 }));
  const places = (of: (k: number) => { x: number; y: number }) =>
    sheet.ring.map((_, k) => lay.place(of(k)));
  return ok({
    name: piece.name,
    layers: piece.layers,
    pins: pinsTold(
      state,
      numbered,
      { lay, kinds: kindsOf(ordered.order, question.stock, pinsForWires) },
      matReferences(lay.on),
      [],
    ),
    pinsForWires,
    measurements: measurementsOf(pinned, drawn.drawn),
    stretchUse: stretchTold(state, lay),
    scallopMm: scallopsTold(standing, numbered),
    couldNot: couldNot(state, standing, { cut, tolerance: choosing.scallopTolerance, stocked }),
    orders: { planned: ordered.tried, other: ordered.other },
    moreStock: more.more,
    gentler: gentler.gentler,
    beforeSewing: before?.reached ?? null,
    outlines: {
      rest: places((k) => sheet.ring[k]!.rest),
      wanted: places((k) => state.startTargets[k]!),
      pinned: places((k) => state.place(k)),
    },
    fitsMat: lay.fits,
    laidOn: lay.on,
    iterations:
      state.iterations +
      ordered.iterations +
      drawn.iterations +
      gentler.iterations +
      (before?.iterations ?? 0) +
      more.iterations,
    effort: {
      evaluations: Math.ceil(effort.spent),
      most: effort.most,
      cutShort: [...effort.cutShort],
    },
    residual: state.eq.residual,
    converged: state.eq.converged,
  });
};
