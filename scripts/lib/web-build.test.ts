import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { isStale, sourceHash } from './web-build.mjs';

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

it('no build at all is stale', () => {
  rmSync(join(root, 'apps/web/dist'), { recursive: true });
  expect(isStale(root)).toBe(true);
});
