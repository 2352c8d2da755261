import { type Box, boxOf, flattenPath } from './path.ts';
import type { OutlinePiece, Point } from './types.ts';

/** A rectangle to be placed; its size in any one unit. */
export interface Slot {
  readonly width: number;
  readonly height: number;
}

/** Where each slot's top left corner goes, and the size of the whole. */
export interface Layout {
  readonly at: readonly Point[];
  readonly width: number;
  readonly height: number;
}

/** All ways to break a sequence into rows, keeping its order: 2^(n−1) of them. */
export const rowBreaks = (n: number): number[][] =>
  n === 0
    ? [[]]
    : Array.from({ length: n }, (_, i) => i + 1).flatMap((first) =>
        rowBreaks(n - first).map((rest) => [first, ...rest]),
      );

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Lays slots out in the given rows, each row centred and its slots level at the top. */
export const inRows = (slots: readonly Slot[], rows: readonly number[], gap: number): Layout => {
  const taken = rows.map((count, i) => {
    const start = sum(rows.slice(0, i));
    return slots.slice(start, start + count);
  });
  const widthOf = (row: readonly Slot[]) => sum(row.map((s) => s.width)) + gap * (row.length - 1);
  const heights = taken.map((row) => Math.max(...row.map((s) => s.height)));
  const width = Math.max(0, ...taken.map(widthOf));
  const at = taken.flatMap((row, r) =>
    row.map((_, i) => ({
      x: (width - widthOf(row)) / 2 + sum(row.slice(0, i).map((s) => s.width + gap)),
      y: sum(heights.slice(0, r)) + gap * r,
    })),
  );
  return { at, width, height: sum(heights) + gap * Math.max(0, rows.length - 1) };
};

export interface PieceLayout extends Layout {
  /** Box of each piece in its own coordinates; `at` is where that box's corner goes. */
  readonly boxes: readonly Box[];
}

/** A gap of a twentieth of the largest side keeps pieces apart without shrinking them much. */
const GAP = 0.05;

/**
 * Lays pieces side by side, in as many rows as shows them largest on a sheet of the given aspect
 * (width over height). Millimetres in, millimetres out. No pieces give an empty layout.
 */
export const layoutPieces = (pieces: readonly OutlinePiece[], aspect: number): PieceLayout => {
  const boxes = pieces.map((piece) => boxOf(flattenPath(piece.path)));
  const slots = boxes.map((b) => ({ width: b.right - b.left, height: b.bottom - b.top }));
  const gap = GAP * Math.max(0, ...slots.flatMap((s) => [s.width, s.height]));
  const layouts = rowBreaks(slots.length).map((rows) => inRows(slots, rows, gap));
  const sheet = (l: Layout) => Math.max(l.width / aspect, l.height);
  return { ...layouts.reduce((best, l) => (sheet(l) < sheet(best) ? l : best)), boxes };
};
