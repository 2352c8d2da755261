import type { Place } from './sheet.ts';

/** The way out of a closed outline from the edge of it that is nearest to `p`, of length 1. */
export const outwards = (outline: readonly Place[], p: Place): Place => {
  let [out, nearest] = [{ x: 0, y: -1 }, Number.POSITIVE_INFINITY];
  let turns = 0;
  outline.forEach((a, k) => {
    const b = outline[(k + 1) % outline.length]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length = Math.hypot(dx, dy);
    if (length === 0) return;
    turns += a.x * b.y - b.x * a.y;
    const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length ** 2));
    const far = Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
    if (far < nearest) [out, nearest] = [{ x: dy / length, y: -dx / length }, far];
  });
  return turns >= 0 ? out : { x: -out.x, y: -out.y };
};
