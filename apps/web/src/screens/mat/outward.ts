interface Point {
  readonly x: number;
  readonly y: number;
}

/** Which way is out of a closed outline at the corner of it nearest to a place: a unit vector. */
export const outwardAt = (outline: readonly Point[], { x, y }: Point): Point => {
  const n = outline.length;
  let [best, off] = [0, Number.POSITIVE_INFINITY];
  outline.forEach((p, k) => {
    const d = Math.hypot(p.x - x, p.y - y);
    if (d < off) [best, off] = [k, d];
  });
  const [before, after] = [outline.at(best - 1)!, outline[(best + 1) % n]!];
  const [from, to] = [along(before, outline[best]!), along(outline[best]!, after)];
  const [tx, ty] = [from.x + to.x, from.y + to.y];
  const size = Math.hypot(tx, ty) || 1;
  const round = turning(outline) > 0 ? 1 : -1;
  return { x: (round * ty) / size, y: (-round * tx) / size };
};

const along = (a: Point, b: Point): Point => {
  const size = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
};

/** Twice the signed area. */
const turning = (outline: readonly Point[]): number =>
  outline.reduce((sum, p, k) => {
    const q = outline[(k + 1) % outline.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
