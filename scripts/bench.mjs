#!/usr/bin/env node
// @ts-check
// `npm run bench [-- WORD]`: one JSON line per benchmark on standard output, and nothing else; only
// files whose path contains WORD. Each file exports `bench: () => Promise<Measured[]>`.
import './lib/node-version.mjs';
import { filesEnding, keepOutputForResults, loaded, rounded } from './lib/measuring.mjs';
import { endLeftovers } from './lib/run.mjs';

/**
 * @typedef {object} Measured
 * @property {string} name
 * @property {number} ms
 * @property {number} ratio to what ran beside it in the same run, or to a budget
 * @property {string} against what the ratio is to
 */

keepOutputForResults();

/** @param {string} file */
const runFile = async (file) => {
  /** @type {{ bench: () => Promise<Measured[]> }} */
  const { bench } = await loaded(file, 'bench');
  for (const { name, ms, ratio, against, ...more } of await bench()) {
    const line = { name, ms: rounded(ms), ratio: rounded(ratio), against, ...more };
    process.stdout.write(`${JSON.stringify(line)}\n`);
  }
};

const word = process.argv[2] ?? '';
let failed = 0;
for (const file of filesEnding('.bench.ts').filter((each) => each.includes(word))) {
  try {
    await runFile(file);
  } catch (error) {
    failed += 1;
    console.error(`${file}: ${/** @type {Error} */ (error).stack}`);
  }
}
endLeftovers();
process.exit(failed > 0 ? 1 : 0);
