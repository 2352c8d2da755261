#!/usr/bin/env node
// @ts-check
// `npm run bench [-- WORD]`: one JSON line per benchmark on standard output, and nothing else; only
// files whose path contains WORD. Each file exports `bench: () => Promise<Measured[]>`.
import './lib/node-version.mjs';
import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundled } from './lib/bundled.mjs';
import { ROOT } from './lib/root.mjs';
import { endLeftovers } from './lib/run.mjs';

/**
 * @typedef {object} Measured
 * @property {string} name
 * @property {number} ms
 * @property {number} ratio to what ran beside it in the same run, or to a budget
 * @property {string} against what the ratio is to
 */

const FOLDERS = ['packages', 'apps', 'scripts'];
const SKIPPED = /(^|\/)(node_modules|dist)\//;

/** Standard output belongs to the results: whatever else is said goes to standard error. */
console.log = console.error;
console.info = console.error;

/** @param {string} word */
const benchFiles = (word) =>
  FOLDERS.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map(
      (file) => `${folder}/${file}`,
    ),
  )
    .filter((file) => file.endsWith('.bench.ts') && !SKIPPED.test(file) && file.includes(word))
    .sort();

/** @param {number} value */
const rounded = (value) => Number(value.toPrecision(4));

/** @param {string} file */
const runFile = async (file) => {
  const outfile = join('.cache', 'bench', `${relative('.', file).replaceAll('/', '-')}.mjs`);
  const made = await bundled(file, outfile, { external: ['playwright-core', 'esbuild'] });
  /** @type {{ bench: () => Promise<Measured[]> }} */
  const { bench } = await import(pathToFileURL(made).href);
  for (const { name, ms, ratio, against, ...more } of await bench()) {
    const line = { name, ms: rounded(ms), ratio: rounded(ratio), against, ...more };
    process.stdout.write(`${JSON.stringify(line)}\n`);
  }
};

let failed = 0;
for (const file of benchFiles(process.argv[2] ?? '')) {
  try {
    await runFile(file);
  } catch (error) {
    failed += 1;
    console.error(`${file}: ${/** @type {Error} */ (error).stack}`);
  }
}
endLeftovers();
process.exit(failed > 0 ? 1 : 0);
