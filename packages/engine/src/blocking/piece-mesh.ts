import type { Point } from '../garment/index.ts';
import { edgeChains, gradedSize, type Mesh, triangulate, type Xy } from '../membrane/index.ts';
import { ok, type Result } from '../units/index.ts';
import { distance, turn } from './plane.ts';
import { rightHalf, wholeMesh } from './symmetry.ts';

/** One node of the edge of a piece, in order around it; y up. */
export interface EdgeNode {
  readonly node: number;
  /** Edge of the outline that leaves it or that it lies on. */
  readonly edge: number;
  /** Share of the way along that edge, 0 at its point. */
  readonly share: number;
  readonly rest: Point;
}

export interface PieceMesh {
  readonly mesh: Mesh;
  /** Around the piece, in the order of the outline. */
  readonly ring: readonly EdgeNode[];
  /** Typical length of an edge of a triangle at the outline, mm. */
  readonly spacing: number;
}

/** Equilateral triangles of side h hold h²·√3/2 of area per node. */
const AREA_PER_NODE = Math.sqrt(3) / 2;
/** Along edges triangles are finer, because scallops are read there; further in, coarser. */
const FINE = 0.75;
const COARSE = 1.8;
const GRADE = 0.25;
/** Tag of the edges along which two halves are joined. */
const ON_AXIS = -1;

/**
 * Mesh of an outline (y up) of about so many nodes; mirrored in the line x = `axis`, where the outline is
 * its own mirror image in it.
 */
export const meshOf = (
  outline: readonly Point[],
  nodes: number,
  axis: number | null = null,
): Result<PieceMesh> => {
  const area = Math.abs(turn(outline)) / 2;
  const around = outline.reduce(
    (sum, p, i) => sum + distance(p, outline[(i + 1) % outline.length]!),
    0,
  );
  // Long thin pieces are mostly edge: it takes at most a third of the nodes.
  const side = Math.max(Math.sqrt(area / (nodes * AREA_PER_NODE)), (3 * around) / nodes);
  const ring: Xy[] = outline.map(({ x, y }) => [x, y]);
  const size = gradedSize({
    edges: [[...ring, ring[0]!]],
    pins: [],
    coarse: COARSE * side,
    fine: FINE * side,
    grade: GRADE,
  });
  const half = axis === null ? null : rightHalf(outline, axis);
  const made = triangulate({
    outer:
      half === null
        ? { points: ring, tags: ring.map((_, i) => i) }
        : { points: half.points.map(({ x, y }): Xy => [x, y]), tags: [...half.own, ON_AXIS] },
    holes: [],
    lines: [],
    nodes: [],
    size,
    minAngle: 20,
    maxPoints: 4 * nodes + 4 * outline.length,
  });
  if (!made.ok) return made;
  const mesh = half === null ? made.value.mesh : wholeMesh(made.value.mesh, outline, axis ?? 0);
  return ok({ mesh, ring: ringOf(mesh, outline), spacing: FINE * side });
};

const ringOf = (mesh: Mesh, outline: readonly Point[]): EdgeNode[] =>
  outline.flatMap((from, edge) => {
    const to = outline[(edge + 1) % outline.length]!;
    const length = distance(from, to);
    const nodes = edgeChains(mesh, edge).flatMap((chain) => [...chain]);
    const read = nodes.map((node): EdgeNode => {
      const rest = { x: mesh.points[2 * node]!, y: mesh.points[2 * node + 1]! };
      return { node, edge, share: distance(from, rest) / length, rest };
    });
    // Each corner belongs to the edge that leaves it.
    return read
      .sort((a, b) => a.share - b.share)
      .filter(({ rest }) => rest.x !== to.x || rest.y !== to.y);
  });
