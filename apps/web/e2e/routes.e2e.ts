import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { benchHere, fitsSideways, isSound, openExample, PHONE } from './harness.ts';

const at = benchHere();

/** Sixteen routes of ten thousand draws beside other work on two cores. */
const SOON = { timeout: 30_000 };

const toRoutes = async (page: Page): Promise<void> => {
  await page.clock.setFixedTime(new Date('2031-01-12T10:00:00Z'));
  await openExample(page, 'Ledger Day waistcoat');
  await page.getByRole('link', { name: 'Routes', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: /: Routes$/ }).waitFor();
};
const list = (page: Page) => page.getByRole('list', { name: 'Routes, best first' });
const rows = (page: Page) => list(page).getByRole('listitem');
/** In order, and nothing under way. */
const settled = async (page: Page): Promise<string[]> => {
  await list(page).waitFor(SOON);
  const busy = page.getByText(/^Working (the routes|them) out/);
  await expect.poll(() => busy.count(), SOON).toBe(0);
  return list(page).locator('.ro-name').allInnerTexts();
};
const numbersOf = (page: Page, row: number) => rows(page).nth(row).locator('dd').allInnerTexts();

test('RT2, RT4: routes come one by one, are put in order, and follow the weights', async () => {
  const page = await at.open();
  // What the list held, change by change, from before the first route.
  await page.addInitScript(() => {
    const seen: number[] = [];
    Object.assign(window, { seen });
    new MutationObserver(() => {
      const first = document.querySelector('ol[aria-label="Routes so far"]');
      const now = first?.children.length ?? 0;
      if (now > 0 && seen.at(-1) !== now) seen.push(now);
    }).observe(document, { childList: true, subtree: true });
  });
  await page.reload();
  await toRoutes(page);
  const first = await settled(page);
  const seen = await page.evaluate(() => (window as unknown as { seen: number[] }).seen);
  expect(seen.length).toBeGreaterThan(1);
  expect(seen).toEqual([...seen].sort((a, b) => a - b));
  expect(first.length).toBeGreaterThanOrEqual(seen.at(-1)!);
  expect(first.length).toBeGreaterThan(10);
  expect(await page.locator('.ro-why').textContent()).toMatch(/^This comes first, .*number 2/i);
  for (const number of await numbersOf(page, 0)) expect(number).toMatch(/\d/);
  expect(await page.locator('.ro-bar').count()).toBeGreaterThan(2 * first.length);
  expect(await page.getByText(/^No better than number \d+ in anything$/).count()).toBeGreaterThan(
    0,
  );

  // Only time counts: what takes the fewest hours of those that make something is first.
  await page
    .getByRole('radiogroup', { name: 'That it fits' })
    .getByRole('radio', { name: 'Not at all' })
    .click({ force: true });
  await page
    .getByRole('radiogroup', { name: 'That the yarn lasts' })
    .getByRole('radio', { name: 'Not at all' })
    .click({ force: true });
  await expect.poll(async () => (await settled(page))[0], SOON).not.toBe(first[0]);
  const hurried = await settled(page);
  expect(hurried.length).toBe(first.length);
  await page.reload();
  expect(await settled(page)).toEqual(hurried);
  await page
    .getByRole('radiogroup', { name: 'That it is soon done' })
    .getByRole('radio', { name: 'Not at all' })
    .click({ force: true });
  await page.getByRole('heading', { name: 'No routes yet' }).waitFor(SOON);
  await page.getByRole('button', { name: 'Undo' }).first().click();
  expect(await settled(page)).toEqual(hurried);
  await page.context().close();
});

test('RT5: a route opens to its drawing, becomes the plan, and undo takes that back; keyboard alone', async () => {
  const page = await at.open();
  await toRoutes(page);
  await settled(page);
  const flat = list(page).getByRole('button', { name: /dry it flat, without pins/ });
  await flat.focus();
  await page.keyboard.press('Enter');
  const sheet = page.getByRole('dialog', { name: /dry it flat, without pins/ });
  await sheet.waitFor();
  expect(await sheet.getByRole('heading', { name: /^As it would be, / }).count()).toBe(1);
  const chest = sheet.getByRole('button', { name: /^chest/i }).first();
  await chest.waitFor();
  expect(await chest.textContent()).toMatch(/\d.* cm/);
  expect(await sheet.getByRole('img', { name: /nine times in ten/ }).count()).toBeGreaterThan(2);
  expect(await sheet.getByText('Knitting', { exact: true }).count()).toBe(1);
  expect(await sheet.getByText('measured by you').count()).toBeGreaterThan(0);
  await isSound(page);
  await sheet.getByRole('button', { name: 'Make it the plan' }).focus();
  await page.keyboard.press('Enter');
  await sheet.waitFor({ state: 'detached' });
  await settled(page);
  await flat.getByText('the plan', { exact: true }).waitFor(SOON);
  await page.locator('.df-toast').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => flat.getByText('the plan', { exact: true }).count(), SOON).toBe(0);
  // A route that the record has no place for leads to where it is worked out.
  await list(page)
    .getByRole('button', { name: /^1 Rip the b(ack|ody)/ })
    .click();
  await page.getByRole('link', { name: 'On with it under Counts' }).click();
  await page.getByRole('heading', { level: 1, name: /: Counts$/ }).waitFor();
  await page.context().close();
});

test('RT3, RT6: every size on every needle, in centimetres and inches; what to measure first; well made at 390 and 320', async () => {
  const page = await at.open();
  await toRoutes(page);
  await settled(page);
  const table = page.getByRole('table', { name: 'Chance that all of it fits' });
  await table.waitFor(SOON);
  expect(await table.getByRole('columnheader').allInnerTexts()).toEqual([
    '3.5 mm',
    '3.75 mm',
    '4 mm',
  ]);
  expect(await table.getByRole('rowheader').count()).toBeGreaterThanOrEqual(8);
  const size3 = page.locator('.ro-sizes li').filter({ hasText: /^Size 3/ });
  const onOwn = await size3.textContent();
  expect(onOwn).toMatch(/\d–\d.* cm/);
  await page.getByRole('radio', { name: '4 mm' }).click({ force: true });
  await expect.poll(() => size3.textContent()).not.toBe(onOwn);
  await page.getByRole('combobox', { name: 'Measured at' }).selectOption({ label: 'Waist' });
  await page.getByRole('radio', { name: 'in', exact: true }).click({ force: true });
  await expect.poll(() => size3.textContent()).toMatch(/\d.* in/);
  expect(await page.locator('.ro-sizes .df-line-wanted').count()).toBeGreaterThan(7);

  await page.getByRole('heading', { name: 'Measure before you decide' }).waitFor();
  await page
    .getByText(/clears up .* of the doubt/)
    .first()
    .waitFor();
  await page.getByRole('button', { name: /^Not open now: \d+$/ }).click();
  await isSound(page);
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await fitsSideways(page)).toBe(true);
  await page.setViewportSize(PHONE);
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  expect(await fitsSideways(page)).toBe(true);
  await page.reload();
  await settled(page);
  await list(page).getByRole('button', { name: /^1 / }).click();
  await page.getByRole('dialog').getByText('Yarn still needed').waitFor();
  expect(await page.getByRole('dialog').textContent()).toMatch(/\d+ yd/);
  await page.context().close();
});
