import type { GivenEdge } from './arrange.ts';
import type { Divided } from './divide.ts';
import { type HalfEdges, NONE } from './half-edges.ts';
import type { Mesh } from './mesh.ts';

/** Plain arrays from the half-edges; edges in the order given and each along its own way. */
export const collect = (mesh: HalfEdges, given: Divided, edges: readonly GivenEdge[]): Mesh => {
  const directed = directedSegments(mesh, given);
  return {
    points: pointsOf(mesh),
    triangles: Uint32Array.from(mesh.tail.subarray(0, 3 * mesh.triangles)),
    edges: Uint32Array.from(directed.flatMap((s) => [s.a, s.b])),
    edgeTags: Int32Array.from(directed, (s) => edges[given.pieces[s.piece]!.edge]!.tag),
  };
};

const pointsOf = ({ x, y, nodes }: HalfEdges): Float64Array => {
  const points = new Float64Array(2 * nodes);
  for (let n = 0; n < nodes; n++) {
    points[2 * n] = x[n]!;
    points[2 * n + 1] = y[n]!;
  }
  return points;
};

interface Segment {
  readonly a: number;
  readonly b: number;
  readonly piece: number;
  /** Position of `a` along the piece, mm² (its distance times the length of the piece). */
  readonly along: number;
}

const directedSegments = (mesh: HalfEdges, given: Divided): Segment[] => {
  const segments: Segment[] = [];
  for (let e = 0; e < 3 * mesh.triangles; e++) {
    const piece = mesh.segment[e]!;
    if (piece === NONE) continue;
    const from = alongPiece(mesh, given, piece, mesh.tail[e]!);
    // Both sides of a line are half-edges; the one that runs the given way is kept.
    if (alongPiece(mesh, given, piece, mesh.head(e)) > from)
      segments.push({ a: mesh.tail[e]!, b: mesh.head(e), piece, along: from });
  }
  return segments.sort((s, t) => s.piece - t.piece || s.along - t.along);
};

const alongPiece = ({ x, y }: HalfEdges, given: Divided, piece: number, node: number): number => {
  const { a, b } = given.pieces[piece]!;
  return (x[node]! - x[a]!) * (x[b]! - x[a]!) + (y[node]! - y[a]!) * (y[b]! - y[a]!);
};
