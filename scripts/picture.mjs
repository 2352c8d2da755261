#!/usr/bin/env node
// @ts-check
// `npm run picture`: takes the pictures of the app that the pages show, from the built app.
import './lib/node-version.mjs';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { bundled } from './lib/bundled.mjs';
import { CHROMIUM_ARGS, chromiumAdvice, findChromium } from './lib/chromium.mjs';
import { ROOT } from './lib/root.mjs';
import { buildWeb, webDist } from './lib/web-build.mjs';

const PICTURES = [
  { file: 'phone.png', width: 390, height: 844 },
  { file: 'desk.png', width: 1280, height: 800 },
];
const EXAMPLE = 'waistcoat';

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

for (const { file, width, height } of PICTURES) {
  const context = await browser.newContext({
    viewport: { width, height },
    deviceScaleFactor: 2,
    locale: 'en-GB',
    colorScheme: 'light',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  const complaints = /** @type {string[]} */ ([]);
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  await page.goto(`${serving.url}/#/example/${EXAMPLE}`);
  const drawing = page.getByRole('heading', { name: 'What it will measure' });
  await drawing.waitFor({ timeout: 20_000 });
  await drawing.evaluate((heading) => {
    heading.scrollIntoView({ block: 'start' });
    // Out from under the bar that stays at the top.
    scrollBy(0, -80);
  });
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(500);
  await page.screenshot({ path: join(folder, file) });
  await context.close();
  for (const complaint of complaints) console.error(`${file}: ${complaint}`);
  console.log(`docs/pictures/${file}`);
}
await browser.close();
await serving.close();
