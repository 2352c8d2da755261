import { explain, type Result } from '../../units/index.ts';
import { type Foretold, matModel } from '../forward-on-mat.ts';
import type { InMat } from '../mat-types.ts';
import type { PieceFactors } from '../other-piece.ts';
import { planBlock } from '../plan.ts';
import type { BlockQuestion, PiecePlan, PieceToBlock, PinPlaced } from '../types.ts';
import { MAT, PINS_ONLY } from './pieces.ts';

export const answerOf = <T>(made: Result<T>): T => {
  if (!made.ok) throw new Error(made.faults.map(explain).join('\n'));
  return made.value;
};

export const planOf = (
  piece: PieceToBlock,
  more: Partial<BlockQuestion> = {},
  nodes = 300,
): PiecePlan =>
  answerOf(
    planBlock({ pieces: [piece], stock: PINS_ONLY, mat: MAT, gentle: false, ...more }, { nodes }),
  ).pieces[0]!;

/** Steps as they are once they are in where they were planned. */
export const inAsPlanned = (pins: readonly PinPlaced[]): InMat[] =>
  pins.map(({ kind, on, xMm, yMm, along, order }) => ({
    kind,
    on,
    to: { x: xMm, y: yMm },
    along,
    order,
  }));

export const AS_THOUGHT: PieceFactors = { stiffness: 1, width: 1, length: 1, drawIn: 1 };

/** Nodes of a mesh that is finer than the one readings are foretold on. */
const FINE = 300;

/** How a piece of other factors lies in truth, on the finer mesh. */
export const inTruth = (
  piece: PieceToBlock,
  inMat: readonly InMat[],
  truth: PieceFactors,
  steps: readonly number[],
): Foretold[] => answerOf(matModel(piece, inMat, () => true, FINE)).foretell(truth, steps)!;
