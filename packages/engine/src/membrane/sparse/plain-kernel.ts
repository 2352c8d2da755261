import type { Kernel } from './kernel.ts';
import { load, plainMemory } from './plain-memory.ts';
import { factorPairs, residualPairs, solvePairs } from './plain-pairs.ts';
import { factorScalar, residualScalar, solveScalar } from './plain-scalar.ts';
import type { Symbolic } from './symbolic.ts';

/** The inner loops in TypeScript: runs anywhere, and is what the WebAssembly is held against. */
export const plainKernel = (symbolic: Symbolic): Kernel => {
  const m = plainMemory(symbolic);
  const pairs = symbolic.block === 2;
  return {
    symbolic,
    b: m.b,
    x: m.x,
    r: m.r,
    pivots: m.pivots,
    factor: (values, shift) => {
      load(m, values, shift);
      return pairs ? factorPairs(m) : factorScalar(m);
    },
    solve: (vector) => (pairs ? solvePairs(m, m[vector]) : solveScalar(m, m[vector])),
    residual: () => (pairs ? residualPairs(m) : residualScalar(m)),
    factorEntries: () => m.lower.slice(),
  };
};
