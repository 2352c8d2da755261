// @ts-check
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './run.mjs';
import { readOnlyComplaint } from './writable.mjs';

/**
 * @typedef {Record<string, { version?: string, link?: boolean, optional?: boolean, devOptional?: boolean, inBundle?: boolean }>} Packages
 */

/**
 * @param {string} file
 * @returns {Packages | null} null where the file is missing or broken
 */
const packagesIn = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? null;
  } catch {
    return null;
  }
};

/**
 * Paths of packages that the lock file asks for and that are absent or in another version. npm
 * writes what it installed to `node_modules/.package-lock.json`, last of all, so an installation
 * that was broken off shows up as well. Packages for other platforms are optional and may be absent.
 * @param {string} root
 * @returns {string[]}
 */
export const missingPackages = (root) => {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  if (wanted === null) throw new Error(`${join(root, 'package-lock.json')} cannot be read`);
  const present = packagesIn(join(root, 'node_modules', '.package-lock.json')) ?? {};
  return Object.entries(wanted)
    .filter(([path, entry]) => path.startsWith('node_modules/') && !entry.optional)
    .filter(([path, entry]) => {
      const there = present[path];
      return (
        there === undefined || there.version !== entry.version || !existsSync(join(root, path))
      );
    })
    .map(([path]) => path);
};

/**
 * Installs what is missing: nothing at all in the usual case, everything in a fresh clone.
 * @param {string} root
 * @param {{ quiet?: boolean }} [options] `quiet` keeps standard output free
 * @returns {Promise<boolean>} whether everything is there now; where not, it was said why
 */
export const installMissing = async (root, { quiet = false } = {}) => {
  const missing = missingPackages(root);
  if (missing.length === 0) return true;
  const complaint = readOnlyComplaint(join(root, 'node_modules'));
  if (complaint !== null) {
    console.error(complaint);
    return false;
  }
  const fresh = !existsSync(join(root, 'node_modules'));
  console.error(
    fresh
      ? 'Installing packages (once, a minute or so) …'
      : `Installing ${missing.length} missing or changed packages …`,
  );
  const args = fresh ? ['ci'] : ['install', '--no-save'];
  const { code } = await run('npm', [...args, '--no-fund', '--no-audit'], {
    cwd: root,
    env: { PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '1' },
    quiet,
  });
  if (code !== 0)
    console.error(
      'The packages could not be installed; npm says why above. Then run the same command again.',
    );
  return code === 0;
};
