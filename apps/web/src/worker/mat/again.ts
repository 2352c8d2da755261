import {
  learnOnMat,
  mirroredInMat,
  mirroredPins,
  mirroredPlan,
  replan,
} from '@dryflat/engine/blocking';
import { fail, ok, type Result } from '@dryflat/engine/units';
import { askBlockingWith } from '@dryflat/record/block';
import { HAND_NODES } from './hand.ts';
import type { Again, AgainQuestion } from './protocol.ts';

/** Learning takes about as long as planning: share of the whole that it is told as. */
const LEARNING = 0.5;

const noPiece = (piece: string) =>
  fail({
    code: 'mat-no-piece',
    field: 'piece',
    given: piece,
    problem: `The garment has no piece called ${piece} any more`,
    mend: 'Start the piece anew from the mat, or go on with the steps as they are.',
  });

/** Learns from what was told and plans what is still to come; `tell` hears the share that is done, 0 to 1. */
export const planAgain = (question: AgainQuestion, tell: (done: number) => void): Result<Again> => {
  const { record, gentle, mirrored, mat, readings, left, before } = question;
  const asked = askBlockingWith(record, gentle);
  if (!asked.ok) return asked;
  const piece = asked.value.question.pieces.find(({ name }) => name === question.piece);
  if (piece === undefined) return noPiece(question.piece);
  const inMat = mirrored ? mirroredInMat(question.inMat, mat) : question.inMat;
  const learned = learnOnMat(piece, inMat, readings, {
    onStep: ({ done }) => {
      tell(LEARNING * done);
      return true;
    },
  });
  if (!learned.ok) return learned;
  const made = replan(
    learned.value.piece,
    inMat,
    left,
    {
      mat,
      gentle,
      before: mirrored ? { ...before, pins: mirroredPins(before.pins, mat) } : before,
    },
    {
      nodes: HAND_NODES,
      onStep: ({ done }) => {
        tell(LEARNING + (1 - LEARNING) * done);
        return true;
      },
    },
  );
  if (!made.ok) return made;
  const { changes, readAgain, notices } = learned.value;
  const plan = mirrored ? mirroredPlan(made.value.plan, mat, question.inMat) : made.value.plan;
  return ok({ learned: { changes, readAgain, notices }, replanned: { ...made.value, plan } });
};
