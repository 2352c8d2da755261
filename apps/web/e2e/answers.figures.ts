import { wholePattern } from '@dryflat/engine/paste/testing';
import { chromium } from 'playwright-core';
import type { Figure } from '../../../scripts/lib/figures.mjs';
import { ROOT } from '../../../scripts/lib/root.mjs';
import { buildWeb, webDist } from '../../../scripts/lib/web-build.mjs';
import { beginGarment } from './garments.ts';
import { LAUNCH, PHONE } from './launch.ts';
import { serveFolder } from './serve.ts';

/** Characters of a whole pattern with all its instructions. */
const PATTERN = 24_000;

/** Ms, in the page, from a text in a box to the frame that shows what was read of it. */
const pasted = (box: HTMLElement | SVGElement, text: string): Promise<number> =>
  new Promise((shown) => {
    const began = performance.now();
    const isThere = (): boolean =>
      [...document.querySelectorAll('button')].some(({ textContent }) =>
        textContent?.trim().startsWith('Take over'),
      );
    const look = (): void => {
      if (isThere()) requestAnimationFrame(() => shown(performance.now() - began));
      else requestAnimationFrame(look);
    };
    // The value is set as a paste sets it, so that the page hears of it.
    Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')?.set?.call(box, text);
    box.dispatchEvent(new Event('input', { bubbles: true }));
    look();
  });

/** What a phone shows of a pasted pattern: how tall the page is, and how long it takes. */
export async function* figures(): AsyncGenerator<Figure> {
  if (!(await buildWeb(ROOT, { quiet: true }))) throw new Error('the app could not be built');
  const served = await serveFolder(webDist(ROOT));
  const browser = await chromium.launch(LAUNCH);
  try {
    const context = await browser.newContext({ viewport: PHONE, locale: 'en-US' });
    const page = await context.newPage();
    await page.goto(served.address);
    await beginGarment(page, 'Pasted');
    await page.getByRole('navigation').getByRole('link', { name: 'Pattern' }).click();
    const box = page.getByLabel('Size lines, or a table from a spreadsheet');
    await box.waitFor();
    const ms = await box.evaluate(pasted, wholePattern(PATTERN));
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    yield {
      name: 'height of the page after a pattern of 24,000 characters was pasted, 390 × 844',
      value: height,
      unit: 'px',
      // Six screens: eight measurements, each with its number, its sizes and its button.
      goal: { most: 6 * PHONE.height },
    };
    yield {
      name: 'from pasting it to what was read of it',
      value: ms,
      unit: 'ms',
      // A second is what a thought bears without being broken (common practice, no source).
      goal: { most: 200 },
    };
    yield {
      name: 'characters of it that the box kept',
      value: (await box.inputValue()).length,
      unit: '',
      goal: { exactly: PATTERN },
    };
  } finally {
    await browser.close();
    await served.stop();
  }
}
