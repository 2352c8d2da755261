import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openId } from './garments.ts';
import { beginGarment, benchHere } from './harness.ts';
import { failWrites, keeping, setFailing, untilKept } from './storage.ts';

const at = benchHere();

const mass = (page: Page) => page.getByRole('textbox', { name: /grams/ }).first();

/** A garment at its yarn, on a page whose writes can be made to fail. */
const atYarn = async (name: string): Promise<Page> => {
  const page = await at.open();
  await failWrites(page);
  await page.reload();
  await beginGarment(page, name);
  await page.getByRole('link', { name: 'Yarn' }).click();
  await mass(page).waitFor();
  await untilKept(page);
  return page;
};

const rename = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill(name);
  await page.keyboard.press('Escape');
};

test('B31: writes that fail for a while lose nothing, and nothing is called kept meanwhile', async () => {
  const page = await atYarn('Vest');
  await setFailing(page, { to: 'dryflat', as: 'abort' });
  await mass(page).pressSequentially('13 3/');
  await expect.poll(() => keeping(page)).toMatch(/^Not kept yet: this device does not take it/);
  await setFailing(page, null);
  await mass(page).press('End');
  await mass(page).pressSequentially('8 oz');
  await page.keyboard.press('Tab');
  await rename(page, 'Vest for the quay');
  await untilKept(page);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Vest for the quay' }).waitFor();
  // 13 3/8 oz, an ounce being 28.349523125 g exactly: 379.17 g.
  await expect.poll(() => mass(page).inputValue()).toBe('379.2');
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('link', { name: /Vest for the quay/ }).waitFor();
});

test('B31: with no edit after it, what could not be written is written once the device takes it', async () => {
  const page = await atYarn('Sock');
  await setFailing(page, { to: 'dryflat', as: 'abort' });
  await mass(page).pressSequentially('12 1/');
  await expect.poll(() => keeping(page)).toMatch(/^Not kept yet/);
  await setFailing(page, null);
  await untilKept(page);
  await page.reload();
  await expect.poll(() => mass(page).inputValue()).toBe('12 1/');
});

test('B32: the page says how the worst of its documents is kept, and why', async () => {
  const page = await atYarn('Hat');
  await setFailing(page, { to: 'dryflat-garment', as: 'no-space' });
  // The name goes to the garment and to the shelf, and the shelf takes it.
  await rename(page, 'Hat that fits');
  await expect.poll(() => keeping(page)).toMatch(/^Not kept yet: no space left on this device/);
  expect(await page.locator('.df-keeping').first().getAttribute('role')).toBe('alert');
  await setFailing(page, null);
  await untilKept(page);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Hat that fits' }).waitFor();
});

test('B33: a garment that was deleted in another tab does not come back, and its page says so', async () => {
  const page = await atYarn('Shawl');
  const other = await page.context().newPage();
  await other.goto(at.address);
  await other.getByRole('button', { name: 'More for Shawl' }).click();
  await other.getByRole('button', { name: 'Put in the trash' }).click();
  await other.getByRole('button', { name: 'In the trash: 1' }).click();
  await other.getByRole('button', { name: 'Empty the trash' }).click();
  await other.getByRole('button', { name: 'Delete for good' }).click();
  await other.getByText('The trash is empty.').waitFor();
  await mass(page).pressSequentially('12 1/');
  await expect.poll(() => keeping(page)).toMatch(/^Deleted in another tab/);
  const names = await other.evaluate(async () =>
    (await indexedDB.databases()).map(({ name }) => name),
  );
  expect(names).not.toContain(`dryflat-garment-${openId(page)}`);
});

test('B33: where the browser cleared its storage under an open page, all of it is written again at once', async () => {
  const page = await atYarn('Mitten');
  await mass(page).fill('120');
  await page.keyboard.press('Tab');
  await untilKept(page);
  const said = await page
    .locator('.df-keeping')
    .first()
    .evaluateHandle((line) => {
      const heard: (string | null)[] = [];
      new MutationObserver(() => heard.push(line.textContent)).observe(line, {
        subtree: true,
        childList: true,
        characterData: true,
      });
      return heard;
    });
  const tools = await page.context().newCDPSession(page);
  await tools.send('Storage.clearDataForOrigin', {
    origin: new URL(at.address).origin,
    storageTypes: 'indexeddb',
  });
  await expect
    .poll(async () => [(await said.jsonValue())[0], await keeping(page)], { timeout: 10_000 })
    .toEqual([expect.not.stringMatching(/^Kept/), expect.stringMatching(/^Kept/)]);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Mitten' }).waitFor();
  await expect.poll(() => mass(page).inputValue()).toBe('120');
});
