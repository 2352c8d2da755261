import { mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { bundled } from './bundled.mjs';
import { ROOT } from './root.mjs';

let folder: string;
let entry: string;
let outfile: string;
const LONG_AGO = new Date('2020-01-01T00:00:00Z');

/** A source that was saved long ago, unless another time is given. */
const save = (name: string, content: string, at = LONG_AGO) => {
  writeFileSync(join(folder, name), content);
  utimesSync(join(folder, name), at, at);
};

beforeEach(() => {
  mkdirSync(join(ROOT, '.cache'), { recursive: true });
  folder = mkdtempSync(join(ROOT, '.cache', 'bundled-'));
  entry = relative(ROOT, join(folder, 'entry.ts'));
  outfile = relative(ROOT, join(folder, 'out.mjs'));
  save('part.ts', "export const part: string = 'one';\n");
  save('entry.ts', "export { part } from './part.ts';\n");
});
afterEach(() => rmSync(folder, { recursive: true }));

const partNow = async (path: string): Promise<string> =>
  (await import(`${pathToFileURL(path).href}?${Math.random()}`)).part;

it('makes a program that Node runs', async () => {
  expect(await partNow(await bundled(entry, outfile))).toBe('one');
});

it('keeps a bundle whose sources are as they were', async () => {
  const made = await bundled(entry, outfile);
  writeFileSync(made, "export const part = 'kept';\n");
  expect(await partNow(await bundled(entry, outfile))).toBe('kept');
});

it('makes it anew when any source was saved since', async () => {
  await bundled(entry, outfile);
  save('part.ts', "export const part: string = 'two';\n", new Date(Date.now() + 1000));
  expect(await partNow(await bundled(entry, outfile))).toBe('two');
});

it('makes it anew when a source is gone, and fails where it is needed', async () => {
  const made = await bundled(entry, outfile);
  const before = readFileSync(made, 'utf8');
  rmSync(join(folder, 'part.ts'));
  await expect(bundled(entry, outfile)).rejects.toThrow('Could not resolve');
  expect(readFileSync(made, 'utf8')).toBe(before);
});

it('makes it anew when other packages are left out of it', async () => {
  const made = await bundled(entry, outfile);
  writeFileSync(made, "export const part = 'kept';\n");
  await bundled(entry, outfile, { external: ['esbuild'] });
  expect(await partNow(made)).toBe('one');
});
