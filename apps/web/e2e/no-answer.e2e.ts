import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openId } from './garments.ts';
import { beginGarment, benchHere, isSound } from './harness.ts';
import { type Silence, silence, untilKept } from './storage.ts';

const at = benchHere();

/** A page on which a garment was begun, left, and the shelf's storage fell silent. */
const opened = async (silent: Silence): Promise<{ page: Page; id: string }> => {
  const first = await at.open({ acceptDownloads: true });
  await beginGarment(first, 'Cardigan');
  await untilKept(first);
  const id = openId(first);
  const page = await first.context().newPage();
  await first.close();
  await silence(page, silent);
  await page.goto(at.address);
  return { page, id };
};

/** It may take five seconds until the page says so: four of waiting, one of loading. */
const IN_TIME = { timeout: 5_000 };

for (const what of ['open', 'read'] as const)
  test(`B38: a shelf whose ${what} never answers leads to a page that says so, with files and settings`, async () => {
    const { page } = await opened({ of: 'dryflat-shelf', what, list: false });
    await page
      .getByRole('heading', { level: 1, name: 'Your shelf does not open' })
      .waitFor(IN_TIME);
    const save = page.getByRole('button', { name: 'Save Cardigan as a file' });
    await save.waitFor();
    await isSound(page);
    const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
    const text = await readFile(await download.path(), 'utf8');
    expect(JSON.parse(text).name).toBe('Cardigan');
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
    await page.getByText('Inches').click();
    await page.goBack();
    // An answer that comes late is taken, and what was chosen meanwhile stays.
    await page.evaluate(() => (window as unknown as { answer: () => void }).answer());
    await page.getByRole('link', { name: /Cardigan/ }).waitFor();
    await untilKept(page);
    await page.getByRole('link', { name: 'Settings' }).click();
    expect(await page.getByRole('radio', { name: 'Inches' }).isChecked()).toBe(true);
  });

test('B38: a garment that never answers leads to a page that says so, and the shelf stays', async () => {
  const { page, id } = await opened({ of: 'dryflat-garment', what: 'open', list: false });
  await page.getByRole('link', { name: /Cardigan/ }).click();
  await page
    .getByRole('heading', { level: 1, name: 'This garment does not open' })
    .waitFor(IN_TIME);
  await isSound(page);
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('heading', { level: 1, name: 'On your shelf' }).waitFor();
  await page.goto(`${at.address}#/garment/${id}/wearer`);
  await page.evaluate(() => (window as unknown as { answer: () => void }).answer());
  await page.getByRole('heading', { level: 1, name: 'Cardigan' }).waitFor();
});

test('B38: where nothing at all answers, the page says so and offers to try again', async () => {
  const { page } = await opened({ of: 'dryflat', what: 'open', list: true });
  await page.getByRole('heading', { level: 1, name: 'Your shelf does not open' }).waitFor(IN_TIME);
  await page.getByText('Nothing at the moment.').waitFor(IN_TIME);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByText('Fetching…').waitFor();
  await page.getByRole('heading', { level: 1, name: 'Your shelf does not open' }).waitFor(IN_TIME);
});

test('B38: storage that refuses to open says so at once, and is tried again', async () => {
  const page = await at.open();
  await page.addInitScript(() => {
    const state = window as unknown as { refuses: boolean };
    state.refuses = true;
    const { open } = IDBFactory.prototype;
    IDBFactory.prototype.open = function (name, ...rest) {
      if (!state.refuses) return open.call(this, name, ...rest);
      // A version below the one that is there is refused.
      open.call(this, 'other', 2);
      return open.call(this, 'other', 1);
    };
  });
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Your shelf does not open' }).waitFor();
  await page.evaluate(() => {
    (window as unknown as { refuses: boolean }).refuses = false;
  });
  await page.getByRole('button', { name: 'Begin a garment' }).waitFor();
});
