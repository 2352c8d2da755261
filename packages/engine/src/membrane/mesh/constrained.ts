import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import type { Divided } from './divide.ts';
import { HalfEdges, NONE, next, prev } from './half-edges.ts';
import { boxAround } from './segments.ts';

/**
 * Constrained Delaunay triangulation of the piece alone. Four far points around it keep the outline
 * off the hull, where rounding may lose slivers; a flood from the directed edges of the outline
 * keeps what lies left of them. Undefined when segments meet at distances below rounding.
 */
export const constrainedDelaunay = (from: Divided, room: number): HalfEdges | undefined => {
  const all = triangulateAll(from);
  if (!all) return undefined;
  const segment = segmentsOf(all, from);
  const inside = flood(all.halfedges, segment);
  const mesh = compact(all, segment.ids, inside, from, room);
  makeDelaunay(mesh);
  return mesh;
};

/** Far points stand this many box diagonals off. */
const FAR = 4;

/** The library counts y downwards, so y is turned over to have its triangles counter-clockwise. */
const triangulateAll = (from: Divided): Delaunator<Float64Array> | undefined => {
  const { points, segments } = from;
  const box = boxAround(points);
  const far = FAR * box.diagonal;
  const [x, y] = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const around = [x - far, y, x + far, y, x, y - far, x, y + far];
  const coords = new Float64Array(2 * points.length + around.length);
  points.forEach((p, i) => {
    coords[2 * i] = p[0];
    coords[2 * i + 1] = -p[1];
  });
  for (let i = 0; i < around.length; i++)
    coords[2 * points.length + i] = i % 2 === 0 ? around[i]! : -around[i]!;
  const all = new Delaunator(coords);
  try {
    const constrain = new Constrainautor(all);
    for (let i = 0; i < segments.length; i += 3)
      constrain.constrainOne(segments[i]!, segments[i + 1]!);
  } catch {
    // The library throws where a segment runs through a third point or another segment.
    return undefined;
  }
  return all;
};

interface Marked {
  /** Piece of every half-edge, NONE for a free edge. */
  readonly ids: Int32Array;
  /** Half-edges of the outline whose triangle is on the piece. */
  readonly seeds: readonly number[];
  /** 1 for both half-edges of the outline, at which the flood stops; it passes lines. */
  readonly walls: Uint8Array;
}

const segmentsOf = (all: Delaunator<Float64Array>, from: Divided): Marked => {
  const { segments, pieces, points } = from;
  const stride = points.length + 4;
  const pieceOf = new Map<number, number>();
  for (let i = 0; i < segments.length; i += 3)
    pieceOf.set(segments[i]! * stride + segments[i + 1]!, segments[i + 2]!);
  const { triangles, halfedges } = all;
  const ids = new Int32Array(triangles.length).fill(NONE);
  const walls = new Uint8Array(triangles.length);
  const seeds: number[] = [];
  for (let e = 0; e < triangles.length; e++) {
    const piece = pieceOf.get(triangles[e]! * stride + triangles[next(e)]!);
    if (piece === undefined) continue;
    ids[e] = piece;
    ids[halfedges[e]!] = piece;
    if (!pieces[piece]!.boundary) continue;
    seeds.push(e);
    walls[e] = walls[halfedges[e]!] = 1;
  }
  return { ids, seeds, walls };
};

const flood = (twin: Int32Array, { seeds, walls }: Marked): Uint8Array => {
  const inside = new Uint8Array(twin.length / 3);
  const stack = seeds.map((e) => (e / 3) | 0);
  while (stack.length > 0) {
    const t = stack.pop()!;
    if (inside[t]) continue;
    inside[t] = 1;
    for (let e = 3 * t; e < 3 * t + 3; e++)
      if (!walls[e] && twin[e]! >= 0) stack.push((twin[e]! / 3) | 0);
  }
  return inside;
};

const compact = (
  all: Delaunator<Float64Array>,
  ids: Int32Array,
  inside: Uint8Array,
  from: Divided,
  room: number,
): HalfEdges => {
  const mesh = new HalfEdges(room);
  for (const [x, y] of from.points) mesh.addNode(x, y);
  const slot = Int32Array.from(inside, (kept) => (kept ? mesh.addTriangle() : NONE));
  for (let e = 0; e < ids.length; e++) {
    const t = slot[(e / 3) | 0]!;
    if (t === NONE) continue;
    const to = 3 * t + (e % 3);
    mesh.tail[to] = all.triangles[e]!;
    mesh.segment[to] = ids[e]!;
    const twin = all.halfedges[e]!;
    const beyond = twin < 0 ? NONE : slot[(twin / 3) | 0]!;
    mesh.twin[to] = beyond === NONE ? NONE : 3 * beyond + (twin % 3);
  }
  return mesh;
};

/** Flips free edges until none has a node inside the circle of its triangle, by exact signs. */
export const makeDelaunay = (mesh: HalfEdges): void => {
  const stack = Array.from({ length: 3 * mesh.triangles }, (_, e) => e);
  while (stack.length > 0) {
    const e = stack.pop()!;
    const twin = mesh.twin[e]!;
    if (twin === NONE || mesh.segment[e] !== NONE) continue;
    const apex = mesh.tail[prev(twin)]!;
    if (!mesh.circleHolds((e / 3) | 0, mesh.x[apex]!, mesh.y[apex]!)) continue;
    mesh.flip(e);
    for (const t of [(e / 3) | 0, (twin / 3) | 0]) stack.push(3 * t, 3 * t + 1, 3 * t + 2);
  }
};
