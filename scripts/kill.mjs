#!/usr/bin/env node
// @ts-check
// `npm run kill [-- N]`: kills the browser N times while somebody types, half of them with writes that fail,
// and says what was acknowledged and then not there. Ends with 1 if anything was.
import './lib/node-version.mjs';
import { chromiumAdvice, findChromium } from './lib/chromium.mjs';
import { loaded } from './lib/measuring.mjs';
import { ROOT } from './lib/root.mjs';
import { endLeftovers } from './lib/run.mjs';
import { buildWeb, webDist } from './lib/web-build.mjs';

const given = process.argv[2] ?? '6';
const kills = Number(given);
if (!Number.isInteger(kills) || kills < 2) {
  console.error(
    `${given} is no number of kills. Give a whole number from 2, such as: npm run kill -- 300`,
  );
  process.exit(2);
}
const executablePath = findChromium();
if (executablePath === null) {
  console.error(chromiumAdvice());
  process.exit(1);
}
if (!(await buildWeb(ROOT))) process.exit(1);
/** @type {typeof import('../apps/web/e2e/kill.ts')} */
const { killWhileTyping } = await loaded('apps/web/e2e/kill.ts', 'kill');

let failed = false;
for (const abort of [false, true]) {
  const each = abort ? Math.floor(kills / 2) : Math.ceil(kills / 2);
  const began = performance.now();
  const { acknowledged, lost, aborted } = await killWhileTyping(webDist(ROOT), {
    kills: each,
    abort,
  });
  const seconds = Math.round((performance.now() - began) / 1000);
  console.log(
    `${each} kills ${abort ? `with ${aborted} writes made to fail` : 'with no write made to fail'}: ` +
      `something was acknowledged before ${acknowledged} of them, lost of it: ${lost.length} (${seconds} s)`,
  );
  for (const line of lost) console.log(`  ${line}`);
  // Where nothing was acknowledged nothing was tried.
  failed ||= lost.length > 0 || acknowledged === 0;
}
endLeftovers();
process.exit(failed ? 1 : 0);
