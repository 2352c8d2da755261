// @ts-check
import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundled } from './bundled.mjs';
import { ROOT } from './root.mjs';

const FOLDERS = ['packages', 'apps', 'scripts'];
const SKIPPED = /(^|\/)(node_modules|dist)\//;

/**
 * Files of the repository whose name ends so, in the order of their paths.
 * @param {string} ending like `.bench.ts`
 */
export const filesEnding = (ending) =>
  FOLDERS.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map(
      (file) => `${folder}/${file}`,
    ),
  )
    .filter((file) => file.endsWith(ending) && !SKIPPED.test(file))
    .sort();

/**
 * What a TypeScript file of the repository exports. Packages that start programs of their own stay
 * where they are installed.
 * @param {string} file relative to the repository
 * @param {string} cache name of the folder under `.cache` that the bundle goes to
 * @returns {Promise<any>}
 */
export const loaded = async (file, cache) => {
  const outfile = join('.cache', cache, `${relative('.', file).replaceAll('/', '-')}.mjs`);
  const made = await bundled(file, outfile, {
    external: ['playwright-core', 'esbuild', 'pdfjs-dist', 'typescript'],
  });
  return import(pathToFileURL(made).href);
};

/** Standard output belongs to the results: whatever else is said goes to standard error. */
export const keepOutputForResults = () => {
  console.log = console.error;
  console.info = console.error;
};

/** @param {number} value */
export const rounded = (value) => Number(value.toPrecision(4));
