import { type HalfEdges, NONE, next, prev } from './half-edges.ts';
import { orient } from './predicates.ts';

export interface Found {
  /** Triangle that holds the place, its edges included; NONE when a segment is in the way. */
  triangle: number;
  /** Half-edge of the segment in the way, seen from the start; NONE when there is none. */
  blocked: number;
}

/**
 * Walks from the centroid of triangle t straight to the place, by exact signs. Both answers are NONE
 * after as many steps as there are triangles, which a straight line cannot need.
 */
export const walkTo = (mesh: HalfEdges, t: number, x: number, y: number, found: Found): void => {
  const { x: X, y: Y, tail, twin, segment } = mesh;
  const [a, b, c] = [tail[3 * t]!, tail[3 * t + 1]!, tail[3 * t + 2]!];
  const fromX = (X[a]! + X[b]! + X[c]!) / 3;
  const fromY = (Y[a]! + Y[b]! + Y[c]!) / 3;
  const leftOfPath = (n: number) => orient(fromX, fromY, x, y, X[n]!, Y[n]!) > 0;
  found.triangle = found.blocked = NONE;
  let e = exitOfFirst(mesh, t, x, y, leftOfPath);
  if (e === NONE) found.triangle = t;
  for (let steps = mesh.triangles; e !== NONE && steps >= 0; steps--) {
    if (segment[e] !== NONE || twin[e] === NONE) {
      found.blocked = e;
      return;
    }
    const entry = twin[e]!;
    const beyondNext = mesh.sideOf(next(entry), x, y) < 0;
    const beyondPrev = mesh.sideOf(prev(entry), x, y) < 0;
    if (beyondNext && beyondPrev) e = leftOfPath(tail[prev(entry)]!) ? next(entry) : prev(entry);
    else if (beyondNext) e = next(entry);
    else if (beyondPrev) e = prev(entry);
    else {
      e = NONE;
      found.triangle = (entry / 3) | 0;
    }
  }
};

/** The edge through which the path leaves its first triangle; NONE when it ends there. */
const exitOfFirst = (
  mesh: HalfEdges,
  t: number,
  x: number,
  y: number,
  leftOfPath: (n: number) => boolean,
): number => {
  for (let e = 3 * t; e < 3 * t + 3; e++)
    if (mesh.sideOf(e, x, y) < 0 && !leftOfPath(mesh.tail[e]!) && leftOfPath(mesh.head(e)))
      return e;
  for (let e = 3 * t; e < 3 * t + 3; e++) if (mesh.sideOf(e, x, y) < 0) return e;
  return NONE;
};
