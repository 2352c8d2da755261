import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atRest } from '../../../scripts/lib/at-rest.mjs';
import {
  benchHere,
  DESK,
  DIST,
  fitsSideways,
  isSound,
  killBrowser,
  openExample,
  openProfile,
  PHONE,
} from './harness.ts';
import { serveFolder } from './serve.ts';

const at = benchHere();

/** A plan takes seconds, and many times that beside other work on two cores; a hang still ends. */
const PLANNED = { timeout: 240_000 };
const LONG = 400_000;

const next = (page: Page) => page.getByRole('button', { name: /^Next/ });
const back = (page: Page) => page.getByRole('button', { name: 'Back', exact: true });
const said = (page: Page) => page.locator('.df-said').textContent();
/** The text as it is seen. */
const seen = async (locator: Locator): Promise<string> =>
  (await locator.allInnerTexts()).join('\n');
const tapes = (page: Page) => seen(page.locator('.df-step-tapes'));

const stepNow = async (page: Page): Promise<{ at: number; of: number }> => {
  const [, step = '', of = ''] =
    /step (\d+) of (\d+)/.exec(await seen(page.locator('.df-step-of'))) ?? [];
  return { at: Number(step), of: Number(of) };
};
const isAtStep = (page: Page, step: number) =>
  expect.poll(async () => (await stepNow(page)).at).toBe(step);

/** Presses that follow sooner than a hand can are taken for one, by the page's clock: it is put on. */
const afterBounce = (page: Page): Promise<void> => page.clock.fastForward(130);

/** One step on by touch or mouse, and not before it is shown. */
const onward = async (page: Page, steps = 1): Promise<void> => {
  for (let k = 0; k < steps; k++) {
    const { at } = await stepNow(page);
    await afterBounce(page);
    await next(page).click();
    await isAtStep(page, at + 1);
  }
};

const openMat = async (page: Page): Promise<void> => {
  await openExample(page, 'Ledger Day waistcoat');
  await page
    .getByRole('navigation', { name: 'Places of this garment' })
    .getByRole('link', { name: 'Mat' })
    .click();
};

const startPinning = async (page: Page): Promise<void> => {
  await openMat(page);
  const start = page.getByRole('button', { name: 'Start pinning: Front' });
  await start.waitFor(PLANNED);
  await expect.poll(() => start.isEnabled(), PLANNED).toBe(true);
  await start.click();
  await next(page).waitFor();
  await page.clock.install();
};

/** Whether a text stands in what the browser acknowledged of a garment; no line on a step says so. */
const isStored = (page: Page, text: string): Promise<boolean> =>
  page.evaluate(async (wanted) => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    for (const { name = '' } of await indexedDB.databases()) {
      if (!name.startsWith('dryflat-garment')) continue;
      const db = await answer(indexedDB.open(name));
      const updates = await answer<Uint8Array[]>(
        db.transaction('updates').objectStore('updates').getAll(),
      );
      db.close();
      if (updates.some((each) => new TextDecoder('latin1').decode(each).includes(wanted)))
        return true;
    }
    return false;
  }, text);

/** Height of the digits of the tape distances, CSS px, as they are drawn. */
const digitHeights = (page: Page): Promise<number[]> =>
  page.locator('.df-tape-number').evaluateAll((all) =>
    all.map((each) => {
      const { fontWeight, fontSize, fontFamily } = getComputedStyle(each);
      const ink = document.createElement('canvas').getContext('2d')!;
      ink.font = `${fontWeight} ${fontSize} ${fontFamily}`;
      return ink.measureText('8').actualBoundingBoxAscent;
    }),
  );

