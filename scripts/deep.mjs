#!/usr/bin/env node
// @ts-check
// `npm run deep [-- WORD]`: the tests that draw at random, with many more draws than `npm test` makes;
// only files whose path contains WORD.
import './lib/node-version.mjs';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DRAWS } from './lib/draws.mjs';
import { filesEnding } from './lib/measuring.mjs';
import { ROOT } from './lib/root.mjs';
import { run } from './lib/run.mjs';

const word = process.argv[2] ?? '';
const drawing = filesEnding('.test.ts').filter(
  (file) =>
    file.includes(word) && readFileSync(join(ROOT, file), 'utf8').includes('/lib/draws.mjs'),
);
if (drawing.length === 0) {
  console.error(`No test that draws has ${word} in its path.`);
  process.exit(2);
}
const vitest = ['--no-install', 'vitest', 'run', '--testTimeout=3600000', ...drawing];
const { code } = await run('npx', vitest, {
  cwd: ROOT,
  env: { [DRAWS]: 'large' },
  limitMs: 4 * 3_600_000,
});
process.exit(code === 0 ? 0 : 1);
