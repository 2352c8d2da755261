import type { Point } from '@dryflat/engine/garment';
import type { PlacedCell } from '@dryflat/paper/schematic';

const toSegment = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
  const s = Math.min(1, Math.max(0, t));
  return Math.hypot(p.x - a.x - s * dx, p.y - a.y - s * dy);
};

/** The landmark whose line lies nearest to a point of the sheet, or null if none is within `reach`. */
export const nearestDimension = (
  cells: readonly PlacedCell[],
  at: Point,
  reach: number,
): string | null => {
  let [best, found]: [number, string | null] = [reach, null];
  for (const cell of cells)
    for (const d of cell.dimensions) {
      const p = { x: at.x - cell.at.x, y: at.y - cell.at.y };
      const away = toSegment(p, d.from, d.to);
      if (away < best) [best, found] = [away, d.landmark];
    }
  return found;
};