test(
  'PB1, PB2, PB3: a step fills the screen, is read from afar and said in words; touch, keys and clickers go through',
  async () => {
    const page = await at.open({ viewport: PHONE, hasTouch: true });
    await startPinning(page);
    const { at: first, of: count } = await stepNow(page);
    expect(first).toBe(1);
    expect(count).toBeGreaterThan(5);
    // 1.5 m / 200 = 7.5 mm; a phone of 390 px is about 64.5 mm wide: 6.05 px to the mm.
    for (const height of await digitHeights(page)) expect(height).toBeGreaterThanOrEqual(45.4);
    for (const way of [next(page), back(page)]) {
      const box = (await way.boundingBox())!;
      expect(box.height).toBeGreaterThanOrEqual(96);
      expect(box.width).toBeCloseTo(PHONE.width / 2, 0);
      // In sight without scrolling.
      expect(box.y + box.height).toBeLessThanOrEqual(PHONE.height + 0.5);
    }
    await isSound(page);
    expect(await page.getByText('keep children and pets away').isVisible()).toBe(true);

    await next(page).tap();
    await isAtStep(page, 2);
    await afterBounce(page);
    await back(page).tap();
    await isAtStep(page, 1);
    expect(await seen(page.locator('.df-step-done'))).toBe('It is in');
    await page.getByRole('heading', { level: 1 }).focus();
    let step = 1;
    for (const [key, by] of [
      ['Space', 1],
      ['Enter', 1],
      ['PageDown', 1],
      ['ArrowRight', 1],
      ['PageUp', -1],
      ['ArrowLeft', -1],
    ] as const) {
      await afterBounce(page);
      await page.keyboard.press(key);
      step += by;
      await isAtStep(page, step);
    }
    expect(await said(page)).toMatch(
      /^Step three of [a-z-]+: .+ on the .+, [a-z- ]+ centimetres from .+, and [a-z- ]+ centimetres from .+\. It is in\.$/,
    );
    expect(await tapes(page)).toMatch(/\d\s*cm/);

    await page.getByRole('button', { name: 'Hands, eyes and ears' }).click();
    const sheet = page.getByRole('dialog');
    for (const off of ['Steps read aloud', 'Told by voice'])
      expect(
        await sheet
          .getByRole('radiogroup', { name: off })
          .getByRole('radio', { name: 'Off' })
          .isChecked(),
      ).toBe(true);
    await sheet
      .getByRole('radiogroup', { name: 'Told by voice' })
      .getByRole('radio', { name: 'On' })
      .click({ force: true });
    await sheet.getByText('send what the microphone hears to a server').waitFor();
    await isSound(page);
    await sheet.getByRole('button', { name: 'Leave it off' }).click();
    await sheet
      .getByRole('radiogroup', { name: 'Keys and clickers' })
      .getByRole('radio', { name: 'Off' })
      .click({ force: true });
    await sheet.getByRole('radio', { name: 'in', exact: true }).click({ force: true });
    await sheet.getByRole('button', { name: 'Close' }).click();
    await sheet.waitFor({ state: 'detached' });
    expect(await said(page)).toMatch(/inch(es)? from .+ inch(es)? from/);
    expect(await said(page)).not.toMatch(/\d|centi/);
    expect(await tapes(page)).not.toMatch(/cm/);
    await page.getByRole('heading', { level: 1 }).focus();
    await afterBounce(page);
    await page.keyboard.press('PageDown');
    await atRest(page);
    await isAtStep(page, step);

    for (const size of [{ width: 320, height: 640 }, { width: 844, height: 390 }, DESK]) {
      await page.setViewportSize(size);
      await atRest(page);
      expect(await fitsSideways(page)).toBe(true);
      for (const height of await digitHeights(page)) expect(height).toBeGreaterThanOrEqual(45.4);
      const box = (await next(page).boundingBox())!;
      expect(box.height).toBeGreaterThanOrEqual(96);
      expect(box.y + box.height).toBeLessThanOrEqual(size.height + 0.5);
    }
    await page.setViewportSize(PHONE);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await atRest(page);
    expect(await fitsSideways(page)).toBe(true);
    await page.context().close();
  },
  LONG,
);

