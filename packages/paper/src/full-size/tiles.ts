import { boxOf, type Point } from '@dryflat/engine/garment';
import { PAPERS, type PaperName, PRINTER_MARGIN } from '../sheet/paper-size.ts';
import type { Rect } from '../sheet/sheet.ts';
import { clipped } from './clip.ts';
import type { FullSizePiece } from './pieces.ts';

/** How far a tile repeats its neighbour, mm. */
export const OVERLAP = 10;
/** Room below a tile's window for its label, check lines and key, mm. */
export const STRIP = 30;
/** Blank around a piece, so that pins on its edge and their numbers are whole, mm. */
const AROUND = 8;

/** One sheet of a full-size drawing: what of the piece it shows, in the piece's own millimetres. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** `B3`: second row, third column. */
  readonly label: string;
  readonly window: Rect;
  /** False where no line and no pin falls on it: it is not printed. */
  readonly drawn: boolean;
}

export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
  /** Around all tiles, in the piece's millimetres. */
  readonly whole: Rect;
}

/** Size of the window of a tile on that paper, mm. */
export const windowOf = (paper: PaperName): { width: number; height: number } => ({
  width: PAPERS[paper].widthMm - 2 * PRINTER_MARGIN,
  height: PAPERS[paper].heightMm - 2 * PRINTER_MARGIN - STRIP,
});

/** A to Z, then AA, AB and so on: rows as letters. */
const rowLetters = (row: number): string =>
  (row < 26 ? '' : rowLetters(Math.floor(row / 26) - 1)) + String.fromCharCode(65 + (row % 26));

/** Tiles of `size` that overlap and cover `length`. */
const countFor = (length: number, size: number): number =>
  Math.max(1, Math.ceil((length - OVERLAP) / (size - OVERLAP)));

/** Whether any line or pin of the piece falls in the window. */
const touches = ({ lines, pins }: FullSizePiece, window: Rect): boolean =>
  lines.some(({ points }) => clipped(points, window).length > 0) ||
  pins.some(({ at }) => within(at, window));

export const within = ({ x, y }: Point, { x: left, y: top, width, height }: Rect): boolean =>
  x >= left && x <= left + width && y >= top && y <= top + height;

/** Tiles over a piece, in rows from its top, their whole in the middle of it. */
export const tilesOver = (piece: FullSizePiece, paper: PaperName): Tiling => {
  const box = boxOf([
    ...piece.lines.flatMap(({ points }) => points),
    ...piece.pins.map(({ at }) => at),
  ]);
  const { width, height } = windowOf(paper);
  const size = { x: box.right - box.left + 2 * AROUND, y: box.bottom - box.top + 2 * AROUND };
  const [columns, rows] = [countFor(size.x, width), countFor(size.y, height)];
  const whole = {
    width: columns * (width - OVERLAP) + OVERLAP,
    height: rows * (height - OVERLAP) + OVERLAP,
  };
  const corner = {
    x: (box.left + box.right - whole.width) / 2,
    y: (box.top + box.bottom - whole.height) / 2,
  };
  const tiles = Array.from({ length: rows * columns }, (_, k): Tile => {
    const [row, column] = [Math.floor(k / columns), k % columns];
    const window = {
      x: corner.x + column * (width - OVERLAP),
      y: corner.y + row * (height - OVERLAP),
      width,
      height,
    };
    const label = `${rowLetters(row)}${column + 1}`;
    return { row, column, label, window, drawn: touches(piece, window) };
  });
  return { rows, columns, tiles, whole: { ...corner, ...whole } };
};
