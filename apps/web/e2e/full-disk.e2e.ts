import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allowToPersist, type SmallDisk, smallDisk } from './full-disk.ts';
import { beginGarment, DIST, killBrowser, openProfile } from './harness.ts';
import { serveFolder } from './serve.ts';
import { keeping, untilKept } from './storage.ts';

const name = (page: Page) => page.getByRole('textbox', { name: /^Name/ }).first();

interface OnDisk {
  readonly disk: SmallDisk;
  readonly browser: BrowserContext;
  readonly page: Page;
  readonly profile: string;
}

/** A garment at its wearer, in a browser whose storage lies on a disk that can be filled; false where that cannot be. */
const onSmallDisk = async (
  { persists }: { persists: boolean },
  act: (at: OnDisk) => Promise<void>,
): Promise<boolean> => {
  const disk = smallDisk();
  if (disk === null) return false;
  const served = await serveFolder(DIST);
  const profile = join(disk.folder, 'profile');
  if (persists) allowToPersist(profile, served.address);
  const browser = await openProfile(profile);
  try {
    const page = browser.pages()[0] ?? (await browser.newPage());
    await page.goto(served.address);
    await beginGarment(page, 'On a small disk');
    await name(page).pressSequentially('Ada');
    await untilKept(page);
    await act({ disk, browser, page, profile });
  } finally {
    await browser.close().catch(() => {});
    await served.stop();
    disk.unmount();
  }
  return true;
};

/** Types on until the page says that it is not kept; gives the last text that it said was. */
const typeUntilFull = async (page: Page): Promise<string> => {
  let kept = await name(page).inputValue();
  for (;;) {
    await page.keyboard.type('x');
    await expect.poll(() => keeping(page), { timeout: 15_000 }).toMatch(/^(Kept|Not kept)/);
    if ((await keeping(page))?.startsWith('Not kept')) return kept;
    kept = await name(page).inputValue();
  }
};

for (const persists of [true, false])
  test(`B40: on a full disk ${persists ? '' : 'of a browser that may throw storage out '}the page says so, and once there is space all of it is kept`, async (context) => {
    const ran = await onSmallDisk({ persists }, async ({ disk, page }) => {
      await name(page).focus();
      disk.fill();
      await typeUntilFull(page);
      // Where the browser closes the database before it says why, only that it does not take it is known.
      await expect
        .poll(() => keeping(page))
        .toMatch(/^Not kept yet: (no space left on this device|this device does not take it)/);
      await page.keyboard.type('yyy');
      disk.free();
      await untilKept(page);
      await page.keyboard.type('zzz');
      await untilKept(page);
      const typed = await name(page).inputValue();
      expect(typed).toMatch(/^Adax+y{3}z{3}$/);
      await page.reload();
      await expect.poll(() => name(page).inputValue()).toBe(typed);
    });
    context.skip(!ran, 'not run: this user may not mount a small disk');
  });

test('B40: a browser killed on a full disk has what was called kept', async (context) => {
  const ran = await onSmallDisk({ persists: true }, async ({ disk, browser, page, profile }) => {
    const address = page.url();
    await name(page).focus();
    disk.fill();
    const kept = await typeUntilFull(page);
    killBrowser(profile);
    await browser.close().catch(() => {});
    disk.free();
    const again = await openProfile(profile);
    const second = again.pages()[0] ?? (await again.newPage());
    await second.goto(address);
    await expect.poll(() => name(second).inputValue()).toMatch(new RegExp(`^${kept}x*$`));
    await again.close();
  });
  context.skip(!ran, 'not run: this user may not mount a small disk');
});