test(
  'PB4, PB5: what the tape says and what has run out make a new plan of the rest, told before it is taken; a reload keeps the step',
  async () => {
    const page = await at.open({ viewport: PHONE });
    await startPinning(page);
    const { of: before } = await stepNow(page);
    await onward(page, 6);
    await page.getByRole('button', { name: 'Tell what the tape says' }).click();
    const sheet = page.getByRole('dialog');
    await isSound(page);
    const work = sheet.getByRole('button', { name: 'Work the rest out from here' });
    await work.click();
    await sheet.getByRole('alert').getByText('Nothing is told yet').waitFor();
    await sheet.getByLabel(/^A: from/).fill('1');
    await sheet.getByLabel(/^B: from/).fill('1');
    await sheet.getByText('was it measured from there?').first().waitFor();
    await work.click();
    // Two tapes that cannot meet: the field is named, and the steps stay.
    await sheet.getByText(/\(step 7, tape\)/).waitFor();
    await sheet.getByRole('button', { name: 'Keep the old steps' }).click();
    await isAtStep(page, 7);
    await page.getByRole('button', { name: 'Tell what the tape says' }).click();
    const planned = await sheet.locator('.df-hint').allInnerTexts();
    for (const [k, letter] of ['A', 'B'].entries())
      await sheet
        .getByLabel(new RegExp(`^${letter}: from`))
        .fill(planned[k]!.replace('Planned: ', ''));
    await sheet.getByRole('radio', { name: /It will go no farther/ }).click({ force: true });
    await work.click();
    await sheet.getByRole('button', { name: 'Take the new plan' }).waitFor(PLANNED);
    await isSound(page);
    expect(await seen(sheet)).toMatch(
      /What the piece told\n.*stiffer[\s\S]+What changes in the plan\n.+/,
    );
    await sheet.getByRole('button', { name: 'Take the new plan' }).click();
    await isAtStep(page, 8);
    await page.getByText(/In the mat: .*\d/).waitFor();

    await page.getByRole('button', { name: 'More', exact: true }).click();
    await isSound(page);
    await sheet.getByRole('button', { name: 'I have run out' }).click();
    await sheet.getByLabel('T-pins left').fill('0');
    await sheet.getByLabel('Straight pins left').fill('6');
    await isSound(page);
    await sheet.getByRole('button', { name: 'Plan with what is left' }).click();
    await sheet.getByRole('button', { name: 'Take the new plan' }).waitFor(PLANNED);
    await sheet.getByRole('button', { name: 'Take the new plan' }).click();
    await isAtStep(page, 8);
    const { of: after } = await stepNow(page);
    expect(after).toBeLessThanOrEqual(7 + 6);
    expect(after).toBeLessThan(before);
    const there = [await said(page), await tapes(page)];
    await page.reload();
    await next(page).waitFor();
    expect([await said(page), await tapes(page)]).toEqual(there);
    await page.getByRole('button', { name: 'Undo', exact: true }).waitFor();
    await page.context().close();
  },
  LONG,
);

