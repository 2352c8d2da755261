// @ts-check
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from './root.mjs';

/**
 * Pages whose examples run. A fence marked `sh` is run as it stands; where a fence marked `text`
 * follows, with nothing but blank lines between, it holds what was printed. Fences of one page share
 * a folder that is empty at first.
 */
export const pages = () => [
  'README.md',
  ...readdirSync(join(ROOT, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => `docs/${file}`)
    .sort(),
];

/**
 * @typedef {object} Example
 * @property {string} script
 * @property {string | null} shown what the page says is printed; null where it says nothing
 * @property {number} line of the page where the script's fence opens, from 1
 * @property {[number, number] | null} at start and end of the shown text in the page
 */

const FENCES = /^```sh\n([\s\S]*?)^```\n(?:\n*^```text\n([\s\S]*?)^```$)?/gm;

/**
 * @param {string} page
 * @returns {Example[]}
 */
export const examplesIn = (page) =>
  [...page.matchAll(FENCES)].map((match) => {
    const [whole, script = '', shown] = match;
    const start = match.index + whole.length - (shown?.length ?? 0) - 3;
    return {
      script,
      shown: shown ?? null,
      line: page.slice(0, match.index).split('\n').length,
      at: shown === undefined ? null : [start, start + shown.length],
    };
  });

/** A folder with an `npx` that runs our own command without looking anywhere else. */
const ownNpx = () => {
  const folder = mkdtempSync(join(tmpdir(), 'dryflat-npx-'));
  const bin = join(ROOT, 'apps', 'cli', 'bin', 'dryflat.mjs');
  const script = `#!/bin/sh\n[ "$1" = dryflat ] || { echo "npx $1: only dryflat is run here" >&2; exit 9; }\nshift\nexec node '${bin}' "$@"\n`;
  writeFileSync(join(folder, 'npx'), script);
  chmodSync(join(folder, 'npx'), 0o755);
  return folder;
};

/**
 * Runs the examples of a page in their order.
 * @param {string} page
 * @returns {(Example & { code: number, printed: string })[]} `printed`: both outputs, as on a screen
 */
export const runExamples = (page) => {
  const cwd = mkdtempSync(join(tmpdir(), 'dryflat-docs-'));
  const npx = ownNpx();
  const env = { ...process.env, PATH: `${npx}:${process.env.PATH}`, NO_COLOR: '1' };
  try {
    return examplesIn(page).map((example) => {
      const script = `exec 2>&1\n${example.script}`;
      const ran = spawnSync('sh', ['-c', script], { cwd, env, encoding: 'utf8' });
      return { ...example, code: ran.status ?? 1, printed: ran.stdout };
    });
  } finally {
    rmSync(cwd, { recursive: true });
    rmSync(npx, { recursive: true });
  }
};

/**
 * The page with every shown text replaced by what its script prints now.
 * @param {string} page
 */
export const refreshed = (page) =>
  runExamples(page).reduceRight(
    (text, { at, printed }) =>
      at === null ? text : text.slice(0, at[0]) + printed + text.slice(at[1]),
    page,
  );
