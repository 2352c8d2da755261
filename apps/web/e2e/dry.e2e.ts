import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { benchHere, fitsSideways, isSound, openExample, PHONE } from './harness.ts';

const at = benchHere();

const TEN = new Date('2031-03-05T10:00:00Z');
const hoursOn = (hours: number): Date => new Date(TEN.getTime() + hours * 3_600_000);
/** Two thousand dryings are drawn beside other work on two cores. */
const SOON = { timeout: 20_000 };

const toDry = async (page: Page, title: string): Promise<void> => {
  await page.clock.setFixedTime(TEN);
  await openExample(page, title);
  await page.getByRole('link', { name: 'Dry', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: /: Dry$/ }).waitFor();
};
const begin = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'It lies and dries from now' }).click();
  await page.getByText('Dry on the scale').waitFor(SOON);
};
const field = (page: Page, name: string | RegExp) => page.getByRole('textbox', { name });
const fill = async (page: Page, name: string | RegExp, text: string): Promise<void> => {
  await field(page, name).fill(text);
  await page.keyboard.press('Tab');
};
const weigh = async (page: Page, text: string): Promise<void> => {
  await field(page, 'What the scale shows now').fill(text);
  await page.getByRole('button', { name: 'Write it down' }).click();
};
/** The text as it is seen. */
const seen = async (locator: Locator): Promise<string> =>
  (await locator.allInnerTexts()).join('\n');
const answer = (page: Page) => seen(page.locator('.df-dry-when'));
const settled = async (page: Page): Promise<string> => {
  await page.locator('.df-dry-when:not([data-pending])').waitFor(SOON);
  return answer(page);
};

