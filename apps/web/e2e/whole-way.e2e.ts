import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { faultsOf, isDoubt, pinsIn, pinsMissing, pinTotal, readRecord } from '@dryflat/record';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { collectErrors, DIST, isSound, killBrowser, openExample, openProfile } from './harness.ts';
import { serveFolder } from './serve.ts';
import { untilKept } from './storage.ts';

/** A plan takes seconds, and many times that beside other work on two cores; a hang still ends. */
const PLANNED = { timeout: 240_000 };
const SOON = { timeout: 20_000 };
const LONG = 400_000;

const TEN = new Date('2031-03-05T10:00:00Z');
const hoursOn = (hours: number): Date => new Date(TEN.getTime() + hours * 3_600_000);

const copyKept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    if (registration.active?.state === 'activated') return;
    await new Promise((done) =>
      registration.active?.addEventListener('statechange', () => done(null)),
    );
  });

const place = (page: Page, name: string) =>
  page
    .getByRole('navigation', { name: 'Places of this garment' })
    .getByRole('link', { name, exact: true });

const weigh = async (page: Page, text: string): Promise<void> => {
  await page.getByRole('textbox', { name: 'What the scale shows now' }).fill(text);
  await page.getByRole('button', { name: 'Write it down' }).click();
};

const stepShown = async (page: Page): Promise<[number, number]> => {
  const [, step = '0', of = '0'] =
    /step (\d+) of (\d+)/.exec((await page.locator('.df-step-of').textContent()) ?? '') ?? [];
  return [Number(step), Number(of)];
};

/** Pins go in until the step `last` is shown, or all are in. */
const pinUntil = async (page: Page, last: number): Promise<void> => {
  for (;;) {
    const [step, of] = await stepShown(page);
    if (step >= last) return;
    // Presses that follow sooner than a hand can are taken for one, by the page's clock: it is put on.
    await page.clock.fastForward(200);
    await page.getByRole('button', { name: /^Next/ }).click();
    if (step === of) return;
    await expect.poll(async () => (await stepShown(page))[0]).toBe(step + 1);
  }
};

const savedRecord = async (page: Page) => {
  await page.getByRole('button', { name: 'More for this garment' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const read = readRecord(await readFile(await (await coming).path(), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value.record;
};

test(
  'WW1: from a plan on the mat to a dried, measured record: at phone size, without a network, with a reload and a killed browser on the way, and nothing lost',
  async () => {
    const profile = await mkdtemp(join(tmpdir(), 'dryflat-way-'));
    const served = await serveFolder(DIST);
    const errors: string[] = [];
    const watched = async (context: BrowserContext, address: string): Promise<Page> => {
      const page = context.pages()[0] ?? (await context.newPage());
      await page.clock.setFixedTime(TEN);
      await page.goto(address);
      collectErrors(page, errors);
      return page;
    };
    let context = await openProfile(profile);
    let page = await watched(context, served.address);
    await copyKept(page);
    // From here on there is no server any more.
    await context.setOffline(true);
    await served.stop();
    await page.reload();

    await openExample(page, 'Sluice shawl');
    await place(page, 'Mat').click();
    const start = page.getByRole('button', { name: /^Start pinning/ });
    await start.waitFor(PLANNED);
    await expect.poll(() => start.isEnabled(), PLANNED).toBe(true);
    await start.click();
    await page.getByRole('button', { name: /^Next/ }).waitFor();
    const [first, steps] = await stepShown(page);
    expect(first).toBe(1);
    await pinUntil(page, Math.ceil(steps / 2));
    const half = await stepShown(page);
    await page.reload();
    await page.getByRole('button', { name: /^Next/ }).waitFor(SOON);
    expect(await stepShown(page)).toEqual(half);
    await pinUntil(page, steps + 1);
    await page.getByRole('link', { name: 'Dry', exact: true }).click();

    await page.getByRole('button', { name: 'It lies and dries from now' }).click();
    await page.getByText('Dry on the scale').waitFor(SOON);
    expect(await page.getByRole('radio', { name: /^Pinned/ }).isChecked()).toBe(true);
    expect(await page.getByText('keep children and pets away').isVisible()).toBe(true);
    await page.getByRole('textbox', { name: 'Mass now, wet' }).fill('190');
    await page.keyboard.press('Tab');
    await page.clock.setFixedTime(hoursOn(2));
    await weigh(page, '160');
    await page.getByText('At the weighing of').waitFor(SOON);
    await isSound(page);
    await page.getByRole('textbox', { name: 'What the scale shows now' }).pressSequentially('12');
    await untilKept(page);
    const address = page.url();
    killBrowser(profile);
    await context.close().catch(() => {});

    context = await openProfile(profile);
    await context.setOffline(true);
    page = await watched(context, address);
    await page.clock.setFixedTime(hoursOn(9));
    await page.getByText('Dry on the scale').waitFor(SOON);
    const scale = page.getByRole('textbox', { name: 'What the scale shows now' });
    expect(await scale.inputValue()).toBe('12');
    const weighed = page.getByRole('list', { name: 'Weighings' });
    expect(await weighed.getByRole('listitem').allTextContents()).toHaveLength(1);
    await weigh(page, '96');
    await expect.poll(() => weighed.getByRole('listitem').count()).toBe(2);
    await page.getByRole('button', { name: 'Dry', exact: true }).click();
    await page.getByRole('button', { name: 'It is dry', exact: true }).click();

    await page.getByRole('heading', { name: /: pins out$/ }).waitFor();
    expect(await page.getByRole('button', { name: 'It is finished' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Finish with pins missing' }).waitFor();
    const all = page.getByRole('button', { name: /^All \d+ out|^It is out/ });
    for (let k = await all.count(); k > 0; k -= 1) await all.nth(k - 1).click();
    await page.getByText(/^All \d+ that went in are out/).waitFor();
    await isSound(page);
    await page.getByRole('button', { name: 'It is finished' }).click();
    await page.getByRole('button', { name: 'Measure it now' }).click();

    await page.getByRole('heading', { level: 1, name: /: After$/ }).waitFor();
    const edge = page.getByRole('group', { name: 'Top edge' }).first();
    await edge.getByRole('textbox', { name: /^Dried/ }).fill('180');
    await page.keyboard.press('Tab');
    await page.getByText('Pinned, foretold, dried').waitFor();
    await isSound(page);

    const record = await savedRecord(page);
    expect(faultsOf(record).filter((each) => !isDoubt(each))).toEqual([]);
    const [work] = record.onMat ?? [];
    expect(work?.steps.filter(({ done }) => done === 'in')).toHaveLength(steps);
    expect(pinTotal(pinsIn(work!))).toBeGreaterThanOrEqual(steps);
    expect(pinTotal(pinsMissing(record))).toBe(0);
    expect(record.dryings?.[0]).toMatchObject({
      begun: TEN.toISOString(),
      pinned: true,
      wet: 190,
      weighings: [{ massG: 160 }, { massG: 96 }],
      touches: [{ feels: 'dry' }],
      dried: hoursOn(9).toISOString(),
    });
    expect(record.finished).toEqual({ on: '2031-03-05', remark: '' });
    expect(record.outcomes.at(-1)?.measured).toMatchObject([
      { measurement: 'span', state: 'dried', mm: 1800 },
    ]);
    await context.close();
    await rm(profile, { recursive: true, force: true });
    expect(errors).toEqual([]);
  },
  LONG,
);
