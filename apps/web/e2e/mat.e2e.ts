import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atRest } from '../../../scripts/lib/at-rest.mjs';
import {
  axeFindings,
  benchHere,
  DESK,
  fitsSideways,
  openExample,
  PHONE,
  smallTargets,
} from './harness.ts';

const at = benchHere();

/** A plan takes seconds, and many times that beside other work on two cores; a hang still ends. */
const PLANNED = { timeout: 240_000 };
const LAID = { timeout: 60_000 };
const LONG = 400_000;

const openMat = async (page: Page): Promise<void> => {
  await openExample(page, 'Ledger Day waistcoat');
  await page
    .getByRole('navigation', { name: 'Places of this garment' })
    .getByRole('link', { name: 'Mat' })
    .click();
};

const planned = async (page: Page): Promise<void> => {
  await page.getByRole('heading', { name: 'Pins in their order' }).waitFor(PLANNED);
  await page.getByText('Laying the fabric out…').waitFor({ state: 'detached', ...LAID });
};

/** The text as it is seen. */
const seen = async (locator: Locator): Promise<string> =>
  (await locator.allInnerTexts()).join('\n');

const outline = (page: Page) => page.locator('.df-mat-drawing .df-mat-pinned').getAttribute('d');
const measures = (page: Page) => seen(page.getByRole('region', { name: 'What it comes to' }));
const chosen = (page: Page) => page.locator('.df-mat-chosen');

const cornersOf = (path: string): number[] => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

/** How far the outline moved where it moved most, px. */
const movedBy = (before: string, after: string): number => {
  const [a, b] = [cornersOf(before), cornersOf(after)];
  expect(a).toHaveLength(b.length);
  return Math.max(...a.map((each, k) => Math.abs(each - b[k]!)));
};

test(
  'M7, M8, M9: the plan shows its pins in order; a dragged pin takes the fabric and the numbers along, by mouse and by keyboard',
  async () => {
    const page = await at.open({ viewport: DESK });
    await openMat(page);
    await page.getByRole('progressbar').waitFor();
    await planned(page);
    const pins = page.locator('.df-pin-list > li');
    const count = await pins.count();
    expect(count).toBeGreaterThan(5);
    expect(
      await pins.evaluateAll((all) => all.map((each) => (each as HTMLLIElement).value)),
    ).toEqual(Array.from({ length: count }, (_, k) => k + 1));
    for (const text of await pins.allInnerTexts())
      expect(
        text.match(/\d(\.\d)? cm\s+from (pin \d+|tile crossing|(top|bottom) (left|right))/g),
      ).toHaveLength(2);
    expect(await page.locator('.df-pin-number').count()).toBeGreaterThan(count / 2);
    const [before, numbers] = [(await outline(page))!, await measures(page)];

    await chosen(page).scrollIntoViewIfNeeded();
    const box = (await chosen(page).boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 6, y - 6, { steps: 4 });
    await page.mouse.up();
    await expect.poll(async () => movedBy(before, (await outline(page))!), LAID).toBeGreaterThan(3);
    await expect.poll(() => measures(page), LAID).not.toBe(numbers);
    await page.getByText('You moved one pin.').waitFor();

    await page.getByRole('button', { name: 'Pins as planned' }).click();
    // Solved to a residual far below what shows: back to a tenth of a pixel, as the path is written.
    await expect
      .poll(async () => movedBy(before, (await outline(page))!), LAID)
      .toBeLessThanOrEqual(0.2);

    await chosen(page).focus();
    await page.keyboard.press('PageDown');
    await page
      .getByRole('region', { name: 'The chosen pin' })
      .getByRole('heading', { name: /2 of/ })
      .waitFor();
    const place = (await chosen(page).boundingBox())!;
    await page.keyboard.press('Shift+ArrowLeft');
    await page.keyboard.press('ArrowDown');
    // Ten millimetres to one: the drawing's scale is the same both ways. A tenth for rounding to pixels.
    await expect
      .poll(async () => {
        const then = (await chosen(page).boundingBox())!;
        return Math.abs((place.x - then.x) / (then.y - place.y) / 10 - 1);
      }, LAID)
      .toBeLessThan(0.1);
    await expect.poll(async () => movedBy(before, (await outline(page))!), LAID).toBeGreaterThan(3);
    await page.context().close();
  },
  LONG,
);

test(
  'M10, M11: cancel ends the plan at once, and it can be worked out after all; units and words switch everywhere',
  async () => {
    const page = await at.open({ viewport: PHONE });
    await openMat(page);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('The plan was cancelled.').waitFor();
    expect(await page.getByRole('progressbar').count()).toBe(0);
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByRole('progressbar').waitFor();
    await planned(page);
    const main = page.locator('main');
    expect(await seen(main)).toMatch(/\d cm/);
    await page.getByRole('radio', { name: 'in', exact: true }).click({ force: true });
    await expect.poll(() => seen(main)).not.toMatch(/\d\s?cm\b/);
    expect(await seen(main)).toMatch(/cast-off edge/);
    expect(await axeFindings(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await fitsSideways(page)).toBe(true);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
      document.documentElement.dataset.theme = 'dark';
    });
    await atRest(page);
    expect(await fitsSideways(page)).toBe(true);
    expect(await axeFindings(page)).toEqual([]);
    await page.context().close();
  },
  LONG,
);

