import { readFile } from 'node:fs/promises';
import ical from 'ical.js';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { benchHere, fitsSideways, isSound, openExample, PHONE } from './harness.ts';
import { untilKept } from './storage.ts';

const at = benchHere();

/** Ten thousand draws, step by step, beside other work on two cores. */
const SOON = { timeout: 20_000 };

const toPlace = async (page: Page, place: 'Pace' | 'Yarn'): Promise<void> => {
  await page.clock.setFixedTime(new Date('2031-01-12T10:00:00Z'));
  await openExample(page, 'Ledger Day waistcoat');
  await page.getByRole('link', { name: place, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: new RegExp(`: ${place}$`) }).waitFor();
};
const field = (page: Page, name: string | RegExp) => page.getByRole('textbox', { name });
const fill = async (page: Page, name: string | RegExp, text: string): Promise<void> => {
  await field(page, name).fill(text);
  await page.keyboard.press('Tab');
};
const settled = async (page: Page, big: '.pc-when' | '.ya-lasts'): Promise<string> => {
  await page.locator(`${big}:not([data-pending])`).waitFor(SOON);
  return (await page.locator(big).textContent()) ?? '';
};
/** What is said once it is another than before. */
const changed = async (
  page: Page,
  big: '.pc-when' | '.ya-lasts',
  before: string,
): Promise<string> => {
  await expect.poll(() => settled(page, big), SOON).not.toBe(before);
  return settled(page, big);
};
const dayOf = (printed: string): number => new Date(printed).getTime();

test('PC2, PC4: a day, a curve and what the date asks for; hours and days off move it; kept over a reload; a date gone by is told', async () => {
  const page = await at.open();
  await toPlace(page, 'Pace');
  const first = await settled(page, '.pc-when');
  expect(dayOf(first)).toBeGreaterThan(dayOf('2031-01-12'));
  expect(await page.getByRole('img', { name: /^Chance of being done, day by day/ }).count()).toBe(
    1,
  );
  expect(await page.locator('.pc-wanted text').textContent()).toMatch(/^21 Feb: .*\d.*%$/);
  await page.getByText(/^Done by 21 February 2031: /).waitFor();
  await page.getByText(/^With the hours that you have, begin by /).waitFor();
  await page.getByText(/^From the first day on, knit .* a week/).waitFor();
  const steps = page.getByRole('list', { name: 'When each step ends' });
  expect(await steps.getByRole('listitem').last().textContent()).toContain('Done');
  await page.getByText(/^Most go to knitting /).waitFor();

  await fill(page, 'Saturday', '30 min');
  const later = await changed(page, '.pc-when', first);
  expect(dayOf(later)).toBeGreaterThan(dayOf(first));
  await page
    .locator('[role=status]')
    .filter({ hasText: `Done: ${later}` })
    .waitFor(SOON);
  await fill(page, 'Saturday', '5 h');
  await page.getByText(/^Up to 5 hours of knitting in one day/).waitFor();
  await changed(page, '.pc-when', later);
  await fill(page, 'Saturday', 'a while');
  await page.getByText('This is not a length of time').waitFor();
  await fill(page, 'Saturday', '1:30');
  await expect.poll(() => field(page, 'Saturday').inputValue()).toBe('1 h 30 min');
  await page.getByLabel('A day without knitting').fill('2031-01-18');
  await page.getByRole('button', { name: 'Leave it out' }).click();
  const away = page.getByRole('list', { name: 'Days without knitting' }).getByRole('listitem');
  await expect.poll(() => away.count()).toBe(3);
  await isSound(page);

  await untilKept(page);
  const last = await settled(page, '.pc-when');
  await page.reload();
  expect(await settled(page, '.pc-when')).toBe(last);
  expect(await away.count()).toBe(3);
  await page.getByLabel('Ready by').fill('2031-01-02');
  await page.getByText('2 January 2031, when it was wanted, has gone by.').waitFor(SOON);
  expect(await page.locator('.pc-wanted').count()).toBe(0);
  await page.context().close();
});

