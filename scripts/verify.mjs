#!/usr/bin/env node
// @ts-check
// `npm test`, `npm run verify`, and what continuous integration runs: everything, in order.
import './lib/node-version.mjs';
import { join } from 'node:path';
import { chromium, chromiumAdvice } from './lib/chromium.mjs';
import { installMissing } from './lib/install.mjs';
import { ROOT } from './lib/root.mjs';
import { endLeftovers } from './lib/run.mjs';
import { failures, inOrder, lastLine } from './lib/steps.mjs';
import { STEPS } from './lib/verify-steps.mjs';
import { readOnlyComplaint } from './lib/writable.mjs';

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
  process.once(signal, () => {
    endLeftovers();
    process.exit(130);
  });

const complaint = readOnlyComplaint(join(ROOT, '.cache'));
if (complaint !== null) {
  console.error(complaint);
  process.exit(1);
}
if (!(await installMissing(ROOT))) process.exit(1);
const browser = await chromium(ROOT);
if (browser === null) console.error(`\n${chromiumAdvice()}`);

const results = await inOrder(STEPS, { root: ROOT, chromium: browser });
const left = endLeftovers();
if (left > 0) console.error(`\n${left} processes were left running by a step and were ended.`);

console.log('');
for (const { title, verdict, ms } of results)
  console.log(`${verdict.padEnd(8)} ${(ms / 1000).toFixed(1).padStart(6)} s  ${title}`);
const failed = failures(results);
if (failed.length > 0) console.log(`\nFailed: ${failed.join(', ')}.`);
console.log(`\n${lastLine(results)}`);
process.exit(failed.length > 0 ? 1 : 0);
