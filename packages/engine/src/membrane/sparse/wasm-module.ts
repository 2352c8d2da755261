import { KERNEL_BASE64 } from './kernel-bytes.ts';

/** What the compiled kernel offers: see assembly/kernel.ts. Arrays are addresses in bytes. */
export interface KernelExports {
  readonly memory: WebAssembly.Memory;
  /** First address that the program itself does not use. */
  readonly firstFree: () => number;
  readonly loadValues: (...given: number[]) => void;
  readonly factorScalar: (...given: number[]) => number;
  readonly factorPairs: (...given: number[]) => number;
  readonly solveScalar: (...given: number[]) => void;
  readonly solvePairs: (...given: number[]) => void;
  readonly residualScalar: (...given: number[]) => void;
  readonly residualPairs: (...given: number[]) => void;
}

/** The program, as bytes. */
export const kernelBytes = (): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(KERNEL_BASE64), (character) => character.charCodeAt(0));

let compiled: WebAssembly.Module | undefined;

const exportsOf = (instance: WebAssembly.Instance): KernelExports =>
  instance.exports as unknown as KernelExports;

/**
 * A fresh instance with its own memory, at once. The program is compiled once and is under 4 kB, which
 * every browser compiles on any thread. Throws where WebAssembly with vectors is not to be had.
 */
export const instantiateKernel = (): KernelExports => {
  compiled ??= new WebAssembly.Module(kernelBytes());
  return exportsOf(new WebAssembly.Instance(compiled));
};

/** The same without holding up the thread. Rejects where `instantiateKernel` throws. */
export const instantiateKernelLater = async (): Promise<KernelExports> => {
  compiled ??= await WebAssembly.compile(kernelBytes());
  return exportsOf(await WebAssembly.instantiate(compiled));
};
