import type { Point } from '../garment/index.ts';
import { between, nearestOn, turn } from './plane.ts';
import type { OutlineSpan } from './types.ts';

/** Shares of an edge nearer to its end than this are its end: rounding. */
const AT_END = 1e-9;

/** Where a place on the outline is, as an index with the share of the way. */
export const onOutline = (outline: readonly Point[], at: Point): number => {
  const { edge, share } = nearestOn(outline, at);
  return share > 1 - AT_END ? (edge + 1) % outline.length : share < AT_END ? edge : edge + share;
};

/** The place that an index with a share of the way stands for, mm. */
export const placeOn = (outline: readonly Point[], on: number): Point => {
  const edge = Math.floor(on) % outline.length;
  return between(outline[edge]!, outline[(edge + 1) % outline.length]!, on - Math.floor(on));
};

/** Whether an outline with y down runs as the ring of a mesh does. */
export const runsAsRing = (outline: readonly Point[]): boolean => turn(outline) < 0;

/** What lies between two places, given in the order of the ring. */
export const spanOf = (outline: readonly Point[], first: Point, last: Point): OutlineSpan => {
  const [a, b] = [onOutline(outline, first), onOutline(outline, last)];
  return runsAsRing(outline) ? { from: a, to: b } : { from: b, to: a };
};
