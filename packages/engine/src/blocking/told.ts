import type { Standing } from './choose-pins.ts';
import { stretchReader } from './mean-stretch.ts';
import type { OnMat, Reference } from './on-mat.ts';
import { spanOf } from './outline-span.ts';
import { placeIn } from './piece-sheet.ts';
import type { PinState } from './pin-state.ts';
import type { Placement } from './placements.ts';
import { tapeDistances } from './tape.ts';
import type { GapScallop, PinKind, PinPlaced, StretchUse } from './types.ts';

const heldOf = ({ sheet: { ring, piece } }: PinState, { nodes }: Placement) => {
  const [first, last] = [ring[nodes[0]!]!.rest, ring[nodes.at(-1)!]!.rest];
  return spanOf(piece.outline, { x: first.x, y: -first.y }, { x: last.x, y: -last.y });
};

/** A placement with its number among the steps. */
export interface Numbered {
  readonly placement: Placement;
  readonly order: number;
}

/**
 * The placements on the mat, in their order, each with its kind and its distances by tape: from what is in
 * before it, with `before` all of them, and from what is on the mat itself.
 */
export const pinsTold = (
  state: PinState,
  steps: readonly Numbered[],
  { lay, kinds }: { lay: Pick<OnMat, 'place'>; kinds: ReadonlyMap<Placement, PinKind> },
  fixed: readonly Reference[],
  before: readonly Reference[],
): PinPlaced[] => {
  const placed = [...before];
  return steps.map(({ placement: each, order }): PinPlaced => {
    const at = lay.place(each.at);
    const from = tapeDistances(at, placed, fixed);
    const kind = kinds.get(each)!;
    if (each.kind === 'pin') placed.push({ name: `pin ${order}`, at });
    const [a, b] = [lay.place({ x: 0, y: 0 }), lay.place(each.along)];
    return {
      xMm: at.x,
      yMm: at.y,
      kind,
      order,
      piece: state.sheet.piece.name,
      edge: state.sheet.ring[each.nodes[0]!]!.kind,
      on: heldOf(state, each),
      from,
      pullN: each.pullN,
      along: each.kind === 'pin' ? null : { lengthMm: each.lengthMm, dx: b.x - a.x, dy: b.y - a.y },
    };
  });
};

/** Scallops by the orders of the pins at both ends. */
export const scallopsTold = (
  standing: Standing,
  steps: readonly Numbered[],
): { max: number; gaps: GapScallop[] } => {
  const orders = new Map<number, number>();
  for (const { placement, order } of steps) {
    const own = placement.kind === 'wire' ? placement.nodes.slice(1, -1) : placement.nodes;
    for (const node of own) if (!orders.has(node)) orders.set(node, order);
  }
  return {
    max: standing.scallop,
    gaps: standing.gaps.map(({ from, to, scallop }) => ({
      from: orders.get(from) ?? 0,
      to: orders.get(to) ?? 0,
      mm: scallop,
    })),
  };
};

const pairs = (points: Float64Array, lay: Pick<OnMat, 'place'>): number[] =>
  Array.from({ length: points.length / 2 }, (_, k) => {
    const { x, y } = lay.place(placeIn(points, k));
    return [x, y];
  }).flat();

/** How far the fabric is stretched, with its worst place. */
export const stretchTold = ({ sheet, eq }: PinState, lay: Pick<OnMat, 'place'>): StretchUse => {
  const { overWet, worst, ofLimit } = stretchReader(sheet)(eq);
  return {
    max: ofLimit,
    overWet: overWet[worst.node]!,
    where: lay.place(placeIn(eq.points, worst.node)),
    along: worst.along,
    edge: worst.edge,
    field: {
      points: pairs(eq.points, lay),
      triangles: [...sheet.mesh.triangles],
      overWet: [...overWet],
    },
  };
};
