import { fail, ok, type Result } from '../units/index.ts';
import { Effort } from './effort.ts';
import { EVER_PULLED } from './hand-pull.ts';
import { type HeldThing, heldOnMat, middlesOf, placesHeld } from './held-on-mat.ts';
import { solveWith } from './lie.ts';
import type { InMat } from './mat-types.ts';
import { measured, type Ruler, rulersOf } from './measure.ts';
import { layThrough } from './on-mat.ts';
import { otherPiece, type PieceFactors, scaledAbout } from './other-piece.ts';
import { openSheet, otherSheet, type PieceSheet } from './piece-sheet.ts';
import { fixingOf } from './pin-state.ts';
import { middleOf } from './plane.ts';
import { pullOn } from './pull-on.ts';
import { MAT_FRICTION } from './rehearsal.ts';
import type { PieceToBlock } from './types.ts';

/** Nodes of the mesh on which readings are foretold: what that is off by is part of the doubt of each. */
const NODES = 100;

/** How the piece lies with the first so many things in. */
export interface Foretold {
  /** One for each dimension, mm. */
  readonly lengths: readonly number[];
  /** What the fabric pulls at the last thing with, N. */
  readonly pull: number;
}

/** A piece on the mat with what was put in, to be laid as other fabrics. */
export interface MatModel {
  readonly rulers: readonly Ruler[];
  readonly effort: Effort;
  /** One for each of `steps`: how many things are in, rising. */
  readonly foretell: (factors: PieceFactors, steps: readonly number[]) => Foretold[] | null;
}

/** Laid flat where its own places are nearest to those on the mat, and held there by friction until pulled. */
const heldOf = (sheet: PieceSheet, inMat: readonly InMat[]): HeldThing[] => {
  const rest = sheet.ring.map((node) => node.rest);
  const wanted = sheet.ring.map((node) => node.wanted);
  const lay = layThrough(
    middlesOf(sheet, rest, inMat),
    inMat.map(({ to }) => to),
  );
  return heldOnMat(sheet, wanted, inMat, lay);
};

/** `goOn` is asked between solves. Fails where the piece cannot be meshed. */
export const matModel = (
  piece: PieceToBlock,
  inMat: readonly InMat[],
  goOn: () => boolean,
  nodes = NODES,
): Result<MatModel> => {
  // A fabric that is slow to settle ends at a bound like any plan.
  const effort = new Effort();
  const through = inMat.flatMap(({ on }) => [on.from, on.to]);
  const opened = openSheet(piece, nodes, effort, {}, through);
  if (!opened.ok) return opened;
  const sheet = opened.value;
  const held = inMat.length === 0 ? [] : heldOf(sheet, inMat);
  const rulers = rulersOf(sheet);
  const middle = middleOf(piece.outline.map(({ x, y }) => ({ x, y: -y })));
  const targets = sheet.ring.map(({ rest }) => rest);
  for (const [k, at] of placesHeld(held)) targets[k] = at;
  const foretell = (factors: PieceFactors, steps: readonly number[]): Foretold[] | null => {
    const place = scaledAbout(middle, factors);
    const made = otherSheet(sheet, otherPiece(piece, factors), place, MAT_FRICTION);
    if (!made.ok) return null;
    const found: Foretold[] = [];
    for (const count of steps) {
      if (!goOn()) return null;
      const now = held.slice(0, count);
      const pins = now.filter(({ run }) => run === null).map(({ nodes: [k] }) => k!);
      const bearing = new Map(pins.map((k) => [k, EVER_PULLED]));
      const runs = now.flatMap(({ run }) => (run === null ? [] : [run]));
      const { constraints, of } = fixingOf(sheet, targets, bearing, runs);
      const eq = solveWith(made.value, constraints);
      const last = now.at(-1)!;
      found.push({
        lengths: rulers.map((ruler) =>
          measured(ruler, sheet.ring, eq.points, [factors.width, factors.length]),
        ),
        pull: pullOn({ kind: last.run?.kind ?? 'pin', nodes: last.nodes }, of, eq.reactions),
      });
    }
    return found;
  };
  return ok({ rulers, effort, foretell });
};

export const stoppedOnMat = () =>
  fail({
    code: 'block-stopped',
    field: '',
    given: '',
    problem: 'The calculation was stopped',
    mend: 'Ask again.',
  });
