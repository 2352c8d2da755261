import type { BlockQuestion, PieceToBlock } from '@dryflat/engine/blocking';
import { ok, type Result } from '@dryflat/engine/units';
import { askBlock } from '../block/ask-block.ts';
import { onEdge } from '../block/on-edge.ts';
import type { GarmentRecord, PinMat, PinStock } from '../schema/index.ts';

/** What many have in a box: assumption, for a record that does not say. */
export const USUAL_STOCK: PinStock = { straight: 60, tPins: 20, combs: [], wires: [] };

/** Nine foam tiles of a foot each way, as they are sold: assumption, for a record that does not say. */
export const USUAL_MAT: PinMat = { widthMm: 915, heightMm: 915, tileMm: 305 };

export interface AskedBlocking {
  readonly question: BlockQuestion;
  /** What the record does not say and was taken as usual, a sentence each. */
  readonly assumed: readonly string[];
}

const assumptions = ({ plan }: GarmentRecord): string[] => [
  ...(plan.stock === undefined
    ? [
        `Pins at hand are not entered: ${USUAL_STOCK.straight} straight pins and ${USUAL_STOCK.tPins} T-pins are assumed (plan.stock).`,
      ]
    : []),
  ...(plan.mat === undefined
    ? [
        `The mat is not entered: {mm:${USUAL_MAT.widthMm}} by {mm:${USUAL_MAT.heightMm}} of {mm:${USUAL_MAT.tileMm}} tiles is assumed (plan.mat).`,
      ]
    : []),
];

/** The piece with the pins that its plan is to go around, on its edge. */
const withPins = ({ plan }: GarmentRecord, piece: PieceToBlock): PieceToBlock => {
  const pinned = (plan.pins ?? [])
    .filter((pin) => pin.around && pin.piece === piece.name)
    .map(({ at, to }) => ({
      at: onEdge(piece.outline, { x: at.xMm, y: at.yMm }),
      to: { x: to.xMm, y: to.yMm },
    }));
  return pinned.length > 0 ? { ...piece, pinned } : piece;
};

/**
 * The question of the mat with the pins, the mat and the sewing that the record's plan tells of, the moved
 * pins that it is to go around, and what is usual for the rest. Fails as `askBlock` does.
 */
export const askBlockingWith = (record: GarmentRecord, gentle: boolean): Result<AskedBlocking> => {
  const { stock = USUAL_STOCK, mat = USUAL_MAT, sewn = false } = record.plan;
  const asked = askBlock(record, { stock, mat, gentle, sewn });
  if (!asked.ok) return asked;
  const pieces = asked.value.pieces.map((piece) => withPins(record, piece));
  return ok({ question: { ...asked.value, pieces }, assumed: assumptions(record) });
};

/** The same without being gentle, and without the words. */
export const askBlocking = (record: GarmentRecord): Result<BlockQuestion> => {
  const asked = askBlockingWith(record, false);
  return asked.ok ? ok(asked.value.question) : asked;
};
