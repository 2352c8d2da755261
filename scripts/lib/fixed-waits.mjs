// @ts-check
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesEnding } from './measuring.mjs';
import { ROOT } from './root.mjs';

/** Files that drive a browser. */
const driving = () => [
  ...filesEnding('.ts').filter((file) => file.startsWith('apps/web/e2e/')),
  'scripts/picture.mjs',
  'scripts/lib/scenes.mjs',
];

/** A moment picked by chance, to kill a browser in: written so and not otherwise. No other time is waited for. */
const BY_CHANCE = /\bsetTimeout\(done, \d+ \+ \d+ \* random\(\)\)/g;
const FIXED = /\bwaitForTimeout\b|\btimers\/promises\b|\bsetTimeout\(/;

/**
 * Lines that wait for a time to pass, rather than for what has to be there by then: too short on a busy
 * machine, too long on any other.
 * @param {string} source
 * @returns {string[]}
 */
export const fixedWaitsIn = (source) =>
  source
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => FIXED.test(line.replaceAll(BY_CHANCE, '')) && !/^(\/\/|\/?\*)/.test(line));

/** Such lines of all files that drive a browser, each after the path of its file. */
export const fixedWaits = () =>
  driving().flatMap((file) =>
    fixedWaitsIn(readFileSync(join(ROOT, file), 'utf8')).map((line) => `${file}: ${line}`),
  );
