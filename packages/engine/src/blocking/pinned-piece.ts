import { addRuns } from './add-runs.ts';
import { dropPins, pinFirst, type Standing, standingOf } from './choose-pins.ts';
import type { Choosing } from './choosing.ts';
import { type Cut, cutOf } from './could-not.ts';
import { MOST_PULL } from './hand-pull.ts';
import { type Ruler, rulersOf } from './measure.ts';
import type { PieceSheet } from './piece-sheet.ts';
import { PinState } from './pin-state.ts';
import { spacePins } from './space-pins.ts';
import { Supplies } from './supplies.ts';
import type { BlockQuestion } from './types.ts';

/** Half a centimetre inside its line is what an eye passes over. Common practice, no source. */
const SCALLOP = 5;

export const scallopTolerance = ({ scallopToleranceMm = SCALLOP }: BlockQuestion): number =>
  scallopToleranceMm;

/** A piece with its pins chosen. */
export interface PinnedPiece {
  readonly state: PinState;
  readonly rulers: readonly Ruler[];
  readonly cut: Cut;
  readonly standing: Standing;
  /** Straight pins that hold wires along their way. */
  readonly pinsForWires: number;
  /** False where something is off and the pins have run out. */
  readonly stocked: boolean;
}

/** The fewest pins, of what is at hand, that bring the piece to what is wanted within the tolerances. */
export const pinPiece = (
  sheet: PieceSheet,
  question: BlockQuestion,
  choosing: Choosing,
): PinnedPiece => {
  const rulers = rulersOf(sheet);
  const cut = cutOf(rulers, sheet.piece.fabric.safe, question);
  const state = new PinState(sheet, question.mostPullN ?? MOST_PULL, cut.share);
  const supplies = new Supplies(question.stock);
  const whole = pinFirst(state, supplies);
  state.solve();
  addRuns(state, supplies, choosing);
  spacePins(state, supplies, choosing);
  dropPins(state, supplies, choosing);
  sheet.effort.begin('rest');
  if (sheet.effort.cutShort.has('pins')) state.standStill();
  else state.putDown();
  const standing = standingOf(state);
  const { straight, tPins } = question.stock;
  const within = standing.off.length === 0 && standing.scallop <= choosing.scallopTolerance;
  return {
    state,
    rulers,
    cut,
    standing,
    pinsForWires: straight + tPins - supplies.singles - state.planned().length,
    stocked: within ? whole || state.pins.size > 0 : whole && supplies.singles > 0,
  };
};
