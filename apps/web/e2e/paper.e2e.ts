import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf } from '../../../packages/paper/src/testing/read-pdf.ts';
import { axeFindings, benchHere, fitsSideways, openExample, smallTargets } from './harness.ts';

const at = benchHere();

/** A plan of the mat is worked out beside other work on two cores. */
const SOON = { timeout: 40_000 };
/** A point of a PDF is 0.353 mm; sizes are kept to its thousandths. */
const TENTH = 1;

const go = async (page: Page, title: string, place: string): Promise<void> => {
  await openExample(page, title);
  await page.getByRole('link', { name: place, exact: true }).click();
};
const pages = (page: Page) => page.locator('.pa-pages[aria-busy="false"] .pa-picture');
const saved = async (page: Page, button: string): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download', SOON),
    page.getByRole('button', { name: button }).click(SOON),
  ]);
  return download;
};
const bytesOf = async (download: Download): Promise<Uint8Array> =>
  new Uint8Array(await readFile(await download.path()));
const textOf = async (download: Download): Promise<string> =>
  readFile(await download.path(), 'utf8');
const copyKept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    if (registration.active?.state === 'activated') return;
    await new Promise((done) =>
      registration.active?.addEventListener('statechange', () => done(null)),
    );
  });

test('PQ1: a measuring sheet is looked at, saved as PDF without a network, in the size of its paper', async () => {
  const page = await at.open();
  await copyKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await go(page, 'Ledger Day waistcoat', 'Paper');
  await page.getByText('No number on it').click();
  await pages(page).first().waitFor(SOON);
  expect(await pages(page).count()).toBe(1);
  const a4 = await saved(page, 'Save as PDF');
  expect(a4.suggestedFilename()).toBe('ledger-day-blank.pdf');
  const [sheet] = await readPdf(await bytesOf(a4));
  // ISO 216.
  expect(sheet!.widthMm).toBeCloseTo(210, TENTH);
  expect(sheet!.heightMm).toBeCloseTo(297, TENTH);
  expect(sheet!.text).toMatch(/Measuring sheet: Ledger Day/);
  await page.getByText('Letter', { exact: true }).click();
  await page.getByText('in', { exact: true }).click();
  const letter = await saved(page, 'Save as PDF');
  const [other] = await readPdf(await bytesOf(letter));
  // ANSI/ASME Y14.1 A: 8½ × 11 in.
  expect(other!.widthMm).toBeCloseTo(215.9, TENTH);
  expect(other!.heightMm).toBeCloseTo(279.4, TENTH);
  expect(other!.text).toMatch(/over 4 in/);
  await page.reload();
  await pages(page).first().waitFor(SOON);
  const svg = await textOf(await saved(page, 'Page 1 as SVG'));
  expect(svg).toMatch(/^<svg [^>]*width="215.9mm" height="279.4mm"/);
});

test('PQ2: pins in order, then one piece full size with its check lines; printed alone on its paper', async () => {
  const page = await at.open();
  await go(page, 'Ledger Day waistcoat', 'Paper');
  await pages(page).first().waitFor(SOON);
  const plan = await readPdf(await bytesOf(await saved(page, 'Save as PDF')));
  const text = plan.map((each) => each.text).join('\n');
  expect(text).toMatch(/Pins, in order: front/);
  expect(text).toMatch(/Pins, in order: back/);
  await page.getByRole('radio', { name: /^Full-size outline/ }).focus();
  await page.keyboard.press('Space');
  await page.getByLabel('Which piece').selectOption('back');
  await page.getByText(/Print one sheet first, and check both lines/).waitFor(SOON);
  await pages(page).first().waitFor(SOON);
  expect(await page.getByText(/full size: front/i).count()).toBe(0);
  const tiles = await pages(page).count();
  expect(tiles).toBeGreaterThan(2);
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('.pa-print').waitFor({ state: 'attached' });
  // A PDF that the browser prints is named after this.
  expect(await page.title()).toBe('ledger-day-full-size');
  const printed = await readPdf(
    new Uint8Array(await page.pdf({ preferCSSPageSize: true, printBackground: true })),
  );
  expect(printed).toHaveLength(tiles);
  // Chromium lays pages out in whole pixels of 0.26 mm.
  for (const { widthMm, heightMm } of printed) {
    expect(Math.abs(widthMm - 210)).toBeLessThan(0.4);
    expect(Math.abs(heightMm - 297)).toBeLessThan(0.4);
  }
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(() => page.title()).toMatch(/^Paper: Ledger Day waistcoat for Emlen/);
});

