import { type Kernel, kernelSizes } from './kernel.ts';
import type { Symbolic } from './symbolic.ts';
import { bindMemory, type Layout } from './wasm-memory.ts';
import type { KernelExports } from './wasm-module.ts';

const factorise = (kernel: KernelExports, { count, block }: Symbolic, at: Layout): number => {
  const shared = [
    count,
    at.matrix,
    at.start,
    at.place,
    at.rowPtr,
    at.rowCol,
    at.colPtr,
    at.rowIdx,
    at.filled,
    at.lower,
    at.pivots,
    at.work,
  ];
  return block === 2 ? kernel.factorPairs(...shared, at.inner) : kernel.factorScalar(...shared);
};

const substitute = (
  kernel: KernelExports,
  { count, block }: Symbolic,
  at: Layout,
  vector: 'x' | 'r',
): void => {
  const shared = [count, at.colPtr, at.rowIdx, at.lower, at.pivots, at[vector]];
  if (block === 2) kernel.solvePairs(...shared, at.inner);
  else kernel.solveScalar(...shared);
};

/**
 * The inner loops in WebAssembly, bound to `symbolic` in the memory of an instance, which grows if it
 * must and is overwritten: whatever was bound to the instance before is no longer to be used.
 */
export const wasmKernel = (kernel: KernelExports, symbolic: Symbolic): Kernel => {
  const at = bindMemory(kernel, symbolic);
  const size = kernelSizes(symbolic);
  // Views hold until the memory grows, and it grows only when an analysis is bound.
  const numbers = (address: number, length: number) =>
    new Float64Array(kernel.memory.buffer, address, length);
  const givenValues = numbers(at.values, size.values);
  const work = numbers(at.work, size.work);
  const lower = numbers(at.lower, size.lower);
  const filled = new Int32Array(kernel.memory.buffer, at.filled, symbolic.count);
  const firsts = symbolic.fill.colPtr.subarray(0, symbolic.count);
  const { count, block } = symbolic;
  return {
    symbolic,
    b: numbers(at.b, size.vector),
    x: numbers(at.x, size.vector),
    r: numbers(at.r, size.vector),
    pivots: numbers(at.pivots, size.pivots),
    factor: (values, shift) => {
      givenValues.set(values);
      kernel.loadValues(
        count,
        block,
        size.values,
        at.values,
        at.slot,
        at.matrix,
        size.matrix,
        shift,
      );
      work.fill(0);
      filled.set(firsts);
      return factorise(kernel, symbolic, at);
    },
    solve: (vector) => substitute(kernel, symbolic, at, vector),
    residual: () => {
      const residual = block === 2 ? kernel.residualPairs : kernel.residualScalar;
      residual(count, at.matrix, at.start, at.place, at.b, at.x, at.r);
    },
    factorEntries: () => lower.slice(),
  };
};
