import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { atRest } from '../../../scripts/lib/at-rest.mjs';
import { LAUNCH, PHONE } from './launch.ts';
import { type Served, serveFolder } from './serve.ts';

export { beginGarment, openExample } from './garments.ts';
export { killBrowser, LAUNCH, openProfile, PHONE } from './launch.ts';

/** The build under test. */
export const DIST = process.env.DRYFLAT_DIST ?? fileURLToPath(new URL('../dist/', import.meta.url));
export const DESK = { width: 1280, height: 800 };

export interface Bench {
  readonly address: string;
  readonly browser: Browser;
  /** A page with storage of its own, open at `path`. Uncaught errors of the page fail `close`. */
  readonly open: (options?: OpenOptions) => Promise<Page>;
  /** Closes everything; throws if any page threw or logged an error. */
  readonly close: () => Promise<void>;
}

export interface OpenOptions extends BrowserContextOptions {
  readonly path?: string;
}

/** The built app on a free port, and a browser to look at it with. */
export const bench = async (): Promise<Bench> => {
  const served: Served = await serveFolder(DIST);
  const browser = await chromium.launch(LAUNCH);
  const errors: string[] = [];
  return {
    address: served.address,
    browser,
    open: async ({ path = '', ...options } = {}) => {
      const context = await browser.newContext({
        viewport: PHONE,
        locale: 'en-GB',
        reducedMotion: 'reduce',
        ...options,
      });
      const page = await context.newPage();
      collectErrors(page, errors);
      await page.goto(served.address + path);
      return page;
    },
    close: async () => {
      await browser.close();
      await served.stop();
      if (errors.length > 0) throw new Error(`the page reported:\n${errors.join('\n')}`);
    },
  };
};

/** A bench for all tests of a file: made before the first, closed after the last. */
export const benchHere = (): Omit<Bench, 'close'> => {
  let made: Bench | null = null;
  const here = (): Bench => {
    if (made === null) throw new Error('the bench is there from the first test on');
    return made;
  };
  beforeAll(async () => {
    made = await bench();
  });
  afterAll(() => made?.close());
  // What a test opened goes on working while others run, if it is left open.
  let before: readonly BrowserContext[] = [];
  beforeEach(() => {
    before = here().browser.contexts();
  });
  afterEach(async () => {
    const opened = here()
      .browser.contexts()
      .filter((each) => !before.includes(each));
    await Promise.all(opened.map((each) => each.close()));
  });
  return {
    get address() {
      return here().address;
    },
    get browser() {
      return here().browser;
    },
    open: (options) => here().open(options),
  };
};

/** Notes every uncaught error and every error on the console, but not a network that was cut. */
export const collectErrors = (page: Page, into: string[]): void => {
  page.on('pageerror', (error) => into.push(error.stack ?? error.message));
  page.on('console', (message) => {
    const text = message.text();
    if (message.type() === 'error' && !text.includes('ERR_INTERNET_DISCONNECTED')) into.push(text);
  });
};

let axe: string | null = null;

/**
 * What axe finds on the page as it stands, one line per finding; empty when it finds nothing. WCAG
 * 2.2 A and AA, and axe's best practices.
 */
export const axeFindings = async (page: Page): Promise<string[]> => {
  const size = page.viewportSize() ?? PHONE;
  // As tall as the page, for what a bar covers until it is scrolled to counts as obscured to axe.
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: size.width, height: Math.max(height, size.height) });
  const found = await runAxe(page);
  await page.setViewportSize(size);
  return found;
};

const runAxe = async (page: Page): Promise<string[]> => {
  axe ??= await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run(
      document,
      {
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      },
    );
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map((node) => `${id}: ${help}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
    );
  });
};

/** Everything a finger is meant for (links within sentences excepted: WCAG 2.2, 2.5.8) and is smaller than 44 px either way; empty when nothing is. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const pressable = 'a[href], button, input, select, textarea, summary, [role="radio"], label';
    const boxes = [...document.querySelectorAll<HTMLElement>(pressable)].filter((each) => {
      const target = each.closest('label') ?? each.closest('.df-box') ?? each;
      const { width, height, bottom } = target.getBoundingClientRect();
      const hidden = width <= 1 || height <= 1 || bottom < 0;
      const inText = each.matches('p a, [tabindex="-1"]');
      const onlyText = each.matches('label') && each.querySelector('input') === null;
      // Half a pixel for the rounding of layout.
      return !hidden && !inText && !onlyText && (width < 43.5 || height < 43.5);
    });
    return boxes.map((each) => each.outerHTML.slice(0, 120));
  });

/** True where nothing sticks out sideways: no text at any size needs scrolling in two directions. */
export const fitsSideways = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);

/** axe in both themes, targets, and nothing sideways. */
export const isSound = async (page: Page): Promise<void> => {
  for (const theme of ['dark', 'light']) {
    await page.evaluate((chosen) => {
      document.documentElement.dataset.theme = chosen;
    }, theme);
    await atRest(page);
    expect(await axeFindings(page)).toEqual([]);
  }
  expect(await smallTargets(page)).toEqual([]);
  expect(await fitsSideways(page)).toBe(true);
};
