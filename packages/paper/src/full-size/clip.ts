import type { Place, Rect } from '../sheet/sheet.ts';

/**
 * The part of a segment inside a rectangle, its rim included, as shares of its length from 0 to 1;
 * null where none is. Liang and Barsky 1984, ACM Trans. Graph. 3, 1–22.
 */
const insideOf = (a: Place, b: Place, r: Rect): [number, number] | null => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [from, to] = [0, 1];
  const walls = [
    [-dx, a.x - r.x],
    [dx, r.x + r.width - a.x],
    [-dy, a.y - r.y],
    [dy, r.y + r.height - a.y],
  ] as const;
  for (const [towards, room] of walls) {
    if (towards === 0 && room < 0) return null;
    if (towards < 0) from = Math.max(from, room / towards);
    if (towards > 0) to = Math.min(to, room / towards);
  }
  return from <= to ? [from, to] : null;
};

const along = (a: Place, b: Place, share: number): Place => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
});

/** The parts of a chain of points that lie in a rectangle, each a chain of its own. */
export const clipped = (points: readonly Place[], window: Rect): Place[][] => {
  const runs: Place[][] = [];
  let open: Place[] | null = null;
  points.slice(1).forEach((b, k) => {
    const a = points[k]!;
    const inside = insideOf(a, b, window);
    if (inside === null) {
      open = null;
      return;
    }
    const [from, to] = inside;
    if (open === null || from > 0) {
      open = [along(a, b, from)];
      runs.push(open);
    }
    open.push(along(a, b, to));
    if (to < 1) open = null;
  });
  return runs;
};
