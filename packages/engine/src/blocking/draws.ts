import { solveWith } from './lie.ts';
import { measured, type Ruler, restOf } from './measure.ts';
import { type Draw, drawnSheet, type PieceSheet } from './piece-sheet.ts';
import type { PinState } from './pin-state.ts';

/**
 * Fabrics out of those that the doubt allows, for three independent normal unknowns: size at rest in
 * width, in length, and how far the fabric gives. Six points at ±√3 standard deviations integrate every
 * cubic exactly (Stroud 1957, Math. Tables Aids Comput. 11, 257), so means and variances of nearly
 * linear results come out without a random draw.
 */
export const drawsOf = ({ piece }: PieceSheet): Draw[] => {
  const { restLogSd, fabric } = piece;
  const give = Math.hypot(fabric.doubt.give.width, fabric.doubt.give.length) / Math.SQRT2;
  const sds = [restLogSd.width, restLogSd.length, give] as const;
  return sds.flatMap((sd, axis) =>
    [-1, 1].map((sign): Draw => {
      const factor = Math.exp(sign * Math.sqrt(3) * sd);
      return {
        restWidth: axis === 0 ? factor : 1,
        restLength: axis === 1 ? factor : 1,
        give: axis === 2 ? factor : 1,
      };
    }),
  );
};

export interface Drawn {
  readonly rest: number;
  readonly reached: number;
}

/**
 * Another size at rest, by a factor in the ruler's own direction. Held at both ends it reaches what it did,
 * unless it is larger than that to begin with, as pins do not push; else it moves with its rest.
 */
const otherRest = (ruler: Ruler, held: boolean, reached: number, factor: number): Drawn => {
  const rest = factor * restOf(ruler);
  return { rest, reached: held ? Math.max(reached, rest) : factor * reached };
};

/**
 * Each dimension in each fabric, pinned alike: `[draw][dimension]`. Other sizes at rest follow from how it
 * is held; other give is solved, unless every dimension is held at both ends and nothing gave way.
 */
export const dimensionsDrawn = (
  state: PinState,
  rulers: readonly Ruler[],
  goOn: () => boolean,
): { drawn: Drawn[][]; iterations: number } => {
  const { sheet } = state;
  const fixed = new Set(state.fixed());
  const free = new Set(state.released());
  const isHeld = ({ from, to }: Ruler) => [from, to].every((k) => fixed.has(k) && !free.has(k));
  const nominal = rulers.map((ruler) => measured(ruler, sheet.ring, state.eq.points));
  const sure = rulers.every(isHeld) && state.shortfalls.size === 0;
  let iterations = 0;
  const drawn = drawsOf(sheet).map((draw): Drawn[] => {
    const plain = rulers.map((ruler, k): Drawn => {
      const factor = ruler.dimension.direction === 'width' ? draw.restWidth : draw.restLength;
      return otherRest(ruler, isHeld(ruler), nominal[k]!, factor);
    });
    if (draw.give === 1 || sure || !goOn() || !sheet.effort.goOn()) return plain;
    const made = drawnSheet(sheet, draw);
    if (!made.ok) return plain;
    const eq = solveWith(made.value, state.fixing.constraints);
    iterations += eq.iterations;
    return rulers.map((ruler) => ({
      rest: restOf(ruler),
      reached: measured(ruler, sheet.ring, eq.points),
    }));
  });
  return { drawn, iterations };
};
