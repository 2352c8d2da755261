import type { CubicSegment, EdgeKind, Point, Segment } from './types.ts';

export const point = (x: number, y: number): Point => ({ x, y });

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

export const line = (from: Point, to: Point, edge: EdgeKind): Segment => ({
  kind: 'line',
  from,
  to,
  edge,
});

export const cubic = (from: Point, c1: Point, c2: Point, to: Point, edge: EdgeKind): Segment => ({
  kind: 'cubic',
  from,
  c1,
  c2,
  to,
  edge,
});

const flip = (p: Point): Point => point(0 - p.x, p.y);

/** The segment mirrored in x = 0 and run backwards, so that a mirrored path goes on closing. */
const mirrorSegment = (s: Segment): Segment =>
  s.kind === 'line'
    ? line(flip(s.to), flip(s.from), s.edge)
    : cubic(flip(s.to), flip(s.c2), flip(s.c1), flip(s.from), s.edge);

/** An open path from the line x = 0 back to it becomes a closed one by its mirror image. */
export const withMirror = (half: readonly Segment[]): Segment[] => [
  ...half,
  ...[...half].reverse().map(mirrorSegment),
];

/** Drops segments of no length, which come from sizes that coincide. */
export const withoutNothing = (path: readonly Segment[]): Segment[] =>
  path.filter((s) => distance(s.from, s.to) > 0);

const cubicAt = (s: CubicSegment, t: number): Point => {
  const u = 1 - t;
  const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return point(
    a * s.from.x + b * s.c1.x + c * s.c2.x + d * s.to.x,
    a * s.from.y + b * s.c1.y + c * s.c2.y + d * s.to.y,
  );
};

/**
 * Number of equal parameter steps that keep every chord within `tolerance` of its curve: the error
 * of linear interpolation is at most M/(8 n²), with M the largest second derivative, and that of a
 * cubic is at most 6 times the larger second difference of its control points.
 */
const stepsOf = (s: CubicSegment, tolerance: number): number => {
  const bend = (p: Point, q: Point, r: Point) =>
    Math.hypot(p.x - 2 * q.x + r.x, p.y - 2 * q.y + r.y);
  const largest = 6 * Math.max(bend(s.from, s.c1, s.c2), bend(s.c1, s.c2, s.to));
  return Math.max(1, Math.ceil(Math.sqrt(largest / (8 * tolerance))));
};

const flattenSegment = (s: Segment, tolerance: number): Point[] => {
  if (s.kind === 'line') return [s.to];
  const steps = Math.min(256, stepsOf(s, tolerance));
  return Array.from({ length: steps }, (_, i) =>
    i + 1 === steps ? s.to : cubicAt(s, (i + 1) / steps),
  );
};

/**
 * The corners of a polygon that stays within `tolerance` millimetres of the path (256 chords a curve
 * at most). The first corner is not repeated at the end. An empty path gives no corners.
 */
export const flattenPath = (path: readonly Segment[], tolerance = 0.25): Point[] => {
  const last = path.at(-1);
  const first = path[0];
  if (first === undefined || last === undefined) return [];
  const corners = [first.from, ...path.flatMap((s) => flattenSegment(s, tolerance))];
  return distance(last.to, first.from) === 0 ? corners.slice(0, -1) : corners;
};

/** Length along the path, in millimetres, by chords. */
export const pathLength = (path: readonly Segment[], tolerance = 0.01): number =>
  path.reduce((sum, s) => {
    const corners = [s.from, ...flattenSegment(s, tolerance)];
    return sum + corners.slice(1).reduce((l, p, i) => l + distance(corners[i]!, p), 0);
  }, 0);

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest upright box around points; around none, an empty box at the origin. */
export const boxOf = (points: readonly Point[]): Box =>
  points.length === 0
    ? { left: 0, top: 0, right: 0, bottom: 0 }
    : {
        left: Math.min(...points.map((p) => p.x)),
        top: Math.min(...points.map((p) => p.y)),
        right: Math.max(...points.map((p) => p.x)),
        bottom: Math.max(...points.map((p) => p.y)),
      };

export const joinBoxes = (boxes: readonly Box[]): Box =>
  boxOf(boxes.flatMap((b) => [point(b.left, b.top), point(b.right, b.bottom)]));

const pair = (p: Point, place: (p: Point) => Point): string => {
  const { x, y } = place(p);
  return `${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100}`;
};

const close = (path: readonly Segment[]): string =>
  distance(path.at(-1)!.to, path[0]!.from) === 0 ? ' Z' : '';

/**
 * The path as the `d` attribute of an SVG path element, each point first moved by `place` and
 * rounded to hundredths. A path that ends where it began is closed. An empty path gives `''`.
 */
export const pathToSvg = (
  path: readonly Segment[],
  place: (p: Point) => Point = (p) => p,
): string => {
  const first = path[0];
  if (first === undefined) return '';
  const parts = path.map((s) =>
    s.kind === 'line'
      ? `L${pair(s.to, place)}`
      : `C${pair(s.c1, place)} ${pair(s.c2, place)} ${pair(s.to, place)}`,
  );
  return `M${pair(first.from, place)} ${parts.join(' ')}${close(path)}`;
};
