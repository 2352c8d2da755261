import type { Xy } from './mesh.ts';
import { orient } from './predicates.ts';

/** By a plain root, which is much faster than `hypot`: no piece is so large that squares overflow. */
export const distanceOf = (p: Xy, q: Xy): number => {
  const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
  return Math.sqrt(dx * dx + dy * dy);
};

/** Share of the way from a to b that is nearest to p, within 0 to 1; 0 when a is b. */
export const nearestShare = (p: Xy, a: Xy, b: Xy): number => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  if (square === 0) return 0;
  return Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square));
};

export const between = (a: Xy, b: Xy, share: number): Xy => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
];

export const distanceToSegment = (p: Xy, a: Xy, b: Xy): number =>
  distanceOf(p, between(a, b, nearestShare(p, a, b)));

const side = (a: Xy, b: Xy, p: Xy): number => Math.sign(orient(a[0], a[1], b[0], b[1], p[0], p[1]));

/** Both segments have an end strictly on each side of the other: exact. */
export const crosses = (a: Xy, b: Xy, c: Xy, d: Xy): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

/** Where two crossing segments meet, to rounding. */
export const crossing = (a: Xy, b: Xy, c: Xy, d: Xy): Xy => {
  const fromC = orient(a[0], a[1], b[0], b[1], c[0], c[1]);
  const fromD = orient(a[0], a[1], b[0], b[1], d[0], d[1]);
  return between(c, d, fromC / (fromC - fromD));
};

/** Twice the signed area of a ring: positive when it runs counter-clockwise. */
export const doubleArea = (ring: readonly Xy[]): number => {
  const [ox, oy] = ring[0] ?? [0, 0];
  let sum = 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const [ax, ay] = ring[i]!;
    const [bx, by] = ring[i + 1]!;
    sum += (ax - ox) * (by - oy) - (bx - ox) * (ay - oy);
  }
  return sum;
};

/** Even-odd test with exact sides; a point on the ring may come out either way. */
export const insideRing = (p: Xy, ring: readonly Xy[]): boolean => {
  let inside = false;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % ring.length]!;
    if (a[1] > p[1] === b[1] > p[1]) continue;
    const up = b[1] > a[1];
    if (side(a, b, p) > 0 === up) inside = !inside;
  }
  return inside;
};

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly diagonal: number;
}

export const boxAround = (points: readonly Xy[]): Box => {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top, diagonal: Math.hypot(right - left, top - bottom) };
};

/** Distance of p from the endless line through a and b. */
export const distanceToLine = (a: Xy, b: Xy, p: Xy): number =>
  Math.abs(orient(a[0], a[1], b[0], b[1], p[0], p[1])) / distanceOf(a, b);
