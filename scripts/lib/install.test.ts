import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { missingPackages } from './install.mjs';

let root: string;
const write = (path: string, packages: object) =>
  writeFileSync(join(root, path), JSON.stringify({ packages }));

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'dryflat-install-'));
  mkdirSync(join(root, 'node_modules', 'a'), { recursive: true });
  write('package-lock.json', {
    '': { version: '1.0.0' },
    'packages/own': { version: '1.0.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0', optional: true },
  });
});
afterEach(() => rmSync(root, { recursive: true }));

it('everything is missing where npm left no list', () => {
  expect(missingPackages(root)).toEqual(['node_modules/a']);
});

it('nothing is missing when versions agree; packages of other platforms may be absent', () => {
  write('node_modules/.package-lock.json', { 'node_modules/a': { version: '1.0.0' } });
  expect(missingPackages(root)).toEqual([]);
});

it('another version is missing', () => {
  write('node_modules/.package-lock.json', { 'node_modules/a': { version: '0.9.0' } });
  expect(missingPackages(root)).toEqual(['node_modules/a']);
});

it('a package that is listed but gone is missing', () => {
  write('node_modules/.package-lock.json', { 'node_modules/a': { version: '1.0.0' } });
  rmSync(join(root, 'node_modules', 'a'), { recursive: true });
  expect(missingPackages(root)).toEqual(['node_modules/a']);
});

it('a lock file that cannot be read is an error, not an empty list', () => {
  writeFileSync(join(root, 'package-lock.json'), '{');
  expect(() => missingPackages(root)).toThrow('cannot be read');
});
