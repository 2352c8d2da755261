import type { Mesh, MeshQuestion, Xy } from '../mesh.ts';
import { distanceToSegment } from '../segments.ts';

export const pointOf = ({ points }: Mesh, node: number): Xy => [
  points[2 * node]!,
  points[2 * node + 1]!,
];

/** How many triangles run along each undirected edge, by `low × nodes + high`. */
export const edgeUses = ({ points, triangles }: Mesh): Map<number, number> => {
  const uses = new Map<number, number>();
  for (let e = 0; e < triangles.length; e++) {
    const key = edgeKey(points, triangles[e]!, triangles[e % 3 === 2 ? e - 2 : e + 1]!);
    uses.set(key, (uses.get(key) ?? 0) + 1);
  }
  return uses;
};

export const edgeKey = (points: Float64Array, a: number, b: number): number =>
  (Math.min(a, b) * points.length) / 2 + Math.max(a, b);

/** Corners of the question at which two of its edges meet at less than 60°, with both edges. */
export interface SmallCorner {
  readonly at: Xy;
  readonly arms: readonly [Xy, Xy];
}

export const smallCornersOf = (q: MeshQuestion): SmallCorner[] => {
  const arms = armsOf(q);
  return arms.flatMap(([at, one], i) =>
    arms.slice(i + 1).flatMap(([other, two]) => {
      if (at[0] !== other[0] || at[1] !== other[1]) return [];
      const [u, v] = [sub(one, at), sub(two, at)];
      const cos = (u[0] * v[0] + u[1] * v[1]) / (Math.hypot(...u) * Math.hypot(...v));
      return cos > 0.5 ? [{ at, arms: [one, two] as const }] : [];
    }),
  );
};

const sub = (p: Xy, q: Xy): Xy => [p[0] - q[0], p[1] - q[1]];

/** Every edge of the question from each of its ends. */
const armsOf = (q: MeshQuestion): (readonly [Xy, Xy])[] => {
  const edges = [
    ...[q.outer, ...q.holes].flatMap(({ points }) =>
      points.map((p, i) => [p, points[(i + 1) % points.length]!] as const),
    ),
    ...q.lines.flatMap(({ points }) => points.slice(1).map((p, i) => [points[i]!, p] as const)),
  ];
  return edges.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]);
};

/** Both ends of the shortest edge of triangle t lie on the two arms of one small corner. */
export const spansSmallCorner = (
  mesh: Mesh,
  t: number,
  corners: readonly SmallCorner[],
): boolean => {
  const [a, b, c] = [0, 1, 2].map((i) => pointOf(mesh, mesh.triangles[3 * t + i]!)) as [Xy, Xy, Xy];
  const pairs: [Xy, Xy][] = [
    [a, b],
    [b, c],
    [c, a],
  ];
  const length = ([p, q]: [Xy, Xy]) => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const [p, q] = pairs.reduce((least, pair) => (length(pair) < length(least) ? pair : least));
  // Nodes on an edge are off it by rounding of numbers below 1000 only.
  const on = (n: Xy, at: Xy, arm: Xy) => distanceToSegment(n, at, arm) < 1e-9;
  return corners.some(
    ({ at, arms: [one, two] }) =>
      (on(p, at, one) && on(q, at, two)) || (on(q, at, one) && on(p, at, two)),
  );
};
