import type { Point } from '../garment/index.ts';
import type { Standing } from './choose-pins.ts';
import { kindsOf } from './kinds.ts';
import { matReferences, type OnMat, type Reference } from './on-mat.ts';
import { spanOf } from './outline-span.ts';
import { placeIn } from './piece-sheet.ts';
import type { PinState } from './pin-state.ts';
import type { Placement } from './placements.ts';
import { tapeDistances } from './tape.ts';
import type { BlockQuestion, GapScallop, PinPlaced, StretchUse } from './types.ts';

const heldOf = ({ sheet: { ring, piece } }: PinState, { nodes }: Placement) => {
  const [first, last] = [ring[nodes[0]!]!.rest, ring[nodes.at(-1)!]!.rest];
  return spanOf(piece.outline, { x: first.x, y: -first.y }, { x: last.x, y: -last.y });
};

/** The placements on the mat, in their order, each with its kind and its distances by tape. */
export const pinsTold = (
  state: PinState,
  order: readonly Placement[],
  lay: OnMat,
  { stock, mat }: BlockQuestion,
  pinsForWires: number,
): PinPlaced[] => {
  const kinds = kindsOf(order, stock, pinsForWires);
  const fixed = matReferences(mat);
  const placed: Reference[] = [];
  return order.map((each, k): PinPlaced => {
    const at = lay.place(each.at);
    const from = tapeDistances(at, placed, fixed);
    const kind = kinds.get(each)!;
    if (each.kind === 'pin') placed.push({ name: `pin ${k + 1}`, at });
    const [a, b] = [lay.place({ x: 0, y: 0 }), lay.place(each.along)];
    return {
      xMm: at.x,
      yMm: at.y,
      kind,
      order: k + 1,
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
  order: readonly Placement[],
): { max: number; gaps: GapScallop[] } => {
  const orders = new Map<number, number>();
  order.forEach(({ kind, nodes }, k) => {
    const own = kind === 'wire' ? nodes.slice(1, -1) : nodes;
    for (const node of own) if (!orders.has(node)) orders.set(node, k + 1);
  });
  return {
    max: standing.scallop,
    gaps: standing.gaps.map(({ from, to, scallop }) => ({
      from: orders.get(from) ?? 0,
      to: orders.get(to) ?? 0,
      mm: scallop,
    })),
  };
};

const pairs = (points: Float64Array, lay: OnMat): number[] =>
  Array.from({ length: points.length / 2 }, (_, k) => {
    const { x, y } = lay.place(placeIn(points, k));
    return [x, y];
  }).flat();

/** Use of what the fabric can do, with its worst place. */
export const useTold = ({ sheet, eq }: PinState, lay: OnMat): StretchUse => {
  const { triangles } = sheet.mesh;
  let [max, worst] = [0, 0];
  eq.use.forEach((use, k) => {
    if (use > max) [max, worst] = [use, k];
  });
  const corners = [0, 1, 2].map((k) => placeIn(eq.points, triangles[3 * (worst >> 1) + k]!));
  const where: Point = {
    x: corners.reduce((sum, p) => sum + p.x / 3, 0),
    y: corners.reduce((sum, p) => sum + p.y / 3, 0),
  };
  return {
    max,
    where: lay.place(where),
    along: worst % 2 === 0 ? 'width' : 'length',
    field: {
      points: pairs(eq.points, lay),
      triangles: [...triangles],
      use: Array.from({ length: triangles.length / 3 }, (_, t) =>
        Math.max(eq.use[2 * t]!, eq.use[2 * t + 1]!),
      ),
    },
  };
};
