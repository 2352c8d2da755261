import { ok, type Result } from '../units/index.ts';
import { percent, SAFE_BECAUSE } from './could-not.ts';
import { PART_WORDS } from './effort.ts';
import { checked } from './faults.ts';
import { goingsOn } from './goings-on.ts';
import { planPiece } from './plan-piece.ts';
import { stockWithout } from './stock-left.ts';
import { tooLarge } from './too-large.ts';
import type { BlockHooks, BlockPlan, BlockQuestion, PiecePlan, PinKind } from './types.ts';

const counted = (pieces: readonly PiecePlan[]): Readonly<Record<PinKind, number>> => {
  const counts: Record<PinKind, number> = { straight: 0, 't-pin': 0, comb: 0, wire: 0 };
  for (const { pins, pinsForWires } of pieces) {
    for (const { kind } of pins) counts[kind] += 1;
    counts.straight += pinsForWires;
  }
  return counts;
};

const noticesOf = (
  pieces: readonly PiecePlan[],
  { mat, together, pieces: asked }: BlockQuestion,
): BlockPlan['notices'] => {
  const unsettled = pieces.filter(({ converged }) => !converged);
  const cut = pieces.filter(({ effort }) => effort.cutShort.length > 0);
  const names = (list: readonly PiecePlan[]) => list.map(({ name }) => name).join(', ');
  return [
    ...pieces.flatMap((piece, k) => {
      const text = tooLarge(asked[k]!, piece, mat);
      return text === null ? [] : [{ code: 'mat-too-small', text }];
    }),
    ...(pieces.length > 1 && together !== true
      ? [
          {
            code: 'one-at-a-time',
            text: 'Each piece is planned as if it had the mat and all of the pins to itself.',
          },
        ]
      : []),
    ...pieces.flatMap(({ name, gentler }, k) => {
      const beyond = gentler[0]?.beyondSafe ?? [];
      const { limit, origin } = asked[k]!.fabric.safe;
      const text = `${name}: ${beyond.join(', ')} ${beyond.length === 1 ? 'is' : 'are'} stretched by more than ${percent(limit)}, ${SAFE_BECAUSE[origin]}; the fabric can do it, and gives it back at the next wash.`;
      return beyond.length === 0 ? [] : [{ code: 'beyond-safe', text }];
    }),
    ...(unsettled.length > 0
      ? [
          {
            code: 'not-settled',
            text: `The calculation did not come to rest for: ${names(unsettled)}. Take its numbers as a guess.`,
          },
        ]
      : []),
    ...cut.map(({ name, effort }) => ({
      code: 'cut-short',
      text: `${name}: this piece is hard to work out, and the calculation ended at its limit before it was done with ${effort.cutShort.map((part) => PART_WORDS[part]).join(', ')}.`,
    })),
    {
      code: 'count-pins',
      text: 'Count the pins in, and count them out again; keep children and pets away, and feel for forgotten ones before anyone wears it.',
    },
  ];
};

/**
 * Where to pin each piece, in which order, what it will then measure, and what it will not do. Lengths
 * mm, forces N. Pure and without chance: the same question gives the same bytes. Fails with faults that
 * name the field where the question cannot be answered, or where a hook stops it; what the fabric does
 * not allow is no fault but `couldNot`.
 */
export const planBlock = (question: BlockQuestion, hooks: BlockHooks = {}): Result<BlockPlan> => {
  const asked = checked(question);
  if (!asked.ok) return asked;
  const pieces: PiecePlan[] = [];
  let { stock } = question;
  for (const [k, piece] of question.pieces.entries()) {
    const going = goingsOn(hooks, piece.name, k, question.pieces.length);
    const plan = planPiece(piece, { ...question, stock }, hooks, going);
    if (!plan.ok) return plan;
    if (question.together === true)
      stock = stockWithout(stock, plan.value.pins, plan.value.pinsForWires);
    pieces.push(plan.value);
  }
  return ok({ pieces, pinsInAll: counted(pieces), notices: noticesOf(pieces, question) });
};
