import { expect, test } from 'vitest';
import { bench, PHONE } from './harness.ts';

/** The promise of the app, in milliseconds, at a processor slowed four times. */
const USABLE = 2000;

test('B28: the app can be used within 2 s at a processor slowed four times', async () => {
  const at = await bench();
  const times: number[] = [];
  // Other work on the machine can only add time, so one run within the promise shows it kept.
  for (let i = 0; i < 6 && !(Math.min(...times) < USABLE); i++) {
    const context = await at.browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await page.goto(at.address, { waitUntil: 'commit' });
    await page.getByRole('button', { name: 'Begin a garment' }).waitFor();
    // Usable is when a press has an answer, not when something is painted.
    await page.getByRole('button', { name: 'Begin a garment' }).click();
    await page.getByRole('dialog').waitFor();
    times.push(await page.evaluate(() => performance.now()));
    await context.close();
  }
  await at.close();
  console.log(`usable after ${times.map((ms) => `${Math.round(ms)} ms`).join(', ')}`);
  expect(Math.min(...times)).toBeLessThan(USABLE);
});
