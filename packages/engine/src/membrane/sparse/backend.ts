import type { Kernel } from './kernel.ts';
import { plainKernel } from './plain-kernel.ts';
import type { Symbolic } from './symbolic.ts';
import { wasmKernel } from './wasm-kernel.ts';
import { instantiateKernel, instantiateKernelLater, type KernelExports } from './wasm-module.ts';

export type BackendName = 'wasm' | 'plain';

/**
 * Runs the inner loops for one analysis at a time. `bind` makes room for an analysis, or returns the
 * kernel bound to it already; binding another overwrites the memory, and factors made before are
 * spent. Memory only ever grows, to the largest analysis bound.
 */
export interface Backend {
  readonly name: BackendName;
  /** The kernel bound now. */
  readonly bound: Kernel | undefined;
  bind(symbolic: Symbolic): Kernel;
}

class BoundBackend implements Backend {
  readonly name: BackendName;
  bound: Kernel | undefined;
  private readonly make: (symbolic: Symbolic) => Kernel;

  constructor(name: BackendName, make: (symbolic: Symbolic) => Kernel) {
    this.name = name;
    this.make = make;
  }

  bind(symbolic: Symbolic): Kernel {
    if (this.bound?.symbolic === symbolic) return this.bound;
    this.bound = undefined;
    this.bound = this.make(symbolic);
    return this.bound;
  }
}

const wasmBackend = (kernel: KernelExports): Backend =>
  new BoundBackend('wasm', (symbolic) => wasmKernel(kernel, symbolic));

const plainBackend = (): Backend => new BoundBackend('plain', plainKernel);

/**
 * A backend with memory of its own; keep one for each solver. Without a name it is WebAssembly, or
 * the plain one where that cannot run (an old browser, a page whose policy forbids it): they agree to
 * the last bit, the plain one is about five times slower. Asking for 'wasm' by name throws there.
 */
export const sparseBackend = (name?: BackendName): Backend => {
  if (name === 'plain') return plainBackend();
  if (name === 'wasm') return wasmBackend(instantiateKernel());
  try {
    return wasmBackend(instantiateKernel());
  } catch {
    return plainBackend();
  }
};

/** The same without holding up the thread while the program compiles: for a page's main thread. */
export const sparseBackendLater = async (name?: BackendName): Promise<Backend> => {
  if (name === 'plain') return plainBackend();
  if (name === 'wasm') return wasmBackend(await instantiateKernelLater());
  return instantiateKernelLater().then(wasmBackend, plainBackend);
};