test(
  'PB6: skipped steps, pins beside the plan and the last pin: all is counted, the way to drying is shown; the other one is laid as its mirror',
  async () => {
    const page = await at.open({ viewport: PHONE });
    await startPinning(page);
    const { of: count } = await stepNow(page);
    await onward(page, 2);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(async () => (await stepNow(page)).at).toBeLessThan(3);
    const { at: undone } = await stepNow(page);
    await page.getByRole('button', { name: 'More', exact: true }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Straight pins beside the plan').fill('2');
    await sheet.getByRole('button', { name: 'Skip this one' }).click();
    await isAtStep(page, undone + 1);
    await onward(page, count - undone - 1);
    await afterBounce(page);
    await next(page).click();
    await page.getByRole('heading', { name: 'Front is pinned' }).waitFor();
    // One is left out, two went in beside the plan.
    await page.getByText(`${count - 1 + 2} in all`).waitFor();
    await page.getByText('One step is left out.').waitFor();
    await page.getByText('keep children and pets out').waitFor();
    await page
      .getByText(/dry \(pinned/)
      .first()
      .waitFor();
    await isSound(page);
    expect(await page.getByRole('link', { name: 'Dry' }).getAttribute('href')).toMatch(/\/dry$/);

    await page.getByRole('link', { name: 'Mat' }).click();
    await page.getByText('Look: pinned').waitFor();
    await page.getByRole('button', { name: 'Start another front' }).click();
    await sheet.getByLabel(/Which one is it/).fill('left');
    await isSound(page);
    await sheet.getByRole('button', { name: 'Start pinning' }).click();
    await isAtStep(page, 1);
    await page.getByRole('button', { name: /Front, left/ }).click();
    await sheet.getByRole('button', { name: /^Front: pinned/ }).click();
    await page.getByRole('heading', { name: 'Front is pinned' }).waitFor();
    await page.goto(page.url().replace('pinning', 'forecast'));
    await page
      .getByRole('link', { name: `Pinning under way: front, left, step 1 of ${count}` })
      .waitFor();
    await page.context().close();
  },
  LONG,
);

test(
  'PB7: offline, a killed browser comes back to the same step with what was half typed',
  async () => {
    const profile = await mkdtemp(join(tmpdir(), 'dryflat-pinning-'));
    const served = await serveFolder(DIST);
    const first = await openProfile(profile);
    const page = first.pages()[0] ?? (await first.newPage());
    await page.goto(served.address);
    await startPinning(page);
    await expect
      .poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state), {
        timeout: 30_000,
      })
      .toBe('activated');
    await onward(page, 3);
    const there = [await said(page), await tapes(page)];
    const address = page.url();
    await page.getByRole('button', { name: 'Tell what the tape says' }).click();
    await page.getByLabel(/^A: from/).pressSequentially('13 3/');
    await expect.poll(() => isStored(page, '13 3/')).toBe(true);
    killBrowser(profile);
    await first.close().catch(() => {});
    // No network: the server is gone.
    await served.stop();

    const second = await openProfile(profile);
    const again = second.pages()[0] ?? (await second.newPage());
    await again.goto(address);
    await next(again).waitFor();
    await again.clock.install();
    expect([await said(again), await tapes(again)]).toEqual(there);
    await again.getByRole('button', { name: 'Tell what the tape says' }).click();
    await expect.poll(() => again.getByLabel(/^A: from/).inputValue()).toBe('13 3/');
    await again.keyboard.press('Escape');
    await onward(again);
    await second.close();
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  },
  LONG,
);

/** What the fakes below wrote down. */
interface Noted {
  readonly spoken: string[];
  readonly locks: number;
  readonly hear: (words: string) => void;
}
const noted = <T>(page: Page, read: (noted: Noted) => T): Promise<T> =>
  page.evaluate(`(${read.toString()})(window.noted)`);

/** A browser that speaks, listens and keeps its screen on, and writes down what it was asked. */
const fakes = (): void => {
  const all = globalThis as unknown as Record<string, unknown>;
  const noted = { spoken: [] as string[], locks: 0, hear: (_: string) => {} };
  all.noted = noted;
  all.SpeechSynthesisUtterance = class {
    lang = '';
    voice = null;
    constructor(readonly text: string) {}
  };
  Object.defineProperty(globalThis, 'speechSynthesis', {
    value: {
      speaking: false,
      cancel: () => {},
      speak: ({ text }: { text: string }) => noted.spoken.push(text),
      getVoices: () => [{ lang: 'en-GB', localService: true, voiceURI: 'a', name: 'A' }],
    },
  });
  class Ear {
    onresult: ((event: unknown) => void) | null = null;
    onend: (() => void) | null = null;
    start(): void {
      noted.hear = (words) =>
        this.onresult?.({ resultIndex: 0, results: [[{ confidence: 0.9, words }]] });
    }
    abort(): void {
      noted.hear = () => {};
    }
  }
  all.SpeechRecognition = Ear;
  all.webkitSpeechRecognition = Ear;
  Object.defineProperty(navigator, 'wakeLock', {
    value: {
      request: async () => {
        noted.locks += 1;
        return { release: async () => {} };
      },
    },
  });
};

