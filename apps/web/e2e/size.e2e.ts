import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { bench, DIST, openExample } from './harness.ts';

/** The promise of the app: script of the first load, compressed, in bytes. */
const BUDGET = 250_000;

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
}

const sizeOf = async (files: Iterable<string>): Promise<number> => {
  const sizes = await Promise.all(
    [...files].map(async (file) => gzipSync(await readFile(join(DIST, file))).length),
  );
  return sizes.reduce((sum, each) => sum + each, 0);
};

/** A chunk and everything that it cannot run without. */
const closure = (graph: Record<string, Chunk>, key: string, into = new Set<string>()) => {
  const chunk = graph[key];
  if (chunk === undefined) throw new Error(`${key} is not in the build's graph`);
  if (into.has(chunk.file)) return into;
  into.add(chunk.file);
  for (const each of chunk.imports ?? []) closure(graph, each, into);
  return into;
};

test('B24: entry, shelf and forecast come to less than 250 kB of script, compressed', async () => {
  const graph = JSON.parse(await readFile(join(DIST, '.vite/manifest.json'), 'utf8'));
  const files = new Set<string>();
  // The shelf is part of the entry.
  for (const key of ['index.html', 'src/screens/forecast/index.tsx']) closure(graph, key, files);
  const size = await sizeOf(files);
  console.log(`first load: ${(size / 1000).toFixed(1)} kB of script in ${files.size} files`);
  expect(size).toBeLessThan(BUDGET);
});

test('B25: what a first visit to a forecast really fetches stays within it, worker included', async () => {
  const at = await bench();
  const context = await at.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const fetched = new Set<string>();
  context.on('request', (request) => {
    const path = new URL(request.url()).pathname;
    if (path.endsWith('.js')) fetched.add(path);
  });
  await page.goto(at.address);
  await openExample(page, 'Ledger Day waistcoat');
  const line = page.getByRole('navigation').getByRole('link', { name: /^Forecast:/ });
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/\d/);
  const size = await sizeOf(fetched);
  console.log(`fetched to the first forecast: ${(size / 1000).toFixed(1)} kB`);
  expect([...fetched].some((path) => path.includes('worker'))).toBe(true);
  expect(size).toBeLessThan(BUDGET);
  await at.close();
});
