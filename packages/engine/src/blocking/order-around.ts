import { outwardOrder } from './order.ts';
import type { PieceSheet } from './piece-sheet.ts';
import { type Kept, keptAs } from './pins-around.ts';
import type { Placement } from './placements.ts';

/** What is in, then the steps that were to come in their own order, then what is new, outwards from those. */
export const orderAround = (
  sheet: PieceSheet,
  all: readonly Placement[],
  already: readonly Placement[],
  kept: Kept,
): Placement[] => {
  const stepOf = (each: Placement) => keptAs(kept, each)?.order;
  const coming = all.filter((each) => !already.includes(each));
  const old = coming
    .filter((each) => stepOf(each) !== undefined)
    .sort((a, b) => stepOf(a)! - stepOf(b)!);
  const fresh = coming.filter((each) => stepOf(each) === undefined);
  return outwardOrder(sheet, fresh, [...already, ...old]);
};