test(
  'PB8: steps are read aloud and told by voice once that is switched on, after it is said where sound goes; the screen is kept on again and again',
  async () => {
    const context = await at.browser.newContext({ viewport: PHONE, locale: 'en-GB' });
    const page = await context.newPage();
    await page.addInitScript(fakes);
    await page.goto(at.address);
    await startPinning(page);
    await expect.poll(() => noted(page, ({ locks }) => locks)).toBeGreaterThan(0);
    const locks = await noted(page, ({ locks }) => locks);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect.poll(() => noted(page, ({ locks }) => locks)).toBeGreaterThan(locks);
    await onward(page);
    expect(await noted(page, ({ spoken }) => spoken)).toEqual([]);

    await page.getByRole('button', { name: 'Hands, eyes and ears' }).click();
    const sheet = page.getByRole('dialog');
    const on = (name: string) =>
      sheet.getByRole('radiogroup', { name }).getByRole('radio', { name: 'On' });
    await on('Steps read aloud').click({ force: true });
    await on('Told by voice').click({ force: true });
    expect(await on('Told by voice').isChecked()).toBe(false);
    await sheet.getByRole('button', { name: 'Listen all the same' }).click();
    await sheet.getByRole('button', { name: 'Close' }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.getByText('Listening for “next”').waitFor();
    await afterBounce(page);
    await noted(page, ({ hear }) => hear('and next please'));
    await isAtStep(page, 3);
    expect(await noted(page, ({ spoken }) => spoken.at(-1))).toBe(await said(page));
    await afterBounce(page);
    await noted(page, ({ hear }) => hear('go back'));
    await isAtStep(page, 2);

    // Remembered on this device; without a network it says that it cannot hear.
    await context.setOffline(true);
    await page.evaluate(() => window.dispatchEvent(new Event('offline')));
    await page.getByRole('button', { name: 'Hands, eyes and ears' }).click();
    await sheet.getByRole('button', { name: 'Close' }).click();
    await page.getByText('Listening needs the network').waitFor();
    await context.setOffline(false);
    await page.reload();
    await next(page).waitFor();
    await page.getByText('Listening for “next”').waitFor();
    await context.close();
  },
  LONG,
);

test(
  'PB9: in a record of a newer version steps can be gone through, nothing is changed, and that is said',
  async () => {
    const page = await at.open({ viewport: PHONE });
    const text = await readFile(
      new URL('../../../examples/hayloft-pullover.json', import.meta.url),
      'utf8',
    );
    await page.getByRole('button', { name: 'Bring one in from a file' }).click();
    await page.getByLabel('Text of the file').fill(text.replace(/"version": \d+/, '"version": 99'));
    await page.getByRole('button', { name: 'Bring it in', exact: true }).click();
    await page.getByText('saved by a newer Dryflat').first().waitFor();
    await page.goto(page.url().replace(/[a-z]+$/, 'pinning'));
    await page.getByText('nothing that you do here is kept').waitFor();
    await page.getByRole('button', { name: 'Back to the last step' }).click();
    const { at: last, of } = await stepNow(page);
    expect(last).toBe(of);
    expect(await page.getByRole('button', { name: 'Tell what the tape says' }).isEnabled()).toBe(
      false,
    );
    await page.reload();
    await page.getByRole('button', { name: 'Back to the last step' }).waitFor();
    await page.goto(page.url().replace('pinning', 'mat'));
    await page.getByText('pins that you move on the mat are not kept').waitFor();
    await page.context().close();
  },
  LONG,
);
