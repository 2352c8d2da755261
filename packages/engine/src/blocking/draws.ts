import type { Constraints } from '../membrane/index.ts';
import { solveWith } from './lie.ts';
import { measured, type Ruler, restOf } from './measure.ts';
import { type Draw, drawnSheet, type PieceSheet } from './piece-sheet.ts';

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

/** Each dimension in each fabric, pinned alike: `[draw][dimension]`. Fabrics that cannot be made are left out. */
export const dimensionsDrawn = (
  sheet: PieceSheet,
  rulers: readonly Ruler[],
  constraints: Constraints,
  goOn: () => boolean,
): { drawn: Drawn[][]; iterations: number } => {
  let iterations = 0;
  const drawn = drawsOf(sheet).flatMap((draw) => {
    const drawn = goOn() ? drawnSheet(sheet, draw) : null;
    if (drawn === null || !drawn.ok) return [];
    const eq = solveWith(drawn.value, constraints);
    iterations += eq.iterations;
    const factor = [draw.restWidth, draw.restLength] as const;
    return [
      rulers.map(
        (ruler): Drawn => ({
          rest: restOf({
            ...ruler,
            rest: { x: factor[0] * ruler.rest.x, y: factor[1] * ruler.rest.y },
          }),
          reached: measured(ruler, sheet.ring, eq.points, factor),
        }),
      ),
    ];
  });
  return { drawn, iterations };
};
