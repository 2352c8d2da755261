import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Backend, sparseBackend, sparseBackendLater } from './backend.ts';
import { heldStiffness } from './check/plane-stress-grid.ts';
import { someSymmetric, waves } from './check/random-symmetric.ts';
import { factorise } from './factor.ts';
import { solve, solveRefined } from './solve.ts';
import { analyse, type Symbolic } from './symbolic.ts';

/** Everything a backend finds out about one matrix. */
const findings = (backend: Backend, symbolic: Symbolic, values: Float64Array, shift: number) => {
  const factor = factorise(symbolic, values, { backend, shift });
  const b = waves(symbolic.pattern.n);
  const kernel = backend.bound!;
  return {
    pivots: factor.pivots,
    complete: factor.complete,
    // After a bad pivot what lies beyond is left from before, and no one may look at it.
    ...(factor.complete
      ? {
          diagonal: kernel.pivots.slice(),
          lower: kernel.factorEntries(),
          x: solve(factor, b),
          refined: solveRefined(factor, b),
          left: kernel.r.slice(),
        }
      : {}),
  };
};

afterEach(() => vi.unstubAllGlobals());

describe.each([1, 2] as const)('backends, %i unknowns a node', (block) => {
  it('SP8: WebAssembly and plain agree to the last bit, signs of zero included', () => {
    const [wasm, plain] = [sparseBackend('wasm'), sparseBackend('plain')];
    fc.assert(
      fc.property(someSymmetric(block), fc.constantFrom(0, 0.3, 3, 30), (matrix, shift) => {
        const symbolic = analyse(matrix.pattern, block);
        // toEqual compares numbers by Object.is: 0 is not −0.
        expect(findings(wasm, symbolic, matrix.values, shift)).toEqual(
          findings(plain, symbolic, matrix.values, shift),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('SP8: they agree on a sheet of 900 nodes', () => {
    const { pattern, values } = heldStiffness(30, 30, 11);
    const symbolic = analyse(pattern, block);
    const [wasm, plain] = (['wasm', 'plain'] as const).map((name) =>
      findings(sparseBackend(name), symbolic, values, 0),
    );
    expect(wasm!.complete).toBe(true);
    expect(wasm).toEqual(plain);
  });

  it('SP8: a refactorisation leaves nothing of the one before', () => {
    const backend = sparseBackend('wasm');
    fc.assert(
      fc.property(someSymmetric(block), someSymmetric(block), (first, second) => {
        factorise(analyse(first.pattern, block), first.values, { backend });
        const symbolic = analyse(second.pattern, block);
        const values = second.values.map((value) => -value);
        factorise(symbolic, values, { backend });
        expect(findings(backend, symbolic, second.values, 1)).toEqual(
          findings(sparseBackend('plain'), symbolic, second.values, 1),
        );
      }),
      { numRuns: 50 },
    );
  });
});

describe('choice of backend', () => {
  it('SP8: by name, by default, and later', async () => {
    expect(sparseBackend('plain').name).toBe('plain');
    expect(sparseBackend().name).toBe('wasm');
    expect((await sparseBackendLater()).name).toBe('wasm');
    expect((await sparseBackendLater('wasm')).name).toBe('wasm');
    expect((await sparseBackendLater('plain')).name).toBe('plain');
  });

  it('SP8: where WebAssembly cannot run the default is plain; asked by name it throws', async () => {
    vi.stubGlobal('WebAssembly', undefined);
    expect(sparseBackend().name).toBe('plain');
    expect((await sparseBackendLater()).name).toBe('plain');
    expect(() => sparseBackend('wasm')).toThrow();
    await expect(sparseBackendLater('wasm')).rejects.toThrow();
  });
});
