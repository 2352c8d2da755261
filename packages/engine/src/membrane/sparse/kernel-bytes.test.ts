import { Worker } from 'node:worker_threads';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { buildKernel } from '../../../assembly/build.mjs';
import { KERNEL_BASE64 } from './kernel-bytes.ts';
import { kernelBytes } from './wasm-module.ts';

/** A program that solves a chain of three by default, and says with which backend. */
const IN_A_WORKER = `
  import { analyse, factorise, solve } from './index.ts';
  import { parentPort } from 'node:worker_threads';
  const pattern = { n: 3, colPtr: Int32Array.of(0, 1, 3, 5), rowIdx: Int32Array.of(0, 0, 1, 1, 2) };
  const factor = factorise(analyse(pattern), Float64Array.of(2, -1, 2, -1, 2));
  parentPort.postMessage([factor.backend.name, ...solve(factor, Float64Array.of(1, 1, 1))]);
`;

describe('compiled kernel', () => {
  it('SP11: the committed bytes are what the source compiles to', async () => {
    const rebuilt: Uint8Array = await buildKernel();
    expect(Buffer.from(rebuilt).toString('base64')).toBe(KERNEL_BASE64);
    expect(kernelBytes()).toEqual(new Uint8Array(rebuilt));
  }, 60_000);

  it('SP11: it is small enough to compile at once on the main thread of any browser', () => {
    // Chromium long refused to compile more than 4 kB at once there.
    expect(kernelBytes().length).toBeLessThan(4096);
  });

  it('SP11: it asks for nothing from outside', () => {
    expect(WebAssembly.Module.imports(new WebAssembly.Module(kernelBytes()))).toEqual([]);
  });

  it('SP11: it runs in a worker', async () => {
    const { outputFiles } = await build({
      stdin: { contents: IN_A_WORKER, resolveDir: import.meta.dirname, loader: 'ts' },
      bundle: true,
      platform: 'node',
      format: 'cjs',
      write: false,
    });
    const worker = new Worker(outputFiles[0]!.text, { eval: true });
    const [backend, ...x] = await new Promise<[string, ...number[]]>((resolve, reject) => {
      worker.once('message', resolve);
      worker.once('error', reject);
    });
    await worker.terminate();
    // (n + 1 − i) i / 2 for n = 3.
    expect(backend).toBe('wasm');
    // A few roundings.
    expect(x.map((value) => value.toFixed(12))).toEqual([
      '1.500000000000',
      '2.000000000000',
      '1.500000000000',
    ]);
  });
});