test(
  'M8, M11, M13: a finger drags a pin and does not scroll the page; the plan goes around it, after a reload too; American words on an American device',
  async () => {
    const page = await at.open({ viewport: PHONE, hasTouch: true, locale: 'en-US' });
    await openMat(page);
    await planned(page);
    const main = page.locator('main');
    expect(await seen(main)).toMatch(/bound-off edge/);
    expect(await seen(main)).not.toMatch(/\d\s?cm\b|cast-off edge/);
    await chosen(page).scrollIntoViewIfNeeded();
    const before = (await outline(page))!;
    const box = (await chosen(page).boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const scrolled = () => page.evaluate(() => scrollY);
    const from = await scrolled();
    const finger = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', dx: number, dy: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx, y: y + dy }],
      });
    await touch('touchStart', 0, 0);
    for (const step of [2, 4, 6, 8, 10]) await touch('touchMove', step, -step);
    await touch('touchEnd', 0, 0);
    await expect.poll(async () => movedBy(before, (await outline(page))!), LAID).toBeGreaterThan(3);
    expect(await scrolled()).toBe(from);
    await page.getByText('You moved one pin.').waitFor();
    await page.getByRole('button', { name: 'Plan around it' }).click();
    await page.getByRole('progressbar').waitFor();
    await page.getByRole('progressbar').waitFor({ state: 'detached', ...PLANNED });
    await planned(page);
    await page.getByText('The plan goes around one pin that you moved.').waitFor();
    const goesAround = async () => ({
      line: await outline(page),
      tapes: await seen(page.locator('.df-pin-list')),
    });
    const around = await goesAround();
    await page.reload();
    await planned(page);
    await page.getByText('The plan goes around one pin that you moved.').waitFor();
    expect(await goesAround()).toEqual(around);
    await page.getByRole('button', { name: 'Pins as planned' }).click();
    await page
      .getByText('The plan goes around one pin that you moved.')
      .waitFor({ state: 'detached' });
    await page.getByRole('progressbar').waitFor({ state: 'detached', ...PLANNED });
    await planned(page);
    await expect
      .poll(async () => movedBy(before, (await outline(page))!), LAID)
      .toBeLessThanOrEqual(0.2);
    await page.context().close();
  },
  LONG,
);

test(
  'M12: a moved pin is where it was left after a reload; undo puts it back, and so does letting go of it',
  async () => {
    const page = await at.open({ viewport: DESK });
    await openMat(page);
    await planned(page);
    await chosen(page).scrollIntoViewIfNeeded();
    const before = (await outline(page))!;
    const drag = async (): Promise<void> => {
      const box = (await chosen(page).boundingBox())!;
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 9, y - 9, { steps: 4 });
      await page.mouse.up();
      await page.getByText('You moved one pin.').waitFor();
    };
    const moves = async (): Promise<number> => movedBy(before, (await outline(page))!);
    // As planned to a tenth of a pixel and as much for rounding: as the path is written.
    const asBefore = () => expect.poll(moves, LAID).toBeLessThanOrEqual(0.2);
    await drag();
    await expect.poll(moves, LAID).toBeGreaterThan(3);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await asBefore();
    await page.getByText('You moved one pin.').waitFor({ state: 'detached' });

    await drag();
    await expect.poll(moves, LAID).toBeGreaterThan(3);
    const pins = page.locator('.df-pin-list');
    await pins.getByText('(moved by you)').waitFor();
    // The fabric comes to rest after the pin; an outline that stays the same for half a second has.
    let left = '';
    await expect
      .poll(
        async () => {
          const last = left;
          left = (await outline(page))!;
          return left === last;
        },
        { ...LAID, interval: 500 },
      )
      .toBe(true);
    const tapes = await seen(pins);
    const numbers = await measures(page);
    await page.reload();
    await planned(page);
    await page.getByText('You moved one pin.').waitFor();
    await expect
      .poll(async () => movedBy(left, (await outline(page))!), LAID)
      .toBeLessThanOrEqual(0.2);
    await expect.poll(() => seen(pins), LAID).toBe(tapes);
    await expect.poll(() => measures(page), LAID).toBe(numbers);

    await page.getByRole('button', { name: 'Pins as planned' }).click();
    await asBefore();
    await page.reload();
    await planned(page);
    await asBefore();
    expect(await page.getByText('You moved one pin.').count()).toBe(0);
    await page.context().close();
  },
  LONG,
);
