#!/usr/bin/env node
// @ts-check
// `npm run picture [WORD]`: takes the pictures of the app that the pages show, from the built app; those whose name has WORD.
import './lib/node-version.mjs';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { atRest } from './lib/at-rest.mjs';
import { bundled } from './lib/bundled.mjs';
import { CHROMIUM_ARGS, chromiumAdvice, findChromium } from './lib/chromium.mjs';
import { ROOT } from './lib/root.mjs';
import { SCENES } from './lib/scenes.mjs';
import { buildWeb, webDist } from './lib/web-build.mjs';

const executablePath = findChromium();
if (executablePath === null) {
  console.error(chromiumAdvice());
  process.exit(1);
}
if (!(await buildWeb(ROOT))) process.exit(1);
const server = await bundled('apps/server/src/index.ts', 'apps/server/dist/server.mjs');
/** @type {typeof import('../apps/server/src/index.ts')} */
const { serve } = await import(pathToFileURL(server).href);
const serving = await serve({ dir: webDist(ROOT), port: 0 });
const browser = await chromium.launch({ executablePath, args: CHROMIUM_ARGS });
const folder = join(ROOT, 'docs', 'pictures');
mkdirSync(folder, { recursive: true });
const word = process.argv[2] ?? '';
let failed = 0;

for (const { file, width, height, example, prepare } of SCENES.filter((each) =>
  each.file.includes(word),
)) {
  const context = await browser.newContext({
    viewport: { width, height },
    deviceScaleFactor: 2,
    locale: 'en-GB',
    colorScheme: 'light',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  const complaints = /** @type {string[]} */ ([]);
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  try {
    await page.goto(`${serving.url}/#/example/${example}`);
    await page.waitForURL(/#\/garment\//);
    await prepare(page);
    await page.waitForLoadState('networkidle');
    await atRest(page);
    await page.screenshot({ path: join(folder, file) });
    console.log(`docs/pictures/${file}`);
  } catch (error) {
    failed += 1;
    console.error(`${file}: ${error instanceof Error ? error.message : error}`);
  }
  await context.close();
  for (const complaint of complaints) console.error(`${file}: ${complaint}`);
}
await browser.close();
await serving.close();
process.exit(failed > 0 ? 1 : 0);
