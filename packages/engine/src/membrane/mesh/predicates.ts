import { incircle, orient2d } from 'robust-predicates';

/**
 * Exact signs for points with y up (Shewchuk 1997, Discrete Comput. Geom. 18, 305). The library
 * turns the other way in `orient2d`, not in `incircle`.
 */

/** Twice the area of a, b, c: positive when they turn counter-clockwise, zero when collinear. */
export const orient = (
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
): number => -orient2d(ax, ay, bx, by, cx, cy);

/** Positive when p lies inside the circle through the counter-clockwise a, b, c. */
export const inCircle: (
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  px: number,
  py: number,
) => number = incircle;
