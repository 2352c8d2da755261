import type { Point } from '../garment/index.ts';

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

export const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
});

export const plus = (a: Point, dx: number, dy: number): Point => ({ x: a.x + dx, y: a.y + dy });

/** Twice the signed area: above 0 where the polygon turns counter-clockwise with y up. */
export const turn = (polygon: readonly Point[]): number =>
  polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);

export const middleOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
  y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
});

/** Whether a place lies in a polygon; places on its edges may count either way. */
export const inside = (polygon: readonly Point[], { x, y }: Point): boolean => {
  let within = false;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  });
  return within;
};

export interface OnOutline {
  /** Edge from point `edge` to the next. */
  readonly edge: number;
  /** Share of the way along it, 0 to 1. */
  readonly share: number;
  /** How far the place is from there, mm. */
  readonly off: number;
}

/** The nearest place on a closed outline. */
export const nearestOn = (outline: readonly Point[], p: Point): OnOutline => {
  let best: OnOutline = { edge: 0, share: 0, off: Number.POSITIVE_INFINITY };
  outline.forEach((a, edge) => {
    const b = outline[(edge + 1) % outline.length]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy);
    const share = Math.min(1, Math.max(0, along));
    const off = distance(p, between(a, b, share));
    if (off < best.off) best = { edge, share, off };
  });
  return best;
};

const side = (a: Point, b: Point, p: Point): number =>
  (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

/** First pair of edges that have a place in common and are not neighbours; null where there is none. */
export const crossing = (polygon: readonly Point[]): readonly [number, number] | null => {
  const n = polygon.length;
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b] = [polygon[i]!, polygon[i + 1]!];
      const [c, d] = [polygon[j]!, polygon[(j + 1) % n]!];
      const apart =
        Math.max(a.x, b.x) < Math.min(c.x, d.x) ||
        Math.max(c.x, d.x) < Math.min(a.x, b.x) ||
        Math.max(a.y, b.y) < Math.min(c.y, d.y) ||
        Math.max(c.y, d.y) < Math.min(a.y, b.y);
      if (apart) continue;
      if (side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0) return [i, j];
    }
  return null;
};

/** Shares of the way from a to b at which the segment crosses the edges of a polygon, ends left out. */
export const crossesAt = (a: Point, b: Point, polygon: readonly Point[]): number[] =>
  polygon.flatMap((c, i) => {
    const d = polygon[(i + 1) % polygon.length]!;
    const [from, to] = [side(c, d, a), side(c, d, b)];
    if (from * to >= 0 || side(a, b, c) * side(a, b, d) > 0) return [];
    return [from / (from - to)];
  });
