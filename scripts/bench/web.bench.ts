import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { type Visit, visiting } from './browser.ts';

/** Compressed script that a first visit may fetch before the app can be used. */
const BUDGET_KB = 250;
const RUNS = 5;
const SLOWED = 4;

/** The app can be used once something can be pressed and the page has been painted with it. */
const usable = async (page: Page): Promise<void> => {
  await page.locator('main button:enabled, main a[href]').first().waitFor();
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
};

/** Time to usable of a first visit, with nothing in the cache and no service worker, in ms. */
const timeToUsable = async ({ browser, url }: Visit, slowed: number): Promise<number> => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const began = performance.now();
  await page.goto(`${url}/#/`, { waitUntil: 'commit' });
  await usable(page);
  const ms = performance.now() - began;
  await context.close();
  return ms;
};

/** Bytes of script, each file compressed by itself, that a first visit fetches until usable. */
const firstLoad = async ({ browser, url }: Visit): Promise<{ kB: number; ms: number }> => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const bodies: Promise<Buffer>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') bodies.push(response.body());
  });
  const began = performance.now();
  await page.goto(`${url}/#/`, { waitUntil: 'commit' });
  await usable(page);
  const ms = performance.now() - began;
  const scripts = await Promise.all(bodies);
  await context.close();
  const bytes = scripts.reduce((sum, script) => sum + gzipSync(script, { level: 9 }).length, 0);
  return { kB: bytes / 1000, ms };
};

const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

export const bench = () =>
  visiting(async (visit) => {
    const { kB, ms } = await firstLoad(visit);
    const slow: number[] = [];
    const plain: number[] = [];
    // In turn, so that a busy moment of the machine touches both.
    for (let run = 0; run < RUNS; run += 1) {
      plain.push(await timeToUsable(visit, 1));
      slow.push(await timeToUsable(visit, SLOWED));
    }
    return [
      {
        name: 'first-load-script',
        ms,
        ratio: kB / BUDGET_KB,
        against: `${BUDGET_KB} kB of script, compressed`,
        kB: Math.round(kB * 10) / 10,
      },
      {
        name: 'app-usable-4x',
        ms: median(slow),
        ratio: median(slow) / median(plain),
        against: 'the same page at full speed, median of five each in the same run',
      },
    ];
  });
