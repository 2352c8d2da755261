import {
  type Box,
  boxOf,
  type Dimension,
  flattenPath,
  type GarmentKind,
  joinBoxes,
  type Outline,
  type OutlinePiece,
  type OutlineSizes,
  outlineOf,
} from '@dryflat/engine/garment';
import type { DimensionNumbers } from './dimension-words.ts';

export interface ForecastSizes {
  readonly p05: OutlineSizes;
  readonly p50: OutlineSizes;
  readonly p95: OutlineSizes;
}

/** One piece as it is drawn: the same piece wanted, forecast, and at both ends of the range. */
export interface DrawnPiece {
  /** The piece that carries the dimensions: forecast where there is one, else wanted. */
  readonly main: OutlinePiece;
  readonly wanted: OutlinePiece | null;
  readonly forecast: OutlinePiece | null;
  readonly small: OutlinePiece | null;
  readonly large: OutlinePiece | null;
  /** Around all of them, in millimetres. */
  readonly box: Box;
  /** The dimensions that somebody gave or forecast a number for. */
  readonly dimensions: readonly Dimension[];
}

export interface Drawing {
  readonly pieces: readonly DrawnPiece[];
  /** The outline that stands for the garment, with its fills and notices. */
  readonly main: Outline;
  readonly numbers: (landmark: string) => DimensionNumbers;
}

const named = (outline: Outline | null, name: string): OutlinePiece | null =>
  outline?.pieces.find((each) => each.name === name) ?? null;

const boxAround = (pieces: readonly (OutlinePiece | null)[]): Box =>
  joinBoxes(pieces.flatMap((each) => (each === null ? [] : [boxOf(flattenPath(each.path))])));

/**
 * Everything that is drawn of one garment, in millimetres. What has no forecast is drawn as wanted;
 * a wanted outline is left out where nothing at all is wanted.
 */
export const drawingOf = (
  kind: GarmentKind,
  wanted: OutlineSizes,
  forecast: ForecastSizes | null,
): Drawing => {
  const over = (sizes: OutlineSizes) => outlineOf(kind, { ...wanted, ...sizes });
  const asWanted = outlineOf(kind, wanted);
  const middle = forecast && over(forecast.p50);
  const [small, large] = [forecast && over(forecast.p05), forecast && over(forecast.p95)];
  const main = middle ?? asWanted;
  const shownWanted = middle === null || Object.keys(wanted).length > 0 ? asWanted : null;
  const pieces = main.pieces
    .filter((piece) => piece.shownOn === null)
    .map((piece): DrawnPiece => {
      const set = [shownWanted, middle, small, large].map((each) => named(each, piece.name));
      return {
        main: piece,
        wanted: set[0]!,
        forecast: set[1]!,
        small: set[2]!,
        large: set[3]!,
        box: boxAround(set),
        dimensions: piece.dimensions.filter((d) => !d.assumed),
      };
    });
  const numbers = (landmark: string): DimensionNumbers => ({
    wanted: wanted[landmark] ?? null,
    p05: forecast?.p05[landmark] ?? null,
    p50: forecast?.p50[landmark] ?? null,
    p95: forecast?.p95[landmark] ?? null,
  });
  return { pieces, main, numbers };
};
