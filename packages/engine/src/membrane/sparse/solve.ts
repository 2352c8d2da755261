import { type Factor, kernelOf } from './factor.ts';
import type { Symbolic } from './symbolic.ts';

/** Copies `from` (unknowns as the caller numbers them) into `to` (in order of elimination). */
const intoOrder = (
  { order, block }: Symbolic,
  from: Float64Array,
  offset: number,
  to: Float64Array,
): void => {
  for (let k = 0; k < order.length; k++)
    for (let a = 0; a < block; a++) to[block * k + a] = from[offset + block * order[k]! + a]!;
};

/** The other way round. */
const outOfOrder = (
  { order, block }: Symbolic,
  from: Float64Array,
  to: Float64Array,
  offset: number,
): void => {
  for (let k = 0; k < order.length; k++)
    for (let a = 0; a < block; a++) to[offset + block * order[k]! + a] = from[block * k + a]!;
};

const checkLength = (factor: Factor, b: Float64Array, sides: number): void => {
  const n = factor.symbolic.pattern.n;
  if (b.length !== n * sides)
    throw new RangeError(`solve: ${b.length} numbers for ${sides} sides of ${n}`);
};

/**
 * x with (A + shift · I) x = b for `sides` right-hand sides, one after another in `b` and in the
 * answer. Throws on a spent or incomplete factor and on another length.
 */
export const solveMany = (factor: Factor, b: Float64Array, sides: number): Float64Array => {
  checkLength(factor, b, sides);
  const kernel = kernelOf(factor);
  const answer = new Float64Array(b.length);
  for (let side = 0; side < sides; side++) {
    const offset = side * factor.symbolic.pattern.n;
    intoOrder(factor.symbolic, b, offset, kernel.x);
    kernel.solve('x');
    outOfOrder(factor.symbolic, kernel.x, answer, offset);
  }
  return answer;
};

/** x with (A + shift · I) x = b. Throws on a spent or incomplete factor and on another length. */
export const solve = (factor: Factor, b: Float64Array): Float64Array => solveMany(factor, b, 1);

export interface Refined {
  readonly value: Float64Array;
  /** Refinement steps done: 1. */
  readonly iterations: number;
  /** Backward error: largest |b − A x| over largest |b| + `factor.scale` · largest |x|; 0 for b = 0. */
  readonly residual: number;
  /** Whether the residual is what rounding explains: n · 2⁻⁵² (Higham 2002, theorem 9.4 in spirit). */
  readonly converged: boolean;
}

const largest = (vector: Float64Array): number => {
  let size = 0;
  for (const value of vector) size = Math.max(size, Math.abs(value));
  return size;
};

/**
 * Like `solve`, then one step of iterative refinement with the same factor, and how well x fits. The
 * matrix is the one factorised, shift included.
 */
export const solveRefined = (factor: Factor, b: Float64Array): Refined => {
  checkLength(factor, b, 1);
  const { symbolic, scale } = factor;
  const kernel = kernelOf(factor);
  intoOrder(symbolic, b, 0, kernel.b);
  kernel.x.set(kernel.b);
  kernel.solve('x');
  kernel.residual();
  kernel.solve('r');
  for (let i = 0; i < kernel.x.length; i++) kernel.x[i]! += kernel.r[i]!;
  kernel.residual();
  const left = largest(kernel.r);
  const residual = left === 0 ? 0 : left / (largest(kernel.b) + scale * largest(kernel.x));
  const value = new Float64Array(b.length);
  outOfOrder(symbolic, kernel.x, value, 0);
  return { value, iterations: 1, residual, converged: residual <= b.length * 2 ** -52 };
};
