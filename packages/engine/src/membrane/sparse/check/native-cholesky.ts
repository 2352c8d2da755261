import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CheckMatrix } from './plane-stress-grid.ts';

/** What one native method did with the matrix: time of each round, and what it left of b − A x. */
export interface NativeRun {
  readonly ms: readonly number[];
  readonly residual: number;
}

/** Under the repository: the benchmarks run from its root. */
const FOLDER = join('.cache', 'native');
const SOURCE = join('scripts', 'native', 'sparse-cholesky.cpp');
const PROGRAM = join(FOLDER, 'sparse-cholesky');

/** With which of the libraries to try, best first. */
const VARIANTS = [
  ['-DWITH_EIGEN', '-DWITH_CHOLMOD', '-lcholmod'],
  ['-DWITH_EIGEN'],
  ['-DWITH_CHOLMOD', '-lcholmod'],
];

/** Compiles the native program with what this machine has; undefined, and says why, without any. */
export const buildNative = (): string | undefined => {
  mkdirSync(FOLDER, { recursive: true });
  let said = '';
  for (const variant of VARIANTS) {
    const flags = ['-std=c++17', '-O3', '-march=native', '-DNDEBUG', SOURCE, '-o', PROGRAM];
    const { status, stderr, error } = spawnSync('g++', [...flags, ...variant], {
      encoding: 'utf8',
    });
    if (status === 0) return PROGRAM;
    said = error?.message ?? stderr;
  }
  console.error(
    'membrane-factor-5000 is left out: no native solver. It needs g++ and libeigen3-dev or ' +
      `libsuitesparse-dev.\n${said.split('\n').slice(0, 3).join('\n')}`,
  );
  return undefined;
};

const bytes = (array: Int32Array | Float64Array): Uint8Array =>
  new Uint8Array(array.buffer, array.byteOffset, array.byteLength);

/** Writes A x = b where the native program reads it. Returns the file. */
export const writeProblem = ({ pattern, values }: CheckMatrix, b: Float64Array): string => {
  const file = join(FOLDER, 'matrix.bin');
  const head = Int32Array.of(pattern.n, values.length);
  const parts = [head, pattern.colPtr, pattern.rowIdx, values, b];
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(file, Buffer.concat(parts.map(bytes)));
  return file;
};

/** Runs every native method on the problem. Throws where the program fails: it compiled. */
export const runNative = (
  program: string,
  file: string,
  rounds: number,
): Readonly<Record<string, NativeRun>> => {
  const { status, stdout, stderr } = spawnSync(program, [file, String(rounds)], {
    encoding: 'utf8',
    // One thread, as ours has.
    env: { OPENBLAS_NUM_THREADS: '1', OMP_NUM_THREADS: '1' },
  });
  if (status !== 0) throw new Error(`${program} failed: ${stderr}`);
  return JSON.parse(stdout);
};
