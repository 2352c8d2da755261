import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { beginGarment, benchHere, DIST, killBrowser, openProfile } from './harness.ts';
import { type Served, serveFolder } from './serve.ts';
import { untilKept } from './storage.ts';

const at = benchHere();

const toYarn = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: 'Yarn' }).click();
  await mass(page).waitFor();
};
const mass = (page: Page) => page.getByRole('textbox', { name: /grams/ }).first();

test('B13: text that does not read as a value stays as typed, with its fault, after a closed tab', async () => {
  const page = await at.open();
  await beginGarment(page, 'Cardigan');
  await toYarn(page);
  await mass(page).pressSequentially('13 3/');
  const address = page.url();
  const context = page.context();
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto(address);
  await expect.poll(() => mass(again).inputValue()).toBe('13 3/');
  expect(await mass(again).getAttribute('aria-invalid')).toBe('true');
  await mass(again).press('End');
  await mass(again).pressSequentially('8 oz');
  await again.keyboard.press('Tab');
  // 13 3/8 oz, an ounce being 28.349523125 g exactly: 379.17 g.
  await expect.poll(() => mass(again).inputValue()).toBe('379.2');
  await again.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => mass(again).inputValue()).toBe('');
});

test('B14: a decimal comma is a decimal mark in an American browser too', async () => {
  const page = await at.open({ locale: 'en-US' });
  await beginGarment(page, 'Comma');
  await toYarn(page);
  await mass(page).fill('412,5');
  await page.keyboard.press('Tab');
  await expect.poll(() => mass(page).inputValue()).toBe('412.5');
});

const garmentPage = async (context: BrowserContext, address: string): Promise<Page> => {
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(address);
  return page;
};

test('B15: a killed browser loses nothing typed, half-typed text least of all', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'dryflat-profile-'));
  const served: Served = await serveFolder(DIST);
  const first = await openProfile(profile);
  const page = await garmentPage(first, served.address);
  await beginGarment(page, 'Kept through a kill');
  await toYarn(page);
  const address = page.url();
  await mass(page).pressSequentially('13 3/');
  await untilKept(page);
  killBrowser(profile);
  await first.close().catch(() => {});

  const second = await openProfile(profile);
  const again = await garmentPage(second, address);
  await again.getByRole('heading', { level: 1, name: 'Kept through a kill' }).waitFor();
  await expect.poll(() => mass(again).inputValue()).toBe('13 3/');
  await second.close();
  await served.stop();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});
