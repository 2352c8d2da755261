import { type Factor, kernelOf } from './factor.ts';

/** A determinant that would not fit a number: `sign` · e^`log`. */
export interface Determinant {
  readonly sign: 1 | -1;
  /** Natural logarithm of its size; 0 for a matrix without unknowns. */
  readonly log: number;
}

/** Determinant of A + shift · I: the product of the pivots. Throws on a spent or incomplete factor. */
export const determinant = (factor: Factor): Determinant => {
  let log = 0;
  for (const pivot of kernelOf(factor).pivots) log += Math.log(Math.abs(pivot));
  return { sign: factor.pivots.negative % 2 === 0 ? 1 : -1, log };
};
