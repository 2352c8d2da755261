import { areaOf, layersOf } from '@dryflat/engine/counts';
import { flattenPath, type OutlinePiece, outlineOf, outlineSizes } from '@dryflat/engine/garment';
import { measurementsWanted } from '../ask/measurements.ts';
import type { GarmentRecord } from '../schema/index.ts';

const MM2_PER_M2 = 1_000_000;

/** A piece of which nobody gave a width or a length is drawn by proportion: its area says nothing. */
const isGiven = ({ dimensions }: OutlinePiece): boolean =>
  ['width', 'length'].every((direction) =>
    dimensions.some((each) => each.direction === direction && !each.assumed),
  );

const pieceArea = (piece: OutlinePiece): number =>
  areaOf(flattenPath(piece.path)) * layersOf(piece) * piece.copies;

/**
 * One face of the garment's fabric, all pieces and layers, m², drawn at the pattern's size that is
 * knit. Null where a piece has no width or no length that anybody gave.
 */
export const drawnFabricM2 = (record: GarmentRecord): number | null => {
  const { sizes, chosen } = record.pattern;
  const size = chosen === undefined ? 0 : sizes.indexOf(chosen);
  const lengths = measurementsWanted(record).map(({ landmark, span, values }) => ({
    landmark,
    span,
    mm: values[size] ?? null,
  }));
  const { pieces } = outlineOf(record.kind, outlineSizes(lengths));
  return pieces.every(isGiven)
    ? pieces.reduce((sum, piece) => sum + pieceArea(piece), 0) / MM2_PER_M2
    : null;
};
