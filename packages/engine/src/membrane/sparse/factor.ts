import { type Backend, sparseBackend } from './backend.ts';
import type { Kernel } from './kernel.ts';
import type { Symbolic } from './symbolic.ts';

export interface FactorOptions {
  /** Added to every diagonal entry before factorising; default 0. */
  readonly shift?: number;
  /** Pivots at most this times the largest |diagonal entry| count as small; default 1e-12. */
  readonly smallBelow?: number;
  /** Where to factorise; by default one that the symbolic analysis keeps. */
  readonly backend?: Backend;
}

/** What the pivots say. By Sylvester's law of inertia their signs count those of the eigenvalues. */
export interface Pivots {
  /** Pivots above and below zero, small ones counted with the rest. */
  readonly positive: number;
  readonly negative: number;
  /** Small in size whatever the sign: the matrix is singular or nearly so. */
  readonly small: number;
  /** Unknowns whose pivot is negative or small, or where the factorisation stopped; rising. */
  readonly where: Int32Array;
  /** Least and largest pivot by size, with sign; NaN for a matrix without unknowns. */
  readonly least: number;
  readonly largest: number;
}

/**
 * L D Lᵀ of one matrix. It lives in its backend's memory and is spent as soon as that factorises
 * again; using a spent one throws.
 */
export interface Factor {
  readonly symbolic: Symbolic;
  readonly backend: Backend;
  readonly shift: number;
  /** False where a pivot was zero or not finite: nothing can be solved. Shift, then try again. */
  readonly complete: boolean;
  readonly pivots: Pivots;
  /** Largest |diagonal entry| with the shift; in a positive definite matrix no entry is larger. */
  readonly scale: number;
}

/** Factorisations in place: the last one of each kernel is the one that is not spent. */
const latest = new WeakMap<Kernel, Factor>();
const ownBackends = new WeakMap<Symbolic, Backend>();

const ownBackend = (symbolic: Symbolic): Backend => {
  const known = ownBackends.get(symbolic);
  if (known !== undefined) return known;
  const made = sparseBackend();
  ownBackends.set(symbolic, made);
  return made;
};

/** The unknown that is eliminated p-th. */
const unknownAt = ({ order, block }: Symbolic, p: number): number =>
  block === 2 ? 2 * order[p >> 1]! + (p & 1) : order[p]!;

const inspect = (kernel: Kernel, eliminated: number, smallest: number): Pivots => {
  const where: number[] = [];
  const counts = { positive: 0, negative: 0, small: 0 };
  let least = Number.NaN;
  let largest = Number.NaN;
  for (let p = 0; p < eliminated; p++) {
    const pivot = kernel.pivots[p]!;
    const small = Math.abs(pivot) <= smallest;
    if (small) counts.small += 1;
    counts[pivot > 0 ? 'positive' : 'negative'] += 1;
    if (small || pivot < 0) where.push(unknownAt(kernel.symbolic, p));
    if (!(Math.abs(pivot) >= Math.abs(least))) least = pivot;
    if (!(Math.abs(pivot) <= Math.abs(largest))) largest = pivot;
  }
  if (eliminated < kernel.pivots.length) where.push(unknownAt(kernel.symbolic, eliminated));
  return { ...counts, where: Int32Array.from(where).sort(), least, largest };
};

const largestDiagonal = ({ pattern }: Symbolic, values: Float64Array, shift: number): number => {
  let largest = 0;
  for (let j = 0; j < pattern.n; j++)
    largest = Math.max(largest, Math.abs(values[pattern.colPtr[j + 1]! - 1]! + shift));
  return largest;
};

/**
 * L D Lᵀ of the matrix with `values` in the positions of the analysed pattern. L has ones on its
 * diagonal; there is no pivoting, so an indefinite matrix may lose accuracy: look at `pivots.least`
 * and at the residual of `solveRefined`. A zero pivot is not an error but `complete: false`. Throws
 * RangeError where `values` has another length than the pattern.
 */
export const factorise = (
  symbolic: Symbolic,
  values: Float64Array,
  options: FactorOptions = {},
): Factor => {
  const { shift = 0, smallBelow = 1e-12, backend = ownBackend(symbolic) } = options;
  if (values.length !== symbolic.slot.length)
    throw new RangeError(`factorise: ${values.length} values, ${symbolic.slot.length} entries`);
  const kernel = backend.bind(symbolic);
  const eliminated = kernel.factor(values, shift);
  const scale = largestDiagonal(symbolic, values, shift);
  const pivots = inspect(kernel, eliminated, smallBelow * scale);
  const complete = eliminated === symbolic.pattern.n;
  const factor = { symbolic, backend, shift, complete, pivots, scale };
  latest.set(kernel, factor);
  return factor;
};

/** The kernel that holds `factor`. Throws where it is spent or incomplete: a bug of the caller. */
export const kernelOf = (factor: Factor): Kernel => {
  const kernel = factor.backend.bound;
  if (kernel === undefined || latest.get(kernel) !== factor)
    throw new Error('factor: spent, its backend has factorised again since');
  if (!factor.complete) throw new Error('factor: incomplete, it met a pivot of zero');
  return kernel;
};