test('DB1, DB2: a forecast at once, made surer by the scale and each weighing, kept over a reload; what changed is spoken', async () => {
  const page = await at.open({ timezoneId: 'Europe/London' });
  await toDry(page, 'Sluice shawl');
  await begin(page);
  const guess = await settled(page);
  expect(guess).toMatch(/^(Today|Between today) /);
  expect(await page.getByText('The humidity is a guess, 50 %').count()).toBe(1);
  expect(await page.getByText('Without the mass after pressing').count()).toBe(1);
  expect(await seen(page.getByRole('list', { name: 'When to look' }))).toMatch(/Turn it/);

  await fill(page, 'Mass now, wet', '200');
  await expect.poll(() => answer(page), SOON).not.toBe(guess);
  const before = await settled(page);
  await page.clock.setFixedTime(hoursOn(1.5));
  await weigh(page, '160,5 g');
  await page.getByText('At the weighing of today 11:30').waitFor(SOON);
  const after = await settled(page);
  expect(after).not.toBe(before);
  await page
    .locator('[role=status]')
    .filter({ hasText: `Dry: ${after}` })
    .waitFor(SOON);
  expect(await page.locator('.df-wash circle').count()).toBe(1);

  await page.reload();
  await page.getByText('Dry on the scale').waitFor(SOON);
  expect(await settled(page)).toBe(after);
  expect(await seen(page.getByRole('list', { name: 'Weighings' }))).toMatch(/161 g/);
  await page.getByRole('button', { name: 'Remove 161 g' }).click();
  await expect.poll(() => page.getByRole('list', { name: 'Weighings' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
  await page.getByRole('list', { name: 'Weighings' }).waitFor();
  await isSound(page);

  await page.getByRole('radio', { name: 'in', exact: true }).click({ force: true });
  await page
    .getByText(/g \([\d.]+ oz\)/)
    .first()
    .waitFor();
  await page.getByRole('button', { name: /200 g wet/ }).click();
  expect(await field(page, /^Temperature of the room/).inputValue()).toBe('68');
  await fill(page, /^Temperature of the room/, '21 C');
  await expect.poll(() => field(page, /^Temperature of the room/).inputValue()).toBe('70');
  await fill(page, /^Humidity/, '104');
  await page.getByText('This is not above 0 and below 100 %').waitFor();
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await fitsSideways(page)).toBe(true);
  await page.context().close();
});

test('DB3: without a scale a hand tells, and what that is worth; a weighing by keyboard alone, at a time of its own', async () => {
  const page = await at.open({ timezoneId: 'Europe/London' });
  await toDry(page, 'Sluice shawl');
  await begin(page);
  await page.clock.setFixedTime(hoursOn(2));
  await page.getByText('Wool feels dry while it still holds').waitFor();
  const feels = page.getByRole('group', { name: 'How does it feel there now?' });
  await feels.getByRole('button', { name: 'Cool' }).click();
  await page.getByRole('list', { name: 'Touches' }).getByText('Cool').waitFor();
  await feels.getByRole('button', { name: 'Dry' }).click();
  await page.getByText('By touch alone it is dry').waitFor();

  await page.getByRole('button', { name: 'It was at another time' }).focus();
  await page.keyboard.press('Enter');
  await page.getByLabel('Weighed').fill('2031-03-05T11:00');
  await field(page, 'What the scale shows now').focus();
  await page.keyboard.type('150');
  await page.keyboard.press('Enter');
  await page.getByText('At the weighing of today 11:00').waitFor(SOON);
  await page.context().close();
});

test('DB4: reminders are told while the app is open, and those missed afterwards; the calendar file has every mark', async () => {
  const page = await at.open({ timezoneId: 'Europe/London', acceptDownloads: true });
  await page.context().grantPermissions(['notifications']);
  await toDry(page, 'Sluice shawl');
  await begin(page);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Calendar file' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('sluice-at-noon-drying.ics');
  const text = await readFile(await file.path(), 'utf8');
  const starts = [...text.matchAll(/^DTSTART:(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\r$/gm)].map(
    ([, y, mo, d, h, mi, sec]) => Date.parse(`${y}-${mo}-${d}T${h}:${mi}:${sec}Z`),
  );
  const marks = page.getByRole('list', { name: 'When to look' }).getByRole('listitem');
  expect(starts).toHaveLength(await marks.count());
  const [first, second] = starts as [number, number];
  expect(first).toBeGreaterThan(TEN.getTime());

  await page.getByRole('button', { name: 'Remind me here' }).click();
  await page.getByText('Reminders are on.').waitFor();
  await page.clock.setFixedTime(first + 60_000);
  await page.reload();
  await page.locator('.df-toast').getByText('Weigh Sluice shawl').waitFor(SOON);
  const notes = () =>
    page.evaluate(async () => {
      const worker = await navigator.serviceWorker.getRegistration();
      return (await worker?.getNotifications())?.map(({ title }) => title);
    });
  // Shown once the app's worker is there, which is after the page.
  await expect.poll(notes, SOON).toEqual(['Weigh Sluice shawl for the ferry window']);
  await page.clock.setFixedTime(second + 3_600_000);
  await page.reload();
  await page.locator('.df-toast').getByText('Due while the app was closed: ').waitFor(SOON);
  await page.context().close();
});

test('DB5: pins out are counted kind by kind; with one missing it is finished only by saying so', async () => {
  const page = await at.open();
  await toDry(page, 'Hayloft pullover');
  await page.getByText('with 1 straight pin missing').waitFor();
  await page.getByRole('button', { name: 'It is not finished after all' }).click();
  await page.getByText('went in and did not come out yet').waitFor();
  const pins = page.getByRole('group', { name: 'Straight pins' });
  const [, in_] = /of (\d+)/.exec(await seen(pins))!;
  const counted = (out: number) => pins.getByText(`${out} of ${in_}`).waitFor();
  await pins.getByRole('button', { name: 'One straight pin less' }).click();
  await counted(Number(in_) - 2);
  await page.getByText('2 straight pins went in').waitFor();
  const counter = await pins.getByRole('button', { name: 'One straight pin out' }).boundingBox();
  // A knuckle is some 20 mm wide; a phone of 390 px is about 64.5 mm, so that 64 px are 10 mm and more.
  expect(Math.min(counter!.width, counter!.height)).toBeGreaterThanOrEqual(64);
  await isSound(page);

  await page.getByRole('button', { name: 'Finish with pins missing' }).click();
  const sheet = page.getByRole('alertdialog');
  const anyway = sheet.getByRole('button', { name: /^Finished, 2 missing/ });
  expect(await anyway.isDisabled()).toBe(true);
  await sheet.getByLabel('by hand').check();
  expect(await anyway.isDisabled()).toBe(true);
  await sheet.getByLabel('magnet').check();
  await anyway.click();
  await page.getByText('with 2 straight pins missing').waitFor();
  await page.getByRole('button', { name: 'It is not finished after all' }).click();
  await pins.getByRole('button', { name: /^All \d+ out/ }).click();
  await counted(Number(in_));
  await page.getByRole('button', { name: 'It is finished' }).click();
  await page.getByText('Finished on').first().waitFor();
  expect(await page.getByText('missing. Tell').count()).toBe(0);
  await page.getByRole('button', { name: 'Measure it after wear' }).click();
  await page.getByRole('heading', { level: 1, name: /: After$/ }).waitFor();
  const day = page.locator('.df-card').filter({
    has: page.getByRole('heading', { name: '5 March 2031' }),
  });
  await day.getByRole('textbox', { name: /^Worn/ }).first().waitFor();
  expect(await day.getByRole('textbox', { name: /^Dried|^Rewashed/ }).count()).toBe(0);
  await page.context().close();
});

/** A JPEG as the page's own encoder makes it, its colours patches of noise. */
const jpeg = async (page: Page, width: number, height: number): Promise<Buffer> =>
  Buffer.from(
    await page.evaluate(
      async ([w, h]) => {
        const canvas = new OffscreenCanvas(w!, h!);
        const ink = canvas.getContext('2d')!;
        let seed = 7;
        for (let y = 0; y < h!; y += 16)
          for (let x = 0; x < w!; x += 16) {
            seed = (seed * 16_807) % 2_147_483_647;
            ink.fillStyle = `rgb(${seed % 256} ${(seed >> 8) % 256} ${(seed >> 16) % 256})`;
            ink.fillRect(x, y, 16, 16);
          }
        const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
        return [...new Uint8Array(await blob.arrayBuffer())];
      },
      [width, height],
    ),
  );

/** Exif 2.3 in an APP1 segment: turned a quarter to the right, with a place on the globe. */
const exif = (): Buffer => {
  const tiff = Buffer.alloc(62);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  // Orientation (0x0112), a SHORT: 6 is the row on the right, the column on top.
  tiff.set([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0], 10);
  // GPS directory (0x8825), a LONG: where it begins.
  tiff.set([0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38], 22);
  tiff.writeUInt16BE(1, 38);
  // GPSLatitudeRef (0x0001), ASCII.
  tiff.set([0, 1, 0, 2, 0, 0, 0, 2, 0x4e, 0, 0, 0], 40);
  const data = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(data.length + 2, 2);
  return Buffer.concat([head, data]);
};

const choose = async (page: Page, files: { name: string; buffer: Buffer }[]): Promise<void> => {
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a picture' }).click();
  const mimeType = (name: string) => (name.endsWith('.txt') ? 'text/plain' : 'image/jpeg');
  await (await asked).setFiles(files.map((each) => ({ ...each, mimeType: mimeType(each.name) })));
};

test('DB6: photos come in small, upright and without what the camera noted; what is no picture is refused; 24 are enough', async () => {
  const page = await at.open();
  await toDry(page, 'Sluice shawl');
  const plain = await jpeg(page, 2400, 1600);
  const noted = Buffer.concat([plain.subarray(0, 2), exif(), plain.subarray(2)]);
  expect(noted.includes('Exif')).toBe(true);
  await choose(page, [{ name: 'wet.jpg', buffer: noted }]);
  const photos = page.locator('.df-photo img');
  await photos.first().waitFor(SOON);
  const [src, width, height] = await photos
    .first()
    .evaluate(
      (each: HTMLImageElement) => [each.src, each.naturalWidth, each.naturalHeight] as const,
    );
  // Turned upright: 2400 by 1600 on its side, longest side 1280.
  expect([width, height]).toEqual([853, 1280]);
  const kept = Buffer.from(src.replace(/^data:image\/jpeg;base64,/, ''), 'base64');
  expect(kept.length).toBeLessThanOrEqual(300_000);
  expect(kept.subarray(0, 2)).toEqual(Buffer.from([0xff, 0xd8]));
  // Chromium names the maker of its colour profile in UTF-16.
  for (const note of ['Exif', Buffer.from([0xff, 0xe1]), 'G\0o\0o\0g\0l\0e'])
    expect(kept.includes(note)).toBe(false);

  await photos.first().click();
  await page.getByRole('dialog').getByLabel('Caption').fill('Wet, on the blue mat');
  await isSound(page);
  await page.getByRole('button', { name: 'Remove this photo' }).click();
  await expect.poll(() => photos.count()).toBe(0);
  await page.locator('.df-toast').getByRole('button', { name: 'Undo' }).click();
  await page.getByAltText('Wet, on the blue mat').waitFor();

  await choose(page, [{ name: 'notes.txt', buffer: Buffer.from('not a picture') }]);
  await page.getByText('This is no picture that the browser can open').waitFor();
  const small = await jpeg(page, 40, 40);
  await choose(
    page,
    Array.from({ length: 24 }, (_, k) => ({ name: `${k}.jpg`, buffer: small })),
  );
  await page.getByText('A garment holds 24 photos').waitFor(SOON);
  expect(await photos.count()).toBe(24);
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await fitsSideways(page)).toBe(true);
  await page.setViewportSize(PHONE);
  await page.reload();
  await photos.first().waitFor(SOON);
  expect(await photos.count()).toBe(24);
  await page.context().close();
});
