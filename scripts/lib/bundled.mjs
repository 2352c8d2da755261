// @ts-check
import {
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { ROOT } from './root.mjs';
import { readOnlyComplaint } from './writable.mjs';

// CommonJS packages inside an ES module still ask for `require`.
const REQUIRE =
  "import { createRequire as madeRequire } from 'node:module'; const require = madeRequire(import.meta.url);";

/**
 * @param {string} outfile
 * @param {readonly string[]} external
 * @returns {boolean} whether it was made like this, from its sources as they are now
 */
const isFresh = (outfile, external) => {
  const list = `${outfile}.inputs.json`;
  if (!existsSync(outfile) || !existsSync(list)) return false;
  const made = statSync(outfile).mtimeMs;
  /** @type {{ inputs: string[], external: string[] }} */
  const how = JSON.parse(readFileSync(list, 'utf8'));
  if (how.external.join() !== external.join()) return false;
  return how.inputs.every((input) => {
    const file = resolve(ROOT, input);
    return existsSync(file) && statSync(file).mtimeMs < made;
  });
};

/**
 * Writes a file whole or not at all, so that programs started side by side never read half of one.
 * @param {string} file
 * @param {string | Uint8Array} content
 * @param {Date} as the time it is dated to
 */
const writeWhole = (file, content, as) => {
  const draft = `${file}.${process.pid}.draft`;
  writeFileSync(draft, content);
  utimesSync(draft, as, as);
  renameSync(draft, file);
};

/**
 * Bundles a TypeScript program into one file that this Node runs, unless a fresh one is there.
 * Needs no network. Paths are relative to the repository. Rejects where it cannot be made or written.
 * @param {string} entry
 * @param {string} outfile
 * @param {{ external?: string[] }} [options] packages that are left where they are installed
 * @returns {Promise<string>} absolute path of the bundle
 */
export const bundled = async (entry, outfile, { external = [] } = {}) => {
  const made = join(ROOT, outfile);
  if (isFresh(made, external)) return made;
  const complaint = readOnlyComplaint(dirname(made));
  if (complaint !== null) throw new Error(complaint);
  // Dated to before the build: a source saved while it runs makes the result stale, as it should.
  const began = new Date();
  const { build } = await import('esbuild');
  const result = await build({
    absWorkingDir: ROOT,
    entryPoints: [entry],
    outfile: made,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    external,
    banner: { js: REQUIRE },
    sourcemap: 'inline',
    sourcesContent: false,
    metafile: true,
    write: false,
    logLevel: 'silent',
  });
  mkdirSync(dirname(made), { recursive: true });
  const output = result.outputFiles[0];
  if (output === undefined) throw new Error(`esbuild made nothing of ${entry}`);
  const inputs = JSON.stringify({ inputs: Object.keys(result.metafile.inputs), external });
  writeWhole(`${made}.inputs.json`, inputs, began);
  writeWhole(made, output.contents, began);
  return made;
};
