import { flattenPath, type OutlinePiece, type Point } from '../outline/index.ts';

/**
 * The edges of a piece by height: `inner` and `outer` in millimetres from x = 0, of the side at x > 0.
 * `inner` is null at heights where a piece that is the same on both sides is whole.
 */
export interface Profile {
  readonly heightMm: number;
  /** Height above the cast-on edge, 0 to `heightMm`. */
  readonly at: (height: number) => { readonly inner: number | null; readonly outer: number };
}

/** Where a level line at `y` crosses a closed polygon, from left to right. Not through a corner. */
const crossings = (corners: readonly Point[], y: number): number[] =>
  corners
    .flatMap((p, i) => {
      const q = corners[(i + 1) % corners.length]!;
      return p.y > y === q.y > y ? [] : [p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x)];
    })
    .sort((a, b) => a - b);

/** Heights are kept this far inside a polygon, as a share of it, so that a line meets edges and not an end. */
const INSIDE = 1e-9;

export const profileOf = (piece: Pick<OutlinePiece, 'path' | 'symmetric'>): Profile => {
  const corners = flattenPath(piece.path, 0.02);
  const top = Math.min(...corners.map((p) => p.y));
  const bottom = Math.max(...corners.map((p) => p.y));
  const heightMm = bottom - top;
  return {
    heightMm,
    at: (height) => {
      const inside = Math.min(Math.max(height / heightMm, INSIDE), 1 - INSIDE);
      const xs = crossings(corners, bottom - inside * heightMm);
      if (!piece.symmetric) return { inner: xs[0] ?? 0, outer: xs.at(-1) ?? 0 };
      const right = xs.slice(xs.length / 2);
      return { inner: right.length > 1 ? right[0]! : null, outer: right.at(-1) ?? 0 };
    },
  };
};
