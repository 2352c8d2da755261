// @ts-check
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { run } from './run.mjs';
import { readOnlyComplaint } from './writable.mjs';

const SOURCES = [
  'apps/web',
  'packages',
  'examples',
  'package-lock.json',
  'LICENSE',
  'scripts/lib/notices.mjs',
];
const SKIPPED = new Set(['node_modules', 'dist', 'dev-dist', '.cache', 'coverage']);
const IS_TEST = /\.(test|bench|figures)\.[a-z]+$|\.md$/;

/**
 * @param {string} path
 * @returns {string[]} files at or below it, in the order of their names
 */
const filesBelow = (path) => {
  if (!existsSync(path)) return [];
  /** @type {import('node:fs').Dirent[]} */
  let entries;
  try {
    entries = readdirSync(path, { withFileTypes: true });
  } catch {
    return [path];
  }
  return entries
    .filter((entry) => !SKIPPED.has(entry.name) && !IS_TEST.test(entry.name))
    .sort((one, other) => (one.name < other.name ? -1 : 1))
    .flatMap((entry) => {
      const below = join(path, entry.name);
      return entry.isDirectory() ? filesBelow(below) : [below];
    });
};

/**
 * A hash of everything that the built app is made from; tests and prose are left out.
 * @param {string} root
 */
export const sourceHash = (root) => {
  const hash = createHash('sha256');
  for (const file of SOURCES.flatMap((source) => filesBelow(join(root, source)))) {
    hash
      .update(`${relative(root, file)}\0`)
      .update(readFileSync(file))
      .update('\0');
  }
  return hash.digest('hex');
};

/** @param {string} root */
export const webDist = (root) => join(root, 'apps', 'web', 'dist');

/** @param {string} root */
const stampFile = (root) => join(webDist(root), '.built-from');

/**
 * Whether the built app is missing or was made from other sources than these.
 * @param {string} root
 */
export const isStale = (root, hash = sourceHash(root)) => {
  if (!existsSync(join(webDist(root), 'index.html')) || !existsSync(stampFile(root))) return true;
  return readFileSync(stampFile(root), 'utf8').trim() !== hash;
};

/**
 * Builds the web app when it is stale, or always with `force`.
 * @param {string} root
 * @param {{ force?: boolean, quiet?: boolean }} [options]
 * @returns {Promise<boolean>} whether a fresh build is there now; where not, it was said why
 */
export const buildWeb = async (root, { force = false, quiet = false } = {}) => {
  // Taken before the build: a file saved while it runs makes the result stale, as it should.
  const hash = sourceHash(root);
  if (!force && !isStale(root, hash)) return true;
  const complaint = readOnlyComplaint(webDist(root));
  if (complaint !== null) {
    console.error(complaint);
    return false;
  }
  console.error('Building the app …');
  const args = [
    'run',
    '--silent',
    'build',
    '--workspace',
    '@dryflat/web',
    '--',
    '--logLevel',
    'warn',
  ];
  // The same app whoever asks: a test runner's own NODE_ENV would make one for developers.
  const env = { NODE_ENV: 'production' };
  const { code } = await run('npm', args, { cwd: root, env, quiet });
  if (code === 0) writeFileSync(stampFile(root), `${hash}\n`);
  else console.error('The app could not be built; the reason is printed above.');
  return code === 0;
};
