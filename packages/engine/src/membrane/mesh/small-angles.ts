import type { Divided } from './divide.ts';
import type { HalfEdges } from './half-edges.ts';

/** Corners below this angle end the guarantee of refinement (Ruppert 1995, J. Algorithms 18, 548). */
const COS_SMALL = Math.cos(Math.PI / 3);

/** Distances from a corner that were made equal by shells differ by rounding only. */
const EQUAL = 1e-9;

/** Nodes at which two pieces meet at less than 60°. */
export const smallCorners = ({ points, pieces }: Divided): Uint8Array => {
  const directions = new Map<number, [number, number][]>();
  const small = new Uint8Array(points.length);
  const meet = (at: number, to: number) => {
    const [dx, dy] = [points[to]![0] - points[at]![0], points[to]![1] - points[at]![1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    const unit: [number, number] = [dx / length, dy / length];
    const others = directions.get(at);
    if (!others) directions.set(at, [unit]);
    else {
      if (others.some((u) => u[0] * unit[0] + u[1] * unit[1] > COS_SMALL)) small[at] = 1;
      others.push(unit);
    }
  };
  for (const { a, b } of pieces) {
    meet(a, b);
    meet(b, a);
  }
  return small;
};

/**
 * Share at which a segment of `length` that leaves a small corner is split: on a circle whose radius
 * is a power of two, between a third and two thirds, so that both sides of the corner are split at
 * the same distances and stop encroaching on each other (Shewchuk 2002, Comput. Geom. 22, 21).
 */
export const shellShare = (length: number): number =>
  2 ** Math.floor(Math.log2((2 / 3) * length)) / length;

/**
 * The nodes p and q lie on pieces that leave a common corner at a small angle, equally far from it:
 * the short edge between them is as long as the corner lets it be.
 */
export const spansCorner = (
  mesh: HalfEdges,
  { pieces }: Divided,
  pieceP: number,
  pieceQ: number,
  p: number,
  q: number,
): boolean => {
  if (pieceP < 0 || pieceQ < 0 || pieceP === pieceQ) return false;
  const [one, two] = [pieces[pieceP]!, pieces[pieceQ]!];
  const c = one.a === two.a || one.a === two.b ? one.a : one.b;
  if (c !== two.a && c !== two.b) return false;
  const { x, y } = mesh;
  const [ux, uy] = [x[p]! - x[c]!, y[p]! - y[c]!];
  const [vx, vy] = [x[q]! - x[c]!, y[q]! - y[c]!];
  const [u, v] = [Math.hypot(ux, uy), Math.hypot(vx, vy)];
  return Math.abs(u - v) <= EQUAL * u && ux * vx + uy * vy > COS_SMALL * u * v;
};
