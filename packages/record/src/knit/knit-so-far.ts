import { shareKnit } from '@dryflat/engine/counts';
import type { OutlinePiece } from '@dryflat/engine/garment';
import type { PieceProgress } from '@dryflat/engine/routes';
import type { GarmentRecord, Specimen } from '../schema/index.ts';
import { isOfGarment, outlinePiecesOf, pieceNamed, pieceOf } from './piece-of.ts';
import { isWhole } from './was-dried.ts';

/** How much of the garment is knit, as far as anything tells. */
export interface KnitSoFar {
  readonly progress: readonly PieceProgress[];
  /** False where nobody said, and nothing that was measured tells: then none is taken to be. */
  readonly said: boolean;
  /** What was taken for want of an entry, a sentence each. */
  readonly assumed: readonly string[];
}

/** A share of one copy, and what it was taken from; null where the knitter said it. */
interface Share {
  readonly share: number;
  readonly because: string | null;
}

/** A part of which nobody said how high it is: half of its piece. Assumption. */
const UNSAID = 0.5;

/** The whole height of a part by tape, mm; null where nobody took it. */
const heightOf = ({ heightMm, readings }: Specimen): number | null => {
  const extents = readings.flatMap((each) =>
    each.kind === 'extent' && each.direction === 'length' && each.read === 'flat' ? [each.mm] : [],
  );
  return heightMm ?? (extents.length > 0 ? Math.max(...extents) : null);
};

const ofSpecimen = (piece: OutlinePiece, specimen: Specimen): Share => {
  if (specimen.kind === 'piece')
    return { share: 1, because: 'it was measured as a whole piece, so that all of it is' };
  const height = heightOf(specimen);
  return height === null
    ? { share: UNSAID, because: 'a part of it was measured, and half of it is assumed' }
    : {
        share: Math.min(1, shareKnit(piece)(height)),
        because: 'it follows from how high the part is that was measured',
      };
};

const TAPED = 'it was measured as a piece, so that all of it is';

/** What was measured of a piece: each piece of its own is a copy, and evidence is of one of them. */
const measured = (
  record: GarmentRecord,
  pieces: readonly OutlinePiece[],
  piece: OutlinePiece,
): Share | null => {
  const taped = record.pieces.filter(
    (each) => each.measured.length > 0 && pieceNamed(pieces, each.name) === piece,
  );
  const first = pieces.find(({ name }) => name === 'back') ?? pieces[0];
  const ofEvidence = record.evidence
    .filter((each) => isOfGarment(each) && each.readings.length > 0)
    .filter((each) => (pieceOf(pieces, each) ?? first) === piece)
    .map((each) => ofSpecimen(piece, each))
    .map(({ share, because }) => ({ share: share / piece.copies, because }));
  const all = [
    ...(taped.length > 0
      ? [{ share: Math.min(1, taped.length / piece.copies), because: TAPED }]
      : []),
    ...ofEvidence,
  ];
  return all.reduce<Share | null>((a, b) => (a === null || b.share > a.share ? b : a), null);
};

/**
 * How much of each piece is knit: as it is entered, else as what was measured tells. A garment that was finished
 * or measured as a whole is knit. Pieces of which nothing tells are not begun, and not listed.
 */
export const knitSoFar = (record: GarmentRecord): KnitSoFar => {
  const pieces = outlinePiecesOf(record);
  const entered = record.progress ?? [];
  if (record.progress === undefined && isWhole(record))
    return {
      progress: pieces.map(({ name }) => ({ piece: name, share: 1 })),
      said: true,
      assumed: [
        'How much is knit is not entered: the garment was dried as a whole, so that all of it is (progress).',
      ],
    };
  const told = pieces.flatMap((piece) => {
    if (entered.some((each) => each.piece === piece.name)) return [];
    const found = measured(record, pieces, piece);
    return found === null ? [] : [{ piece: piece.name, ...found }];
  });
  return {
    progress: [
      ...entered.map(({ piece, share }) => ({ piece, share })),
      ...told.map(({ piece, share }) => ({ piece, share })),
    ],
    said: record.progress !== undefined || told.length > 0,
    assumed: told.map(
      ({ piece, because }) =>
        `How much of the ${piece} is knit is not entered: ${because} (progress).`,
    ),
  };
};
