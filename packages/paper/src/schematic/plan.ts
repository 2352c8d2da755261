import { inRows, type Layout, type Point, rowBreaks } from '@dryflat/engine/garment';
import { type Cell, cellOf } from './cell.ts';
import type { DrawnPiece } from './drawn-piece.ts';
import type { LabelSize } from './label-size.ts';

export interface PlanOptions {
  readonly pieces: readonly DrawnPiece[];
  /** Width of the sheet, px. */
  readonly width: number;
  readonly sizeOf: (landmark: string) => LabelSize;
  /** Height that no piece should exceed, px. */
  readonly tallest: number;
  readonly captionHeight: number;
}

export interface PlacedCell extends Cell {
  readonly at: Point;
  readonly piece: DrawnPiece;
}

/** Everything of the sheet in px. `scale` is px per millimetre, the same for every piece. */
export interface Plan {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly cells: readonly PlacedCell[];
}

/** Below this width labels go to the right of a piece only: two columns would leave it no room. */
export const NARROW = 560;
const GAP = 20;
/** Tops of a millimetre in px, and a scale at which any garment is a dot. */
const [LARGEST, SMALLEST] = [2.5, 0.005];

const cellsAt = (options: PlanOptions, scale: number): Cell[] =>
  options.pieces.map((piece) =>
    cellOf({
      piece,
      scale,
      sizeOf: options.sizeOf,
      narrow: options.width < NARROW,
      captionHeight: options.captionHeight,
    }),
  );

const layoutAt = (options: PlanOptions, rows: readonly number[], scale: number): Layout =>
  inRows(cellsAt(options, scale), rows, GAP);

/** Scale at which the tallest piece is as tall as it may be. */
const tallestScale = ({ pieces, tallest }: PlanOptions): number =>
  Math.min(LARGEST, tallest / Math.max(1, ...pieces.map(({ box }) => box.bottom - box.top)));

/** Step from one scale to the next that is tried: 4 % is hardly seen. */
const STEP = 0.96;

/**
 * The largest scale at which those rows fit, tried from the top: labels move from column to column
 * as the scale changes, so that a smaller scale does not always take less room.
 */
const fitScale = (options: PlanOptions, rows: readonly number[]): number => {
  let scale = tallestScale(options);
  while (scale > SMALLEST && layoutAt(options, rows, scale).width > options.width) scale *= STEP;
  return scale;
};

/** A quarter smaller is worth it where it saves the reader from scrolling. */
const WORTH = 0.75;

/** Of the arrangements that show the garment nearly as large as any, the lowest. */
const bestRows = (options: PlanOptions): { rows: readonly number[]; scale: number } => {
  const ways = rowBreaks(options.pieces.length).map((rows) => {
    const scale = fitScale(options, rows);
    return { rows, scale, height: layoutAt(options, rows, scale).height };
  });
  const largest = Math.max(...ways.map((way) => way.scale));
  return ways
    .filter((way) => way.scale >= WORTH * largest)
    .reduce((best, way) => (way.height < best.height ? way : best));
};

/** Lays the pieces out on a sheet of that width, all at one scale, with room for every label. */
export const planOf = (options: PlanOptions): Plan => {
  const { rows, scale } = bestRows(options);
  const cells = cellsAt(options, scale);
  const layout = inRows(cells, rows, GAP);
  const spare = Math.max(0, (options.width - layout.width) / 2);
  return {
    width: Math.max(options.width, layout.width),
    height: layout.height,
    scale,
    cells: cells.map((cell, i) => {
      const { x, y } = layout.at[i]!;
      return { ...cell, at: { x: x + spare, y }, piece: options.pieces[i]! };
    }),
  };
};
