import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const WEB = join(import.meta.dirname, '..', '..');
/** The one place. */
const PLACE = join('src', 'store', 'local.ts');

test('V19: one file names the small store of the browser, and no other', () => {
  const naming = ['src', 'public', 'index.html', 'vite.config.ts', 'manifest.ts']
    .flatMap((path) => filesBelow(path))
    .filter((path) => !/\.test\.tsx?$/.test(path))
    .filter((path) => /\b(local|session)Storage\b/.test(readFileSync(join(WEB, path), 'utf8')));
  expect(naming).toEqual([PLACE]);
});

const filesBelow = (path: string): string[] =>
  path.includes('.')
    ? [path]
    : readdirSync(join(WEB, path), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name).slice(WEB.length + 1));
