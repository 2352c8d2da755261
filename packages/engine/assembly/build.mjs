#!/usr/bin/env node
// @ts-check
// `npm run kernel -w @dryflat/engine`: compiles kernel.ts to WebAssembly and writes the bytes as a
// module, so that nothing needs to be fetched or read when the engine runs.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import asc from 'assemblyscript/asc';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const MODULE = join(HERE, '..', 'src', 'membrane', 'sparse', 'kernel-bytes.ts');

// No allocator and no checks: the caller lays out the memory. Vectors are of the fixed-width kind,
// which round as single numbers do; the relaxed kind would not.
const OPTIONS = ['-O3', '--runtime', 'stub', '--noAssert', '--enable', 'simd'];

/**
 * Compiles the kernel from its source.
 * @returns {Promise<Uint8Array>}
 */
export const buildKernel = async () => {
  /** @type {Uint8Array | undefined} */
  let made;
  const { error, stderr } = await asc.main(['kernel.ts', '--outFile', 'kernel.wasm', ...OPTIONS], {
    readFile: (name) => (name === 'kernel.ts' ? readFileSync(join(HERE, name), 'utf8') : null),
    writeFile: (name, content) => {
      if (name === 'kernel.wasm' && typeof content !== 'string') made = content;
    },
    listFiles: () => [],
  });
  if (error !== null || made === undefined)
    throw new Error(`the kernel does not compile: ${stderr.toString()}`, { cause: error });
  return made;
};

/** @param {Uint8Array} bytes */
const moduleText = (bytes) => {
  const lines =
    Buffer.from(bytes)
      .toString('base64')
      .match(/.{1,96}/g) ?? [];
  return [
    '// Made by `npm run kernel -w @dryflat/engine` from assembly/kernel.ts. Not edited by hand.',
    '',
    '/** The compiled kernel, in base 64. */',
    `export const KERNEL_BASE64 =\n${lines.map((line) => `  '${line}'`).join(' +\n')};`,
    '',
  ].join('\n');
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const bytes = await buildKernel();
  writeFileSync(MODULE, moduleText(bytes));
  console.log(`${MODULE}: ${bytes.length} bytes of WebAssembly`);
}
