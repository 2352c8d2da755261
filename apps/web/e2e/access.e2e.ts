import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import {
  axeFindings,
  beginGarment,
  benchHere,
  DESK,
  fitsSideways,
  openExample,
  PHONE,
  smallTargets,
} from './harness.ts';

const at = benchHere();

const wellMade = async (page: Page): Promise<void> => {
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  expect(await fitsSideways(page)).toBe(true);
};

const shell = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Open a copy' }).first().waitFor();
  await wellMade(page);
  await page.getByRole('button', { name: 'Begin a garment' }).click();
  await page.getByRole('dialog').waitFor();
  await wellMade(page);
  await page.keyboard.press('Escape');
  await openExample(page, 'Ledger Day waistcoat');
  await wellMade(page);
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').waitFor();
  await wellMade(page);
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('heading', { name: 'On your shelf' }).waitFor();
  await wellMade(page);
  await page.getByRole('link', { name: 'Settings' }).click();
  await page.getByRole('heading', { name: 'Settings' }).waitFor();
  await wellMade(page);
};

describe.each([
  ['phone', PHONE],
  ['desk', DESK],
] as const)('B19 on a %s', (_, viewport) => {
  test.each(['light', 'dark'] as const)(
    'B19: axe finds nothing, targets are 44 px, nothing sticks out (%s)',
    async (colorScheme) => shell(await at.open({ viewport, colorScheme })),
  );
});

test('B20: text at 200 % wraps and covers nothing', async () => {
  const page = await at.open();
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  await page.getByRole('button', { name: 'Open a copy' }).first().waitFor();
  expect(await fitsSideways(page)).toBe(true);
  await openExample(page, 'Ledger Day waistcoat');
  await page.getByRole('heading', { level: 2 }).first().waitFor();
  expect(await fitsSideways(page)).toBe(true);
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight / 2));
  const bars = await page.evaluate(() =>
    [...document.querySelectorAll('.df-head, .df-hem')].map((each) => {
      const { top, bottom } = each.getBoundingClientRect();
      return Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0));
    }),
  );
  // At most a third of the screen is taken by bars; the rest is for reading. Chosen, no source.
  expect(bars.reduce((sum, each) => sum + each, 0)).toBeLessThan(PHONE.height / 3);
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('a, button, h1, p')]
      .filter((each) => each.clientWidth > 1 && each.scrollWidth > each.clientWidth + 1)
      .map((each) => each.textContent),
  );
  expect(cut).toEqual([]);
});

test('B21: the keyboard gets past the bars, and a new place takes the focus', async () => {
  const page = await at.open();
  await beginGarment(page, 'Keys');
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Keys' }).waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
  await page.getByRole('link', { name: 'Pattern' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
  expect(await page.title()).toBe('Pattern: Keys · Dryflat');
});

test('B22: a forecast that changes is spoken', async () => {
  const page = await at.open();
  await openExample(page, 'Ledger Day waistcoat');
  const line = page.getByRole('navigation').getByRole('link', { name: /^Forecast:/ });
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/ cm/);
  await page.getByText('in', { exact: true }).click();
  await page.getByText(/^Forecast changed: /).waitFor({ state: 'attached' });
});

test('B23: landmarks: one main, one heading of the first level, named navigation', async () => {
  const page = await at.open();
  await beginGarment(page, 'Landmarks');
  expect(await page.getByRole('main').count()).toBe(1);
  expect(await page.getByRole('banner').count()).toBe(1);
  expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
  expect(await page.getByRole('navigation', { name: 'Places of this garment' }).count()).toBe(1);
});

const PLACES = [
  'Wearer',
  'Pattern',
  'Yarn',
  'Evidence',
  'Routes',
  'Counts',
  'Pieces',
  'Pace',
  'Mat',
  'Dry',
  'After',
  'Paper',
  'Report',
  /^Forecast:/,
];

test.each([
  ['phone', PHONE, 'light'],
  ['phone', PHONE, 'dark'],
  ['desk', DESK, 'light'],
  ['desk', DESK, 'dark'],
] as const)(
  'B27: every place of a garment is well made (%s, %o, %s)',
  async (_, viewport, light) => {
    const page = await at.open({ viewport, colorScheme: light });
    await openExample(page, 'Lantern Row');
    const found: Record<string, unknown> = {};
    for (const place of PLACES) {
      await page.getByRole('navigation').getByRole('link', { name: place }).click();
      await page.locator('main h2, main h3').first().waitFor();
      const faults = [
        ...(await axeFindings(page)),
        ...(await smallTargets(page)),
        ...((await fitsSideways(page)) ? [] : ['sticks out sideways']),
      ];
      if (faults.length > 0) found[String(place)] = faults;
    }
    expect(found).toEqual({});
  },
);
