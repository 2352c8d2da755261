import { kernelSizes } from './kernel.ts';
import type { Symbolic } from './symbolic.ts';
import type { KernelExports } from './wasm-module.ts';

const PAGE = 65536;

/** Addresses in bytes of everything the kernel uses for one symbolic analysis. */
export type Layout = ReturnType<typeof layOut>;

/** Lays arrays one after another from `base`, each on a multiple of 16 bytes. */
export const layOut = (symbolic: Symbolic, base: number) => {
  const { count, matrix, fill, slot } = symbolic;
  const size = kernelSizes(symbolic);
  let at = base;
  const take = (bytes: number): number => {
    const from = Math.ceil(at / 16) * 16;
    at = from + bytes;
    return from;
  };
  const numbers = (length: number) => take(8 * length);
  const integers = (length: number) => take(4 * length);
  return {
    values: numbers(size.values),
    matrix: numbers(size.matrix),
    lower: numbers(size.lower),
    pivots: numbers(size.pivots),
    inner: numbers(size.inner),
    work: numbers(size.work),
    b: numbers(size.vector),
    x: numbers(size.vector),
    r: numbers(size.vector),
    slot: integers(slot.length),
    start: integers(count + 1),
    place: integers(matrix.place.length),
    rowPtr: integers(count + 1),
    rowCol: integers(fill.rowCol.length),
    colPtr: integers(count + 1),
    rowIdx: integers(fill.rowIdx.length),
    filled: integers(count),
    end: at,
  };
};

/** Makes the memory at least `bytes` long; it never shrinks. Throws RangeError beyond 4 GiB. */
export const growTo = (memory: WebAssembly.Memory, bytes: number): void => {
  const missing = bytes - memory.buffer.byteLength;
  if (missing > 0) memory.grow(Math.ceil(missing / PAGE));
};

/** Lays out one analysis in the memory of an instance and copies its integers in. */
export const bindMemory = (kernel: KernelExports, symbolic: Symbolic): Layout => {
  const at = layOut(symbolic, kernel.firstFree());
  growTo(kernel.memory, at.end);
  const put = (address: number, array: Int32Array) =>
    new Int32Array(kernel.memory.buffer, address, array.length).set(array);
  put(at.slot, symbolic.slot);
  put(at.start, symbolic.matrix.start);
  put(at.place, symbolic.matrix.place);
  put(at.rowPtr, symbolic.fill.rowPtr);
  put(at.rowCol, symbolic.fill.rowCol);
  put(at.colPtr, symbolic.fill.colPtr);
  put(at.rowIdx, symbolic.fill.rowIdx);
  return at;
};
