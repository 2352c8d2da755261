import type { Point } from '@dryflat/engine/garment';

/** The place of a closed outline that is nearest to `p`: a pin stays on the edge when the piece comes out another size. */
export const onEdge = (outline: readonly Point[], p: Point): Point => {
  let [best, off] = [p, Number.POSITIVE_INFINITY];
  outline.forEach((a, k) => {
    const b = outline[(k + 1) % outline.length]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1);
    const share = Math.min(1, Math.max(0, along));
    const place = { x: a.x + share * dx, y: a.y + share * dy };
    const far = Math.hypot(p.x - place.x, p.y - place.y);
    if (far < off) [best, off] = [place, far];
  });
  return best;
};
