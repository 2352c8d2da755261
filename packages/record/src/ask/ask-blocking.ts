import type { BlockQuestion } from '@dryflat/engine/blocking';
import { ok, type Result } from '@dryflat/engine/units';
import { askBlock } from '../block/ask-block.ts';
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

/**
 * The question of the mat with the pins, the mat and the sewing that the record's plan tells of, and what
 * is usual for the rest. Fails as `askBlock` does.
 */
export const askBlockingWith = (record: GarmentRecord, gentle: boolean): Result<AskedBlocking> => {
  const { stock = USUAL_STOCK, mat = USUAL_MAT, sewn = false } = record.plan;
  const asked = askBlock(record, { stock, mat, gentle, sewn });
  return asked.ok ? ok({ question: asked.value, assumed: assumptions(record) }) : asked;
};

/** The same without being gentle, and without the words. */
export const askBlocking = (record: GarmentRecord): Result<BlockQuestion> => {
  const asked = askBlockingWith(record, false);
  return asked.ok ? ok(asked.value.question) : asked;
};
