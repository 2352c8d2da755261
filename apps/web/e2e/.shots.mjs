// apps/web/e2e/harness.ts
// apps/web/e2e/serve.ts
import { readFile, readFile as readFile2 } from 'node:fs/promises';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

var TYPES = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};
var serveFolder = async (folder) => {
  const server = createServer(async (request, response) => {
    const path = normalize(new URL(request.url ?? '/', 'http://x').pathname);
    const file = join(folder, path.endsWith('/') ? 'index.html' : path);
    try {
      const body = await readFile(file);
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' });
      response.end(body);
    } catch {
      response.writeHead(404).end('not found');
    }
  });
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${server.address().port}/`,
    stop: () => stop(server),
  };
};
var stop = (server) =>
  new Promise((stopped) => {
    server.close(() => stopped());
    server.closeAllConnections();
  });

// apps/web/e2e/harness.ts
var DIST = process.env.DRYFLAT_DIST ?? fileURLToPath(new URL('../dist/', import.meta.url));
var PHONE = { width: 390, height: 844 };
var DESK = { width: 1280, height: 800 };
var LAUNCH = {
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-background-networking',
    '--disable-component-update',
    '--no-first-run',
  ],
};
var bench = async () => {
  const served = await serveFolder(DIST);
  const browser = await chromium.launch(LAUNCH);
  const errors = [];
  return {
    address: served.address,
    browser,
    open: async ({ path = '', ...options } = {}) => {
      const context = await browser.newContext({
        viewport: PHONE,
        locale: 'en-GB',
        reducedMotion: 'reduce',
        ...options,
      });
      const page = await context.newPage();
      collectErrors(page, errors);
      await page.goto(served.address + path);
      return page;
    },
    close: async () => {
      await browser.close();
      await served.stop();
      if (errors.length > 0)
        throw new Error(`the page reported:
${errors.join('\n')}`);
    },
  };
};
var collectErrors = (page, into) => {
  page.on('pageerror', (error) => into.push(error.stack ?? error.message));
  page.on('console', (message) => {
    const text = message.text();
    if (message.type() === 'error' && !text.includes('ERR_INTERNET_DISCONNECTED')) into.push(text);
  });
};
var openExample = async (page, title) => {
  await page
    .getByRole('listitem')
    .filter({ hasText: title })
    .getByRole('button', { name: 'Open a copy' })
    .click();
  await page.getByRole('navigation', { name: 'Places of this garment' }).waitFor();
};
var axe = null;
var axeFindings = async (page) => {
  axe ??= await readFile2(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations } = await window.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map((node) => `${id}: ${help}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
    );
  });
};
var smallTargets = (page) =>
  page.evaluate(() => {
    const pressable = 'a[href], button, input, select, textarea, summary, [role="radio"], label';
    const boxes = [...document.querySelectorAll(pressable)].filter((each) => {
      const target = each.closest('label') ?? each.closest('.df-box') ?? each;
      const { width, height, bottom } = target.getBoundingClientRect();
      const hidden = width <= 1 || height <= 1 || bottom < 0;
      const inText = each.matches('p a, li p a');
      const onlyText = each.matches('label') && each.querySelector('input') === null;
      return !hidden && !inText && !onlyText && (width < 43.5 || height < 43.5);
    });
    return boxes.map((each) => each.outerHTML.slice(0, 120));
  });
var fitsSideways = (page) =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);

// apps/web/e2e/.shots.tmp.ts
var b = await bench();
var report = async (page, name) => {
  await page.waitForTimeout(300);
  await page.screenshot({ path: `/tmp/shots/${name}.png` });
  console.log(name, await axeFindings(page), await smallTargets(page), await fitsSideways(page));
};
for (const [size, viewport] of [
  ['phone', PHONE],
  ['desk', DESK],
])
  for (const colorScheme of ['light', 'dark']) {
    const n = `${size}-${colorScheme}`;
    const page = await b.open({ viewport, colorScheme });
    await page.getByRole('button', { name: 'Open a copy' }).first().waitFor();
    await report(page, `${n}-1empty`);
    await openExample(page, 'Ledger Day');
    await page.waitForTimeout(1200);
    await report(page, `${n}-2garment`);
    await page.getByRole('button', { name: 'More for this garment' }).click();
    await page.getByRole('dialog').waitFor();
    await report(page, `${n}-3menu`);
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'Shelf' }).click();
    await page.getByRole('heading', { name: 'On your shelf' }).waitFor();
    await report(page, `${n}-4shelf`);
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('heading', { name: 'Settings' }).waitFor();
    await report(page, `${n}-5settings`);
  }
await b.close();