const report = async (page: Page): Promise<string> => {
  await pages(page).first().waitFor(SOON);
  return textOf(await saved(page, 'Save as Markdown'));
};

test('PQ3: a report leaves out body and name until they are ticked; what is told stays over a reload', async () => {
  const page = await at.open();
  await go(page, 'Ledger Day waistcoat', 'Report');
  await page.getByRole('textbox', { name: 'Changes made' }).fill('Two rows fewer for Emlen.');
  await page.getByRole('textbox', { name: 'Notes on the fit' }).fill('Close at the waist.');
  await page.getByRole('textbox', { name: /^Hours/ }).fill('31 1/2');
  await page.keyboard.press('Tab');
  await expect.poll(() => report(page), SOON).toMatch(/31\.5 hours/);
  const without = await report(page);
  expect(without).toMatch(/Close at the waist/);
  expect(without).toMatch(/Two rows fewer/);
  expect(without).not.toMatch(/Emlen/);
  const html = await saved(page, 'Save as HTML');
  expect(html.suggestedFilename()).toBe('ledger-day-report.html');
  expect(await textOf(html)).not.toMatch(/Emlen/);
  const pdf = await bytesOf(await saved(page, 'Save as PDF'));
  const [sheet] = await readPdf(pdf);
  expect(sheet!.text).not.toMatch(/Emlen/);
  // What the file says of itself stands in it as plain letters.
  expect(Buffer.from(pdf).includes('(Ledger Day)')).toBe(true);
  expect(Buffer.from(pdf).includes('Emlen')).toBe(false);
  await page.getByText('call it “Ledger Day”').waitFor();
  await page.reload();
  await pages(page).first().waitFor(SOON);
  expect(await page.getByRole('textbox', { name: 'Changes made' }).inputValue()).toBe(
    'Two rows fewer for Emlen.',
  );
  const tick = page.getByRole('checkbox', { name: /Body measurements/ });
  expect(await tick.isChecked()).toBe(false);
  await tick.press('Space');
  await expect.poll(() => report(page), SOON).toMatch(/Emlen/);
  const named = await saved(page, 'Save as HTML');
  expect(named.suggestedFilename()).toBe('ledger-day-waistcoat-for-emlen-report.html');
  await page.getByText('in', { exact: true }).click();
  await expect.poll(() => report(page), SOON).toMatch(/over 4 in/);
});

test('S5: saving a report while a field of it is half typed says so, and saves it', async () => {
  const page = await at.open();
  await go(page, 'Ferry socks', 'Report');
  await pages(page).first().waitFor(SOON);
  await page.getByRole('textbox', { name: /^Hours/ }).fill('about 20');
  await page.keyboard.press('Tab');
  const markdown = await textOf(await saved(page, 'Save as Markdown'));
  expect(markdown).not.toMatch(/about 20/);
  const told = page.locator('.df-toast');
  await told.getByText('One entry is half typed, and not in it: “about 20”.').waitFor();
  await told.getByRole('button', { name: 'Dismiss' }).click();
  await page.getByRole('textbox', { name: /^Hours/ }).fill('20');
  await page.keyboard.press('Tab');
  await expect.poll(() => report(page), SOON).toMatch(/20 hours/);
  expect(await told.count()).toBe(0);
});

test.each(['light', 'dark'] as const)(
  'PQ4: axe finds nothing, targets are 44 px, nothing sticks out, at 320 px too (%s)',
  async (colorScheme) => {
    const page = await at.open({ colorScheme });
    await go(page, 'Ledger Day waistcoat', 'Report');
    await pages(page).first().waitFor(SOON);
    for (const place of ['Report', 'Paper']) {
      await page.getByRole('link', { name: place, exact: true }).click();
      if (place === 'Paper') await page.getByText('No number on it').click();
      await pages(page).first().waitFor(SOON);
      await page.setViewportSize({ width: 390, height: 844 });
      expect(await axeFindings(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      expect(await fitsSideways(page)).toBe(true);
      await page.setViewportSize({ width: 320, height: 640 });
      expect(await fitsSideways(page)).toBe(true);
    }
  },
);
