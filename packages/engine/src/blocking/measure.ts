import type { Point } from '../garment/index.ts';
import { type PieceSheet, placeIn, type RingNode } from './piece-sheet.ts';
import { distance } from './plane.ts';
import type { DimensionToReach } from './types.ts';
import { placeOf, toleranceOf } from './wanted-outline.ts';

/** A dimension as two nodes of the edge, whose moves change it. */
export interface Ruler {
  readonly dimension: DimensionToReach;
  readonly tolerance: number;
  /** Ring indices. */
  readonly from: number;
  readonly to: number;
  /** From one end to the other at rest, y up, mm. */
  readonly rest: Point;
  /** Both ends are nodes: it is their distance. Else the way along its own direction counts. */
  readonly straight: boolean;
}

/** What a tape tells, mm. */
export const SEEN = 2;
/** An end this close to a node is that node, mm; as refined-outline.ts joins them. */
const AT_NODE = 6;
/** An end off the edge moves with the nearest node at its own level, within this, mm. */
const LEVEL = 4;

const standIn = (ring: readonly RingNode[], at: Point, along: 'x' | 'y') => {
  const nearest = (score: (p: Point) => number) =>
    ring.reduce((best, { rest }, k) => (score(rest) < score(ring[best]!.rest) ? k : best), 0);
  const own = nearest((p) => distance(p, at));
  if (distance(ring[own]!.rest, at) <= AT_NODE) return { index: own, exact: true };
  const off = (p: Point) => Math.abs(along === 'y' ? p.y - at.y : p.x - at.x);
  const level = nearest((p) => distance(p, at) + (off(p) <= LEVEL ? 0 : 1e6));
  return { index: off(ring[level]!.rest) <= LEVEL ? level : own, exact: false };
};

export const rulersOf = ({ piece, ring }: PieceSheet): Ruler[] =>
  piece.dimensions.map((dimension) => {
    const along = dimension.direction === 'length' ? 'y' : 'x';
    const [a, b] = [dimension.from, dimension.to].map((end) => {
      const { x, y } = placeOf(piece.outline, end);
      return { x, y: -y };
    }) as [Point, Point];
    const [from, to] = [standIn(ring, a, along), standIn(ring, b, along)];
    return {
      dimension,
      tolerance: toleranceOf(dimension),
      from: from.index,
      to: to.index,
      rest: { x: b.x - a.x, y: b.y - a.y },
      straight: from.exact && to.exact,
    };
  });

export const restOf = ({ rest }: Ruler): number => Math.hypot(rest.x, rest.y);

/**
 * The dimension with the nodes at `points`, mm. `rest` are the places that count as unmoved: those of
 * the mesh, or of a sheet that is larger at rest by `factor` (x, y).
 */
export const measured = (
  ruler: Ruler,
  ring: readonly RingNode[],
  points: Float64Array,
  factor: readonly [number, number] = [1, 1],
): number => {
  const [a, b] = [ring[ruler.from]!, ring[ruler.to]!];
  const [p, q] = [placeIn(points, a.node), placeIn(points, b.node)];
  const [fx, fy] = factor;
  const x = fx * ruler.rest.x + (q.x - p.x) - fx * (b.rest.x - a.rest.x);
  const y = fy * ruler.rest.y + (q.y - p.y) - fy * (b.rest.y - a.rest.y);
  const length = restOf(ruler);
  return ruler.straight
    ? Math.hypot(x, y)
    : Math.max(0, (x * ruler.rest.x + y * ruler.rest.y) / length);
};
