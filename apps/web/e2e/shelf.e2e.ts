import { readFile } from 'node:fs/promises';
import { findExample, type Photo, writeRecord } from '@dryflat/record';
import { cleanPicture, toBase64 } from '@dryflat/record/photo';
import {
  lettersOf,
  PLAIN,
  PLANTED,
  type Plain,
  plantedAll,
  TYPE_OF,
} from '@dryflat/record/photo/testing';
import type { Download, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { beginGarment, benchHere, openExample } from './harness.ts';

const at = benchHere();

test('B1: a first visit offers seven examples with their stories, and an empty start', async () => {
  const page = await at.open();
  const stories = page.getByRole('listitem').filter({ hasText: 'Open a copy' });
  await stories.first().waitFor();
  expect(await stories.count()).toBe(7);
  expect(await page.getByRole('button', { name: 'Begin a garment' }).isVisible()).toBe(true);
});

test('B2: an example opens on its forecast, worked out by the engine', async () => {
  const page = await at.open();
  await openExample(page, 'Ledger Day waistcoat');
  const line = page.getByRole('navigation').getByRole('link', { name: /^Forecast:/ });
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/in 100|\d cm/);
  await page.goBack();
  await page.getByRole('heading', { name: 'On your shelf' }).waitFor();
  expect(await page.getByRole('link', { name: /Ledger Day waistcoat/ }).count()).toBe(1);
});

test('B3: an empty start asks for a name and a kind, and opens where the telling begins', async () => {
  const page = await at.open();
  await page.getByRole('button', { name: 'Begin a garment' }).click();
  await page.getByLabel('What do you call it?').fill('Hat for the quay');
  await page.getByLabel('What is it?').selectOption('hat');
  await page.getByRole('button', { name: 'Put it on the shelf' }).click();
  await page.getByRole('heading', { level: 1, name: 'Hat for the quay' }).waitFor();
  expect(page.url()).toMatch(/\/wearer$/);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Hat for the quay' }).waitFor();
});

test('B4: undo and redo follow the name of a garment', async () => {
  const page = await at.open();
  await beginGarment(page, 'First name');
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('Second name');
  await page.keyboard.press('Escape');
  const title = (name: string) => page.getByRole('heading', { level: 1, name }).waitFor();
  await title('Second name');
  await page.getByRole('button', { name: 'Undo' }).click();
  await title('First name');
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Redo' }).click();
  await title('Second name');
  await page.keyboard.press('Control+z');
  await title('First name');
  await page.keyboard.press('Control+Shift+z');
  await title('Second name');
});

const saved = async (page: Page): Promise<Download> => {
  await page.getByRole('button', { name: 'More for this garment' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  return coming;
};
const saveFile = async (page: Page): Promise<string> => {
  const file = await saved(page);
  expect(file.suggestedFilename()).toMatch(/^[a-z0-9-]+\.json$/);
  return readFile(await file.path(), 'utf8');
};

test('B5: a saved file comes back on another device, the same to the byte', async () => {
  const page = await at.open({ acceptDownloads: true });
  await openExample(page, 'Lantern Row');
  const text = await saveFile(page);
  const away = await at.open({ acceptDownloads: true });
  await away.getByRole('button', { name: 'Bring one in from a file' }).click();
  await away
    .locator('input[type=file]')
    .setInputFiles({ name: 'g.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await away.getByRole('heading', { level: 1, name: 'Lantern Row' }).waitFor();
  expect(await saveFile(away)).toBe(text);
});

test('B6: a file that is no garment is refused with every reason, and the shelf stays as it was', async () => {
  const page = await at.open();
  await page.getByRole('button', { name: 'Bring one in from a file' }).click();
  await page.getByLabel('Text of the file').fill('{"format":"dryflat-garment","version":1,"id":7}');
  await page.getByRole('button', { name: 'Bring it in', exact: true }).click();
  const alert = page.getByRole('alert');
  await alert.waitFor();
  expect(await alert.getByRole('listitem').count()).toBeGreaterThan(3);
  expect(await alert.textContent()).toMatch(/could not be read as a garment, for \d+ reasons/);
  await page.keyboard.press('Escape');
  expect(await page.locator('.df-garment').count()).toBe(0);
});

test('B7: a garment dropped on the shelf or pasted there comes in', async () => {
  const page = await at.open({ acceptDownloads: true });
  await openExample(page, 'Ferry socks');
  const text = await saveFile(page);
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('heading', { name: 'On your shelf' }).waitFor();
  await page.evaluate((given) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', given);
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }));
  }, text);
  await page.waitForURL(/#\/garment\//);
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('heading', { name: 'On your shelf' }).waitFor();
  await page.evaluate((given) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([given], 'g.json', { type: 'application/json' }));
    document.body.dispatchEvent(
      new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }),
    );
  }, text);
  await page.waitForURL(/#\/garment\//);
  await page.getByRole('link', { name: 'Shelf' }).click();
  await expect.poll(() => page.locator('.df-garment').count()).toBe(3);
});

