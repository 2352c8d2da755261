import { type OutlinePiece, outlineOf, outlineSizes } from '@dryflat/engine/garment';
import type { GarmentRecord, Specimen } from '../schema/index.ts';
import { engineSpan, timesToEngine } from '../spans/girths.ts';

/** The pieces of a garment in the size that is knit, as the pattern gives them; usual proportions elsewhere. */
export const outlinePiecesOf = ({ kind, pattern }: GarmentRecord): readonly OutlinePiece[] => {
  const { sizes, chosen, measurements } = pattern;
  const at = chosen === undefined ? 0 : sizes.indexOf(chosen);
  const lengths = measurements.map((row) => ({
    landmark: row.landmark,
    span: engineSpan(row),
    mm: row.values[at] == null ? null : row.values[at] * timesToEngine(row, row.span),
  }));
  return outlineOf(kind, outlineSizes(lengths)).pieces;
};

/** The piece that a text names, as a whole word; of a garment of one piece, that. */
export const pieceNamed = (
  pieces: readonly OutlinePiece[],
  text: string,
): OutlinePiece | undefined =>
  pieces.length === 1
    ? pieces[0]
    : pieces.find(({ name }) => new RegExp(`\\b${name}s?\\b`, 'i').test(text));

/** A part of this garment, or a whole piece of it. */
export const isOfGarment = ({ kind }: Specimen): boolean => kind === 'part' || kind === 'piece';

/** Which piece a specimen of the garment is, or is part of: as it says, else as its name does. */
export const pieceOf = (
  pieces: readonly OutlinePiece[],
  { piece, name }: Specimen,
): OutlinePiece | undefined => pieceNamed(pieces, piece ?? name);