test('PC1, PC5, PC6: rows are timed by keyboard, and taken away again; how much is knit; British and American words; the calendar file', async () => {
  const page = await at.open({ acceptDownloads: true });
  await toPlace(page, 'Pace');
  const first = await settled(page, '.pc-when');
  const log = page.getByRole('list', { name: 'Timed so far' }).getByRole('listitem');
  const before = await log.count();
  await field(page, 'Stitches knit').focus();
  await page.keyboard.type('300');
  await page.keyboard.press('Tab');
  await page.keyboard.type('1:00');
  await page.keyboard.press('Enter');
  await expect.poll(() => log.count()).toBe(before + 1);
  await page.getByText('5 a minute', { exact: true }).waitFor();
  expect(await field(page, 'Stitches knit').inputValue()).toBe('');
  const slower = await changed(page, '.pc-when', first);
  expect(dayOf(slower)).toBeGreaterThan(dayOf(first));
  await page.getByRole('button', { name: 'Remove 300 stitches in 1 h' }).click();
  await expect.poll(() => log.count()).toBe(before);
  expect(await changed(page, '.pc-when', slower)).toBe(first);
  expect(await page.getByRole('radio', { name: 'Crossed, turned or in colours' }).count()).toBe(1);

  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Calendar file' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('ledger-day-pace.ics');
  const calendar = await readFile(await file.path(), 'utf8');
  expect(calendar.replaceAll('\r\n ', '')).not.toMatch(/emlen/i);
  const events = new ical.Component(ical.parse(calendar))
    .getAllSubcomponents('vevent')
    .map((each) => new ical.Event(each));
  const done = events.find(({ summary }) => summary.endsWith(' is done'));
  expect(done?.startDate.toJSDate().toDateString()).toBe(new Date(first).toDateString());
  const steps = page.getByRole('list', { name: 'When each step ends' }).getByRole('listitem');
  expect(events.length).toBeGreaterThan(await steps.count());

  await fill(page, /^Front/, '50 %');
  expect(dayOf(await changed(page, '.pc-when', first))).toBeLessThan(dayOf(first));
  await fill(page, /^Front/, '130');
  await page.getByText('This is not a share in percent').waitFor();
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await fitsSideways(page)).toBe(true);
  await page.setViewportSize(PHONE);
  await page.context().close();
  const american = await at.open({ locale: 'en-US' });
  await toPlace(american, 'Pace');
  await american.getByRole('radio', { name: 'Crossed, turned or in colors' }).waitFor();
  await american.context().close();
});

test('YL1, YL2: what is left by the scale says whether it lasts, what will be over, and what to buy by when', async () => {
  const page = await at.open();
  await toPlace(page, 'Yarn');
  const plenty = await settled(page, '.ya-lasts');
  expect(plenty).toBe('It lasts: more than 99 in 100');
  await page.getByText('No more has to be bought.').waitFor();
  await fill(page, /^Left of it now/, '110');
  const scarce = await changed(page, '.ya-lasts', plenty);
  await page.getByText(/^Buy \d+ more skeins?, and it runs out with/).waitFor(SOON);
  expect(await page.locator('.ya-over').textContent()).toMatch(/ m .* g /);
  await page.locator('[role=status]').filter({ hasText: scarce }).waitFor(SOON);
  await isSound(page);
  await page.getByRole('radio', { name: 'in', exact: true }).click({ force: true });
  await expect.poll(() => page.locator('.ya-over').textContent()).toMatch(/ yd .* oz /);
  await page.reload();
  expect(await settled(page, '.ya-lasts')).toBe(scarce);
  expect(await field(page, /^Left of it now/).inputValue()).toBe('110');
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await fitsSideways(page)).toBe(true);
  await page.context().close();
});