test('B8: a copy is a garment of its own', async () => {
  const page = await at.open();
  await beginGarment(page, 'Mitten');
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await page.getByRole('heading', { level: 1, name: 'Mitten (copy)' }).waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('Other mitten');
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('link', { name: /Other mitten/ }).waitFor();
  expect(await page.getByRole('link', { name: /^Mitten/ }).count()).toBe(1);
});

test('B9: the trash gives back what was put in, until it is emptied for good', async () => {
  const page = await at.open();
  await beginGarment(page, 'Shawl');
  const address = page.url();
  const trash = async (): Promise<void> => {
    await page.getByRole('button', { name: 'More for Shawl' }).click();
    await page.getByRole('button', { name: 'Put in the trash' }).click();
    await expect.poll(() => page.getByRole('link', { name: /Shawl/ }).count()).toBe(0);
  };
  await page.getByRole('link', { name: 'Shelf' }).click();
  await trash();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('link', { name: /Shawl/ }).waitFor();
  await trash();
  await page.reload();
  await page.getByRole('button', { name: 'In the trash: 1' }).click();
  await page.getByRole('button', { name: 'Take Shawl out' }).click();
  await page.getByRole('link', { name: /Shawl/ }).waitFor();
  await trash();
  await page.getByRole('button', { name: 'In the trash: 1' }).click();
  await page.getByRole('button', { name: 'Empty the trash' }).click();
  await page.getByRole('button', { name: 'Keep' }).click();
  await page.getByRole('button', { name: 'Take Shawl out' }).waitFor();
  await page.getByRole('button', { name: 'Empty the trash' }).click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await expect.poll(() => page.getByRole('button', { name: /In the trash/ }).count()).toBe(0);
  await page.goto(address);
  await page.getByText('There is no such garment on this device').waitFor();
  await page.reload();
  await page.getByText('There is no such garment on this device').waitFor();
});

test('B10: everything on the device can be deleted', async () => {
  const page = await at.open();
  await beginGarment(page, 'Blanket');
  await page.goto(`${at.address}#/settings`);
  await page.getByRole('button', { name: 'Delete everything here' }).click();
  await page.getByRole('button', { name: 'Delete everything', exact: true }).click();
  await page.getByRole('heading', { name: 'What will it measure when it is dry?' }).waitFor();
  const left = await page.evaluate(async () => (await indexedDB.databases()).map((db) => db.name));
  expect(left.filter((name) => name?.startsWith('dryflat-garment'))).toEqual([]);
});

test('B11: inches and centimetres change everywhere at once and are remembered', async () => {
  const page = await at.open();
  await openExample(page, 'Ledger Day waistcoat');
  const line = page.getByRole('navigation').getByRole('link', { name: /^Forecast:/ });
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/ cm/);
  await page.getByText('in', { exact: true }).click();
  await expect.poll(() => line.textContent()).toMatch(/ in\b(?! 100)/);
  await page.reload();
  await expect.poll(() => line.textContent(), { timeout: 10_000 }).toMatch(/ in\b(?! 100)/);
});

test('B12: a change in one tab shows in another', async () => {
  const page = await at.open();
  await beginGarment(page, 'Here');
  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.getByRole('heading', { level: 1, name: 'Here' }).waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('There too');
  await other.getByRole('heading', { level: 1, name: 'There too' }).waitFor();
});

test('B26: a file of a newer version opens read-only and is saved again byte for byte', async () => {
  const page = await at.open({ acceptDownloads: true });
  await openExample(page, 'Ferry socks');
  const text = await saveFile(page);
  const newer = text
    .replace(/"version": \d+/, '"version": 99')
    .replace('{', '{ "madeOfMoonlight": true,');
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: 'Bring one in from a file' }).click();
  await page.getByLabel('Text of the file').fill(newer);
  await page.getByRole('button', { name: 'Bring it in', exact: true }).click();
  await page.getByText('saved by a newer Dryflat').waitFor();
  await page.getByRole('button', { name: 'More for this garment' }).click();
  expect(await page.getByRole('dialog').getByLabel('Name').isEditable()).toBe(false);
  await page.keyboard.press('Escape');
  expect(await saveFile(page)).toBe(newer);
});

