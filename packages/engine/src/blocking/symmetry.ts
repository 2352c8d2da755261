import type { Point } from '../garment/index.ts';
import type { Mesh } from '../membrane/index.ts';
import { distance } from './plane.ts';
import type { PieceToBlock } from './types.ts';
import { wantedOf } from './wanted-outline.ts';

/** Places that differ by less than this are alike, mm: rounding of a drawing. */
const ALIKE = 1e-6;

const middleX = (points: readonly Point[]): number => {
  const xs = points.map(({ x }) => x);
  return (Math.min(...xs) + Math.max(...xs)) / 2;
};

export const mirrored = ({ x, y }: Point, axis: number): Point => ({ x: 2 * axis - x, y });

const indexOf = (points: readonly Point[], at: Point): number =>
  points.findIndex((p) => distance(p, at) <= ALIKE);

/**
 * The upright line x = … in which a piece is its own mirror image: its outline at rest and as wanted, its
 * edges and its zones. Null where there is none, or where the knitter asks for pins of their own.
 */
export const axisOf = (piece: PieceToBlock): number | null => {
  const { outline, edges, zones, pinned = [] } = piece;
  if (pinned.length > 0) return null;
  const [wanted, n] = [wantedOf(piece), outline.length];
  const [axis, goal] = [middleX(outline), middleX(wanted)];
  const twins = outline.map((p) => indexOf(outline, mirrored(p, axis)));
  const alike = twins.every((twin, i) => {
    if (twin < 0 || distance(wanted[twin]!, mirrored(wanted[i]!, goal)) > ALIKE) return false;
    const next = twins[(i + 1) % n]!;
    // The edge i → i + 1 is mirrored in the one that leads to its twin.
    return (next + 1) % n === twin && edges[next] === edges[i];
  });
  const zonesAlike = zones.every(({ polygon }) =>
    polygon.every((p) => indexOf(polygon, mirrored(p, axis)) >= 0),
  );
  return alike && zonesAlike ? axis : null;
};

/** A half outline, closed along the axis: its last edge. */
export interface Half {
  readonly points: readonly Point[];
  /** Edges of the whole outline under each but the last. */
  readonly own: readonly number[];
}

/** The right half of a symmetric outline (counter-clockwise, y up); null where the axis cuts it more than twice. */
export const rightHalf = (outline: readonly Point[], axis: number): Half | null => {
  const n = outline.length;
  const isRight = (i: number) => outline[(i + n) % n]!.x > axis + ALIKE;
  const starts = outline.flatMap((_, i) => (isRight(i) && !isRight(i - 1) ? [i] : []));
  const onAxis = outline.filter(({ x }) => Math.abs(x - axis) <= ALIKE).length;
  if (starts.length !== 1) return null;
  const own = [(starts[0]! + n - 1) % n];
  while (isRight(own.at(-1)! + 1)) own.push((own.at(-1)! + 1) % n);
  const ends = [own[0]!, (own.at(-1)! + 1) % n].map((i) => outline[i]!);
  const ended = ends.filter(({ x }) => Math.abs(x - axis) <= ALIKE).length;
  if (ended !== onAxis) return null;
  const [first, last] = ends.map(({ y }) => ({ x: axis, y })) as [Point, Point];
  return { points: [first, ...own.slice(1).map((i) => outline[i]!), last], own };
};

/** The whole mesh from that of the right half: `tags` of the half are those of the whole, below 0 on the axis. */
export const wholeMesh = (half: Mesh, outline: readonly Point[], axis: number): Mesh => {
  const count = half.points.length / 2;
  const points = [...half.points];
  const twin = Array.from({ length: count }, (_, k) => {
    const at = { x: half.points[2 * k]!, y: half.points[2 * k + 1]! };
    if (Math.abs(at.x - axis) <= ALIKE) return k;
    const to = mirrored(at, axis);
    const corner = outline[indexOf(outline, to)] ?? to;
    points.push(corner.x, corner.y);
    return points.length / 2 - 1;
  });
  const twins = outline.map((p) => indexOf(outline, mirrored(p, axis)));
  const edges: number[] = [];
  const tags: number[] = [];
  // In order around: up the right side as they come, then down the left.
  const kept = [...half.edgeTags.keys()].filter((k) => half.edgeTags[k]! >= 0);
  for (const k of kept) {
    edges.push(half.edges[2 * k]!, half.edges[2 * k + 1]!);
    tags.push(half.edgeTags[k]!);
  }
  for (const k of kept.reverse()) {
    edges.push(twin[half.edges[2 * k + 1]!]!, twin[half.edges[2 * k]!]!);
    tags.push(twins[(half.edgeTags[k]! + 1) % outline.length]!);
  }
  const { triangles } = half;
  const others = Array.from(
    triangles,
    (_, i) => twin[triangles[i % 3 === 0 ? i : i % 3 === 1 ? i + 1 : i - 1]!]!,
  );
  return {
    points: Float64Array.from(points),
    triangles: Uint32Array.from([...triangles, ...others]),
    edges: Uint32Array.from(edges),
    edgeTags: Int32Array.from(tags),
  };
};

/** Ring index of each node's mirror image; null where one has none. */
export const twinsOf = (ring: readonly Point[], axis: number): readonly number[] | null => {
  const twins = ring.map((p) => indexOf(ring, mirrored(p, axis)));
  return twins.includes(-1) ? null : twins;
};
