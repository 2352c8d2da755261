// @ts-check
// What is really inside the built app, found without the list that its notices are made from.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { ROOT } from './root.mjs';
import { run } from './run.mjs';

/**
 * Name and version of the package that a file belongs to; null for a file of ours.
 * @param {string} file
 */
const packageOf = (file) => {
  const [folder] = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file) ?? [];
  if (folder === undefined) return null;
  const { name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return `${name} ${version}`;
};

/**
 * The file of a package of fonts that a font was copied from; its name got a hash behind it.
 * @param {string} font
 */
const fontSource = (font) => {
  const name = basename(font).replace(/-[\w-]{8}(\.\w+)$/, '$1');
  const packages = readdirSync(join(ROOT, 'node_modules'), { encoding: 'utf8' })
    .filter((scope) => scope.startsWith('@fontsource'))
    .flatMap((scope) =>
      readdirSync(join(ROOT, 'node_modules', scope)).map((each) => join(scope, each, 'files')),
    );
  const found = packages
    .map((files) => join(ROOT, 'node_modules', files, name))
    .find((file) => tryRead(file)?.equals(readFileSync(font)));
  if (found === undefined) throw new Error(`${name} is a font of no package`);
  return found;
};

/** @param {string} file */
const tryRead = (file) => {
  try {
    return readFileSync(file);
  } catch {
    return null;
  }
};

/**
 * Packages inside a build with source maps: those whose lines its maps name, those of the service
 * worker too, and those of its fonts.
 * @param {string} dist
 */
const packagesIn = (dist) => {
  const files = readdirSync(dist, { recursive: true, encoding: 'utf8' }).map((file) =>
    join(dist, file),
  );
  const sources = files
    .filter((file) => file.endsWith('.map'))
    .flatMap((map) =>
      JSON.parse(readFileSync(map, 'utf8')).sources.map((/** @type {string} */ source) => {
        const file = resolve(dirname(map), source);
        // The service worker is made in a folder of its own, and its map reads from there.
        return existsSync(file) ? file : join(ROOT, source.replace(/^(\.\.\/)+/, ''));
      }),
    );
  const fonts = files.filter((file) => /\.woff2?$/.test(file)).map(fontSource);
  return [...new Set([...sources, ...fonts].flatMap((file) => packageOf(file) ?? []))].sort();
};

/**
 * Builds the app anew, elsewhere, and compares what is inside with what its notices tell.
 * @returns {Promise<{ inside: string[], untold: string[] }>} names with versions; `untold` are those
 *   without a licence and its text
 */
export const insideTheApp = async () => {
  const dist = mkdtempSync(join(tmpdir(), 'dryflat-inside-'));
  try {
    const { code } = await run(
      'npx',
      ['--no-install', 'vite', 'build', '--sourcemap', '--logLevel', 'error', '--outDir', dist],
      { cwd: join(ROOT, 'apps', 'web'), env: { NODE_ENV: 'production' }, quiet: true },
    );
    if (code !== 0) throw new Error('the app could not be built; the reason is printed above');
    const inside = packagesIn(dist);
    // A name, its licence, perhaps other names, an empty line, and words.
    const told = readFileSync(join(dist, 'notices.txt'), 'utf8')
      .split(/\n\n-{9,}\n\n/)
      .filter((section) => /\n\n[\s\S]{200}/.test(section))
      .flatMap((section) => section.split('\n\n', 1)[0]?.split('\n') ?? []);
    return {
      inside,
      untold: inside.filter((each) => !told.some((l) => l.startsWith(`${each}: `))),
    };
  } finally {
    rmSync(dist, { recursive: true });
  }
};
