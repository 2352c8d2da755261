import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { buildWeb, isStale, sourceHash } from './web-build.mjs';

let root: string;
const write = (path: string, content: string) => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), content);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'dryflat-build-'));
  write('apps/web/src/main.ts', 'one');
  write('packages/engine/src/units/index.ts', 'two');
  write('apps/web/dist/index.html', 'built');
  write('apps/web/dist/.built-from', sourceHash(root));
});
afterEach(() => rmSync(root, { recursive: true }));

it('a build of these sources is fresh', () => expect(isStale(root)).toBe(false));

it.each([
  ['a changed source', 'apps/web/src/main.ts'],
  ['a new source', 'packages/record/src/new.ts'],
  ['a changed example', 'examples/one.json'],
  ['another set of packages', 'package-lock.json'],
  ['another licence', 'LICENSE'],
])('%s makes it stale', (_, path) => {
  write(path, 'other');
  expect(isStale(root)).toBe(true);
});

it('a file that moves makes it stale', () => {
  rmSync(join(root, 'apps/web/src/main.ts'));
  write('apps/web/src/moved.ts', 'one');
  expect(isStale(root)).toBe(true);
});

it('a test or a page of prose does not', () => {
  write('apps/web/src/main.test.ts', 'a test');
  write('packages/engine/RULES.md', 'a rule');
  expect(isStale(root)).toBe(false);
});

it('the app is made for knitters, also where a test runner asks for it', async () => {
  write('package.json', JSON.stringify({ workspaces: ['apps/web'] }));
  write(
    'apps/web/package.json',
    JSON.stringify({ name: '@dryflat/web', scripts: { build: 'node build.js' } }),
  );
  write(
    'apps/web/build.js',
    "require('fs').writeFileSync('dist/index.html', process.env.NODE_ENV)",
  );
  expect(process.env.NODE_ENV).toBe('test');
  expect(await buildWeb(root)).toBe(true);
  expect(readFileSync(join(root, 'apps/web/dist/index.html'), 'utf8')).toBe('production');
  expect(isStale(root)).toBe(false);
});

it('no build at all is stale', () => {
  rmSync(join(root, 'apps/web/dist'), { recursive: true });
  expect(isStale(root)).toBe(true);
});
