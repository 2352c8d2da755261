import type { Mesh } from './mesh.ts';

export interface MeshQuality {
  readonly nodes: number;
  readonly triangles: number;
  /** Degrees. */
  readonly smallestAngle: number;
  readonly largestAngle: number;
  /** mm². */
  readonly area: number;
  readonly smallestArea: number;
  /** mm, over the edges of all triangles; an edge between two triangles counts for both. */
  readonly shortestEdge: number;
  readonly meanEdge: number;
  readonly longestEdge: number;
}

const DEGREES = 180 / Math.PI;

/** Angles at the three nodes of triangle t, degrees. */
export const anglesOf = ({ points, triangles }: Mesh, t: number): [number, number, number] => {
  const angles: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < 3; i++) {
    const p = 2 * triangles[3 * t + i]!;
    const q = 2 * triangles[3 * t + ((i + 1) % 3)]!;
    const r = 2 * triangles[3 * t + ((i + 2) % 3)]!;
    const [ux, uy] = [points[q]! - points[p]!, points[q + 1]! - points[p + 1]!];
    const [vx, vy] = [points[r]! - points[p]!, points[r + 1]! - points[p + 1]!];
    angles[i] = DEGREES * Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  }
  return angles;
};

/** Signed area of triangle t, mm²; positive when counter-clockwise. */
export const areaOf = ({ points, triangles }: Mesh, t: number): number => {
  const [a, b, c] = [2 * triangles[3 * t]!, 2 * triangles[3 * t + 1]!, 2 * triangles[3 * t + 2]!];
  const [ux, uy] = [points[b]! - points[a]!, points[b + 1]! - points[a + 1]!];
  const [vx, vy] = [points[c]! - points[a]!, points[c + 1]! - points[a + 1]!];
  return (ux * vy - uy * vx) / 2;
};

const edgesOf = ({ points, triangles }: Mesh, t: number): number[] =>
  [0, 1, 2].map((i) => {
    const a = 2 * triangles[3 * t + i]!;
    const b = 2 * triangles[3 * t + ((i + 1) % 3)]!;
    return Math.hypot(points[b]! - points[a]!, points[b + 1]! - points[a + 1]!);
  });

/** Angles, areas and edges of a mesh of at least one triangle. */
export const meshQuality = (mesh: Mesh): MeshQuality => {
  const count = mesh.triangles.length / 3;
  let [smallestAngle, largestAngle, area, smallestArea] = [180, 0, 0, Number.POSITIVE_INFINITY];
  let [shortestEdge, sum, longestEdge] = [Number.POSITIVE_INFINITY, 0, 0];
  for (let t = 0; t < count; t++) {
    const angles = anglesOf(mesh, t);
    smallestAngle = Math.min(smallestAngle, ...angles);
    largestAngle = Math.max(largestAngle, ...angles);
    const own = areaOf(mesh, t);
    area += own;
    smallestArea = Math.min(smallestArea, own);
    const edges = edgesOf(mesh, t);
    shortestEdge = Math.min(shortestEdge, ...edges);
    longestEdge = Math.max(longestEdge, ...edges);
    sum += edges[0]! + edges[1]! + edges[2]!;
  }
  return {
    nodes: mesh.points.length / 2,
    triangles: count,
    smallestAngle,
    largestAngle,
    area,
    smallestArea,
    shortestEdge,
    meanEdge: sum / (3 * count),
    longestEdge,
  };
};

/**
 * Smallest angle of all triangles, degrees, by the least squared sine: one
 * square root for the whole mesh.
 */
export const smallestAngleOf = ({ points, triangles }: Mesh): number => {
  let least = 1;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [2 * triangles[t]!, 2 * triangles[t + 1]!, 2 * triangles[t + 2]!];
    const [ux, uy] = [points[b]! - points[a]!, points[b + 1]! - points[a + 1]!];
    const [vx, vy] = [points[c]! - points[a]!, points[c + 1]! - points[a + 1]!];
    const [uu, vv] = [ux * ux + uy * uy, vx * vx + vy * vy];
    const ww = (vx - ux) * (vx - ux) + (vy - uy) * (vy - uy);
    const cross = ux * vy - uy * vx;
    least = Math.min(least, (cross * cross * Math.min(uu, vv, ww)) / (uu * vv * ww));
  }
  return DEGREES * Math.asin(Math.sqrt(least));
};