const KINDS = Object.keys(PLAIN) as Plain[];

/** A garment for somebody, with pictures that tell a place wherever there is room; the last is cut off. */
const noted = () => {
  const found = findExample('waistcoat')?.record ?? expect.fail('no example');
  const photo = (id: string, kind: Plain, bytes: Uint8Array): Photo => ({
    id,
    when: 'dried',
    caption: id,
    type: TYPE_OF[kind],
    widthPx: 8,
    heightPx: 8,
    data: toBase64(bytes),
  });
  const photos = [
    ...KINDS.map((kind) => photo(kind, kind, plantedAll(kind, PLANTED))),
    photo('cut', 'jpeg', plantedAll('jpeg', PLANTED).subarray(0, 900)),
  ];
  return writeRecord({ ...found, photos });
};
/** Letters of every picture in a file. */
const picturesIn = (text: string): string[] =>
  JSON.parse(text).photos.map(({ data }: Photo) => lettersOf(Buffer.from(data, 'base64')));
const bring = async (page: Page, text: string): Promise<void> => {
  await page.getByRole('button', { name: 'Bring one in from a file' }).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'g.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByRole('navigation', { name: 'Places of this garment' }).waitFor();
};

test('PH1, PQ3: pictures that came in with a file tell no place when they go out, and its name tells nobody', async () => {
  const page = await at.open({ acceptDownloads: true });
  expect(picturesIn(noted()).every((letters) => letters.includes(PLANTED))).toBe(true);
  await bring(page, noted());
  await page
    .locator('.df-toast')
    .getByText(/Taken out of 5 pictures/)
    .waitFor();
  await page.getByRole('link', { name: 'After', exact: true }).click();
  await page.getByText(/It begins as a picture, but is not a whole one.*\(cut, dried\)/).waitFor();
  const file = await saved(page);
  expect(file.suggestedFilename()).toBe('ledger-day.json');
  const pictures = picturesIn(await readFile(await file.path(), 'utf8'));
  expect(pictures.map((letters) => letters !== '')).toEqual([...KINDS.map(() => true), false]);
  expect(pictures.filter((letters) => letters.includes(PLANTED))).toEqual([]);
  await page.locator('.df-toast').getByText('One picture is not in it').waitFor();
});

test('PH1: a file of a newer version goes out as it came, but for what its pictures told', async () => {
  const page = await at.open({ acceptDownloads: true });
  const newer = noted().replace(/"version": \d+/, '"version": 99');
  await bring(page, newer);
  const text = await saveFile(page);
  const pictures = (from: string): string[] => JSON.parse(from).photos.map((p: Photo) => p.data);
  expect(picturesIn(text).filter((letters) => letters.includes(PLANTED))).toEqual([]);
  const back = pictures(text).reduce(
    (whole, data, at) => whole.replace(`"data": "${data}"`, `"data": "${pictures(newer)[at]}"`),
    text,
  );
  expect(back).toBe(newer);
});

test('PH1: a cleaned picture shows the same pixels', async () => {
  const page = await at.open();
  const pixelsOf = (type: string, data: string): Promise<string> =>
    page.evaluate(
      async ([kind, base64]) => {
        const bytes = Uint8Array.from(atob(base64!), (letter) => letter.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes], { type: kind! }));
        const { width, height } = bitmap;
        const ink = new OffscreenCanvas(width, height).getContext('2d')!;
        ink.drawImage(bitmap, 0, 0);
        return `${width} × ${height}: ${ink.getImageData(0, 0, width, height).data.join()}`;
      },
      [type, data] as const,
    );
  for (const kind of KINDS)
    for (const bytes of [PLAIN[kind], plantedAll(kind, PLANTED)]) {
      const clean = cleanPicture(toBase64(bytes))!;
      expect(await pixelsOf(clean.type, clean.data), kind).toBe(
        await pixelsOf(TYPE_OF[kind], toBase64(bytes)),
      );
    }
});

test('S5: a garment that is saved while a field is half typed says which, and is saved', async () => {
  const page = await at.open({ acceptDownloads: true });
  await openExample(page, 'Ferry socks');
  await page.getByRole('link', { name: 'Report', exact: true }).click();
  await page.getByRole('textbox', { name: /^Hours/ }).fill('about 20');
  await page.keyboard.press('Tab');
  expect(await saveFile(page)).not.toContain('about 20');
  await page
    .locator('.df-toast')
    .getByText('One entry is half typed, and not in it: “about 20”.')
    .waitFor();
});
